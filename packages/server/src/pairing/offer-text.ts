import { renderUnicodeCompact } from "uqr";
import type { App } from "../routes/context.ts";

/** A code for one device, in words and as a QR code for a terminal, for a machine without a browser. */
export async function offerText(app: App, urls: readonly string[]): Promise<string> {
  const [url] = urls;
  if (url === undefined) return "";
  const reply = await app.inject({ method: "POST", url: "/api/devices/offer", remoteAddress: "127.0.0.1" });
  const { code } = reply.json() as { code: string };
  const square = renderUnicodeCompact(`${url}/pair#${code}`, { border: 2 });
  return `To pair one device within five minutes: ${code.slice(0, 4)}-${code.slice(4)}\n${square}\n`;
}
