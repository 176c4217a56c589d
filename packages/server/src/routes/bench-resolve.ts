import { valueOrThrow } from "../errors.ts";
import { replies } from "../wire/replies.ts";
import { resolutionSchema } from "../wire/resolution.ts";
import { goalWith, resolveQuerySchema } from "../wire/resolve-query.ts";
import type { App, RouteContext } from "./context.ts";

export function addBenchResolve(app: App, { bench, answers }: RouteContext): void {
  const schema = { querystring: resolveQuerySchema, response: replies(resolutionSchema) };
  app.get("/api/bench/resolve", { schema }, async ({ query }) =>
    valueOrThrow(answers.resolve(goalWith(bench.goal(), query))),
  );
}
