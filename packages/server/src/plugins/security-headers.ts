import helmet from "@fastify/helmet";
import type { FastifyInstance } from "fastify";

/** What the page never uses, so that nothing that got into it could (W3C Permissions Policy). The camera reads labels. */
const switchedOff = [
  ...[
    "accelerometer",
    "autoplay",
    "bluetooth",
    "display-capture",
    "encrypted-media",
    "geolocation",
    "gyroscope",
  ],
  ...[
    "hid",
    "idle-detection",
    "magnetometer",
    "microphone",
    "midi",
    "payment",
    "picture-in-picture",
    "serial",
    "usb",
  ],
];
const permissions = ["camera=(self)", ...switchedOff.map((name) => `${name}=()`)].join(", ");

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
    crossOriginOpenerPolicy: { policy: "same-origin" },
    crossOriginResourcePolicy: { policy: "same-origin" },
    referrerPolicy: { policy: "no-referrer" },
  });
  app.addHook("onRequest", async (_request, reply) => {
    reply.header("permissions-policy", permissions);
  });
}
