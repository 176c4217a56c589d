import { STATUS_CODES } from "node:http";
import type { Duplex } from "node:stream";
import { type ErrorCode, errorTable, problemBody } from "../errors.ts";

/** Node's own codes for what cannot become a request. */
const codes: Readonly<Record<string, ErrorCode>> = {
  ERR_HTTP_REQUEST_TIMEOUT: "too-slow",
  HPE_HEADER_OVERFLOW: "headers-too-large",
};

/** Answers what came in on a connection and is no request of HTTP, and closes it: what follows could be read two ways. */
export function refuseBroken(error: Error & { readonly code?: string }, socket: Duplex): void {
  if (error.code === "ECONNRESET" || socket.destroyed) return;
  const code = codes[error.code ?? ""] ?? "bad-request";
  const { status } = errorTable[code];
  const body = JSON.stringify(problemBody({ code }));
  if (socket.writable)
    socket.write(
      [
        `HTTP/1.1 ${status} ${STATUS_CODES[status]}`,
        "Connection: close",
        "Content-Type: application/json; charset=utf-8",
        "X-Content-Type-Options: nosniff",
        `Content-Length: ${Buffer.byteLength(body)}`,
        "",
        body,
      ].join("\r\n"),
    );
  socket.destroy();
}
