import rateLimit from "@fastify/rate-limit";
import type { FastifyInstance } from "fastify";
import { ProblemError } from "../errors.ts";

const loopback = /^(127\.|::1$|::ffff:127\.)/;

/** Bounds what one address can ask for in a minute: plenty for a page on this machine, less from elsewhere. */
export async function addRateLimit(app: FastifyInstance): Promise<void> {
  await app.register(rateLimit, {
    timeWindow: "1 minute",
    max: (request) => (loopback.test(request.ip) ? 6000 : 300),
    errorResponseBuilder: () => new ProblemError({ code: "too-many" }),
  });
}
