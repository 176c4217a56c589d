import type { FastifyInstance } from "fastify";
import { ProblemError } from "../errors.ts";
import { deepest } from "../wire/deepest.ts";
import { isTooDeep } from "../wire/is-too-deep.ts";

const tooDeep = {
  code: "bad-request",
  refusals: [
    {
      field: "(the body)",
      got: "lists and objects deeper than that",
      expected: `JSON at most ${deepest} lists and objects deep`,
    },
  ],
} as const;

/** Bodies are JSON and nothing else; an empty one counts as none, since many clients always state a content type. */
export function addJsonBody(app: FastifyInstance): void {
  const parse = app.getDefaultJsonParser("error", "error");
  app.removeAllContentTypeParsers();
  app.addContentTypeParser("application/json", { parseAs: "string" }, (request, body, done) => {
    if (body === "") done(null, undefined);
    else if (isTooDeep(body as string)) done(new ProblemError(tooDeep));
    else parse(request, body as string, done);
  });
}
