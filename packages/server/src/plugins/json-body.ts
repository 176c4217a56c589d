import type { FastifyInstance } from "fastify";

/** Bodies are JSON and nothing else; an empty one counts as none, since many clients always state a content type. */
export function addJsonBody(app: FastifyInstance): void {
  const parse = app.getDefaultJsonParser("error", "error");
  app.removeAllContentTypeParsers();
  app.addContentTypeParser("application/json", { parseAs: "string" }, (request, body, done) => {
    if (body === "") done(null, undefined);
    else parse(request, body as string, done);
  });
}
