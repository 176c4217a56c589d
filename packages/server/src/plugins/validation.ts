import { parseWith } from "@ferrule/core";
import type { FastifyInstance, FastifySchemaCompiler } from "fastify";
import { serializerCompiler } from "fastify-type-provider-zod";
import type { z } from "zod";
import { ProblemError } from "../errors.ts";

/** Reads what comes in with the route's zod schemas, and holds what goes out to them. */
export function addValidation(app: FastifyInstance): void {
  app.setValidatorCompiler(refusingCompiler);
  app.setSerializerCompiler(serializerCompiler);
}

const refusingCompiler: FastifySchemaCompiler<z.ZodType> =
  ({ schema, httpPart }) =>
  (input) => {
    const parsed = parseWith(schema, input);
    if (parsed.ok) return { value: parsed.value };
    const message = `The ${httpPart === "body" ? "body" : "address"} of the request was not taken`;
    return {
      error: new ProblemError({
        code: "bad-request",
        message,
        refusals: parsed.refusals,
      }),
    };
  };
