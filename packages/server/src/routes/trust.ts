import { X509Certificate } from "node:crypto";
import { z } from "zod";
import { ProblemError } from "../errors.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

/** The certificate that a device has to trust, to be downloaded and compared. There is nothing secret about it. */
export function addTrust(app: App, { network }: RouteContext): void {
  const certificate = () => {
    if (!network) throw new ProblemError({ code: "not-found", message: "Nothing is served on the network" });
    return network.certificate();
  };
  const reply = z.strictObject({ fingerprint: z.string() });
  app.get("/api/trust", { schema: { response: replies(reply) } }, async () => ({
    fingerprint: certificate().fingerprint,
  }));
  app.get("/api/trust/ferrule.crt", { schema: { hide: true } }, async (_request, reply) =>
    reply
      .type("application/x-x509-ca-cert")
      .header("content-disposition", 'attachment; filename="ferrule.crt"')
      .send(new X509Certificate(certificate().authority).raw),
  );
}
