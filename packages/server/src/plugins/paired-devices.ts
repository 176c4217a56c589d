import type { TLSSocket } from "node:tls";
import type { FastifyInstance, FastifyRequest } from "fastify";
import { ProblemError } from "../errors.ts";
import { tokenFrom } from "../pairing/device-cookie.ts";
import type { Pairing } from "../pairing/pairing.ts";

/** What a device needs before it is let in. None of it says anything about the bench. */
const open =
  /^\/(pair|trust|manifest\.webmanifest|service-worker\.js|(api\/(pair|trust)|assets|icons)(\/.*)?)$/;

/**
 * Answers this machine, and devices that were paired; any other is sent to the page for pairing. What comes by HTTPS counts
 * as another device, since only the network is served that way.
 */
export function addPairedDevices(app: FastifyInstance, pairing: Pairing): void {
  // After every onRequest, so that strangers count towards what an address may ask for, and before anything sent is read.
  app.addHook("preParsing", async (request, reply) => {
    const path = request.url.split("?")[0] ?? "";
    if (isThisMachine(request) || open.test(path)) return;
    const token = tokenFrom(request.headers.cookie);
    if (token !== undefined && pairing.deviceOf(token)) return;
    const asksForPage = request.method === "GET" && (request.headers.accept ?? "").includes("text/html");
    if (asksForPage && !path.startsWith("/api/")) return reply.redirect("/pair", 303);
    throw new ProblemError({ code: "not-paired" });
  });
}

/** Whether a request comes from the machine that serves, and not by way of the network. */
export function isThisMachine({ raw, ip }: FastifyRequest): boolean {
  const { encrypted, localAddress } = raw.socket as TLSSocket;
  if (encrypted) return false;
  return /^(127\.|::1$|::ffff:127\.)/.test(ip) || ip === localAddress;
}
