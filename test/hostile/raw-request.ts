import { connect } from "node:net";

export interface RawReply {
  /** All that came back, headers and all. */
  readonly text: string;
  readonly status: number;
  readonly tookMs: number;
}

/** Sends pieces of text as they are to a port of this machine, one after another, and waits until the server closes. */
export function rawRequest(
  port: number,
  pieces: readonly string[],
  { everyMs = 0, giveUpMs = 20_000 }: { readonly everyMs?: number; readonly giveUpMs?: number } = {},
): Promise<RawReply> {
  const started = performance.now();
  return new Promise((resolve, reject) => {
    const socket = connect(port, "127.0.0.1");
    let text = "";
    let at = 0;
    const timer = setInterval(() => {
      const piece = pieces[at];
      at += 1;
      if (piece !== undefined && socket.writable) socket.write(piece, "latin1");
    }, everyMs);
    const deadline = setTimeout(() => socket.destroy(new Error("the server never closed")), giveUpMs);
    socket.setEncoding("latin1").on("data", (chunk: string) => {
      text += chunk;
    });
    socket.once("error", (error: NodeJS.ErrnoException) => {
      if (error.code !== "ECONNRESET" && error.code !== "EPIPE") reject(error);
    });
    socket.once("close", () => {
      clearInterval(timer);
      clearTimeout(deadline);
      const status = Number(/^HTTP\/1\.1 (\d{3})/.exec(text)?.[1] ?? 0);
      resolve({ text, status, tookMs: performance.now() - started });
    });
  });
}
