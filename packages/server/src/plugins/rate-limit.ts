import rateLimit from "@fastify/rate-limit";
import type { FastifyInstance } from "fastify";
import { ProblemError } from "../errors.ts";

const loopback = /^(127\.|::1$|::ffff:127\.)/;

/** What this machine may ask for in a minute, unless somebody says otherwise. */
const requestsOfThisMachine = 6000;

/**
 * Bounds what one address can ask for in a minute: plenty for a page on this machine, less from elsewhere. Everybody behind a proxy on
 * this machine has its address, so its bound can be set.
 */
export async function addRateLimit(
  app: FastifyInstance,
  ofThisMachine = requestsOfThisMachine,
): Promise<void> {
  await app.register(rateLimit, {
    timeWindow: "1 minute",
    max: (request) => (loopback.test(request.ip) ? ofThisMachine : 300),
    errorResponseBuilder: () => new ProblemError({ code: "too-many" }),
  });
}
