import type { FastifyInstance, FastifyRequest } from "fastify";
import { ProblemError } from "../errors.ts";

const loopbackNames = ["localhost", "127.0.0.1", "[::1]"];

/**
 * Takes requests only under this machine's own names. A foreign page could otherwise point its own name at this address
 * (DNS rebinding), or send a form here: the Host has to be ours, and the Origin too where the browser states one.
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
  app.addHook("onRequest", async (request) => {
    if (!isOwn(request, own())) throw new ProblemError({ code: "foreign-host" });
  });
}

function isOwn({ headers }: FastifyRequest, own: ReadonlySet<string>): boolean {
  const host = hostName(`http://${headers.host ?? ""}`);
  if (host === undefined || !own.has(host)) return false;
  const { origin } = headers;
  return (
    origin === undefined || URL.parse?.(origin)?.host === headers.host || own.has(hostName(origin) ?? "")
  );
}

function hostName(address: string): string | undefined {
  return URL.canParse(address) ? new URL(address).hostname : undefined;
}

function nameInAddress(name: string): string {
  return name.includes(":") && !name.startsWith("[") ? `[${name}]` : name;
}
