import type { FastifyInstance, FastifyRequest } from "fastify";
import { ProblemError } from "../errors.ts";

const loopbackNames = ["localhost", "127.0.0.1", "[::1]"];

/**
 * Takes requests only under this machine's own names, and only from our own page. A foreign page could otherwise point its
 * own name at this address (DNS rebinding), send a form here, or have us work out something costly: the Host has to be
 * ours; an Origin has to be this very address, port included, since another port is another program's page; and what
 * a browser fetches for another page (Sec-Fetch-Site, W3C Fetch Metadata) is refused, whatever the method.
 */
export function addOwnHost(
  app: FastifyInstance,
  allowedHosts: readonly string[],
  /** Names on the local network, which may change while the server runs. */
  networkNames: () => readonly string[] = () => [],
): void {
  const own = () =>
    new Set(
      [...loopbackNames, ...[...allowedHosts, ...networkNames()].map(nameInAddress)].map((name) =>
        name.toLowerCase(),
      ),
    );
  // After every onRequest, so that also what is refused here has its headers and counts, and before anything sent is read.
  app.addHook("preParsing", async (request) => {
    if (!isCalledByName(request, own())) throw new ProblemError({ code: "foreign-host" });
    if (!isFromOwnPage(request)) throw new ProblemError({ code: "foreign-host", message: foreignPage });
  });
}

const foreignPage = "Requests from pages of other addresses are not taken";

/** A request line with a whole address in it (RFC 9112, 3.2.2) is for proxies, which we are not. */
function isCalledByName({ headers, raw }: FastifyRequest, own: ReadonlySet<string>): boolean {
  const host = addressOf(`http://${headers.host ?? ""}`)?.hostname;
  return raw.url?.startsWith("/") === true && host !== undefined && own.has(host);
}

function isFromOwnPage(request: FastifyRequest): boolean {
  const { origin, host } = request.headers;
  if (origin !== undefined && !isSameAddress(origin, host ?? "")) return false;
  const site = request.headers["sec-fetch-site"];
  return site === undefined || site === "same-origin" || site === "none" || isOpening(request);
}

/** The scheme may be another, where something before us speaks HTTPS. */
function isSameAddress(origin: string, host: string): boolean {
  const page = addressOf(origin);
  return page !== undefined && page.host !== "" && page.host === addressOf(`${page.protocol}//${host}`)?.host;
}

/** A link on another page may open a view of ours, in a window of its own; nothing of the API is opened that way. */
function isOpening({ method, url, headers }: FastifyRequest): boolean {
  const isDocument = headers["sec-fetch-mode"] === "navigate" && headers["sec-fetch-dest"] === "document";
  return method === "GET" && isDocument && !/^\/+api(\/|$)/i.test(url.split("?")[0] ?? "");
}

function addressOf(text: string): URL | undefined {
  return URL.canParse(text) ? new URL(text) : undefined;
}

function nameInAddress(name: string): string {
  return name.includes(":") && !name.startsWith("[") ? `[${name}]` : name;
}
