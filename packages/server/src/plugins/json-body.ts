import { isUtf8 } from "node:buffer";
import type { FastifyInstance } from "fastify";
import { ProblemError } from "../errors.ts";
import { deepest } from "../wire/deepest.ts";
import { isTooDeep } from "../wire/is-too-deep.ts";
import { loneSurrogateAt } from "../wire/lone-surrogate.ts";

/** Bodies are JSON in UTF-8 and nothing else; an empty one counts as none, since many clients always state a content type. */
export function addJsonBody(app: FastifyInstance): void {
  const parse = app.getDefaultJsonParser("error", "error");
  app.removeAllContentTypeParsers();
  app.addContentTypeParser("application/json", { parseAs: "buffer" }, (request, bytes: Buffer, done) => {
    if (bytes.length === 0) return done(null, undefined);
    if (!isUtf8(bytes)) return done(refusal("(the body)", "bytes that are not UTF-8", "JSON in UTF-8"));
    const text = bytes.toString("utf8");
    if (isTooDeep(text))
      return done(
        refusal("(the body)", "lists and objects deeper than that", `JSON at most ${deepest} ${deep}`),
      );
    parse(request, text, (error, value) => {
      const broken = error ? undefined : loneSurrogateAt(text, value);
      if (broken === undefined) done(error, value);
      else done(refusal(broken, "half a character (a lone surrogate)", "whole characters"));
    });
  });
}

const deep = "lists and objects deep";

function refusal(field: string, got: string, expected: string): ProblemError {
  return new ProblemError({ code: "bad-request", refusals: [{ field, got, expected }] });
}
