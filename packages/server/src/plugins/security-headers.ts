import helmet from "@fastify/helmet";
import type { FastifyInstance } from "fastify";

/** Everything the page needs is served from here, so nothing else is allowed, inline code and styles included. */
export async function addSecurityHeaders(app: FastifyInstance): Promise<void> {
  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'self'"],
        imgSrc: ["'self'", "data:"],
        objectSrc: ["'none'"],
        baseUri: ["'none'"],
        formAction: ["'none'"],
        frameAncestors: ["'none'"],
        // The page is served over plain http on the loopback address.
        upgradeInsecureRequests: null,
      },
    },
    strictTransportSecurity: false,
    frameguard: { action: "deny" },
  });
}
