import type { FastifyInstance, FastifyRequest } from "fastify";
import type { Authors } from "../history/authors.ts";
import { tokenFrom } from "../pairing/device-cookie.ts";
import type { Pairing } from "../pairing/pairing.ts";
import type { Author } from "../store/history.ts";
import { isThisMachine } from "./paired-devices.ts";

/** Has every change that comes of a request written down as that of the device that asks. */
export function addAuthor(
  app: FastifyInstance,
  authors: Authors,
  pairing: Pairing,
  here: () => Author,
): void {
  // The last hook before the route, and not an async one: what the route does then runs within `as`.
  app.addHook("preHandler", (request, _reply, done) => {
    if (request.method === "GET" || request.method === "HEAD") return done();
    authors.as(authorOf(request, pairing, here), done);
  });
}

function authorOf(request: FastifyRequest, pairing: Pairing, here: () => Author): Author {
  const token = isThisMachine(request) ? undefined : tokenFrom(request.headers.cookie);
  const device = token === undefined ? undefined : pairing.deviceOf(token);
  return device ? { means: "device", device: device.id, name: device.name } : here();
}
