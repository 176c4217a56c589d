import type { FastifyError, FastifyInstance } from "fastify";
import { errorTable, type Problem, ProblemError, problemBody } from "../errors.ts";
import { diskProblem } from "../store/disk-problem.ts";

/** Fastify's own complaints that are the caller's to mend. */
const fastifyProblems: Readonly<Record<string, Problem>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: { code: "too-large" },
  FST_ERR_CTP_INVALID_MEDIA_TYPE: { code: "wrong-media-type" },
  FST_ERR_CTP_EMPTY_JSON_BODY: {
    code: "bad-request",
    refusals: [
      {
        field: "(the body)",
        got: "nothing",
        expected: "JSON, or no content-type header",
      },
    ],
  },
  FST_ERR_BAD_URL: {
    code: "bad-request",
    message: "The address of the request cannot be read",
  },
};

/** Tells every failure in the one shape that callers know; our own bugs are logged and not described. */
export function addErrorReplies(app: FastifyInstance): void {
  app.setErrorHandler((error: FastifyError, request, reply) => {
    const stated = problemOf(error);
    if (errorTable[stated.code].status >= 500) request.log.error(error);
    return reply.code(errorTable[stated.code].status).send(problemBody(stated));
  });
}

/** What an error comes to for the caller. */
export function problemOf(error: FastifyError | ProblemError): Problem {
  if (error instanceof ProblemError) return error.problem;
  const known = fastifyProblems[error.code];
  if (known) return known;
  if (error.statusCode === 414)
    return { code: "bad-request", message: "The address of the request is too long" };
  if (error.statusCode === 429) return { code: "too-many" };
  if (error.statusCode === 400)
    return {
      code: "bad-request",
      refusals: [{ field: "(the body)", got: error.message, expected: "JSON" }],
    };
  return diskProblem(error)?.problem ?? { code: "our-bug" };
}
