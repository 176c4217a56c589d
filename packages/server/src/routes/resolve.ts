import { benchContentsSchema, completeContents } from "../bench/bench-contents.ts";
import { resolveContents } from "../bench/resolve-contents.ts";
import { valueOrThrow } from "../errors.ts";
import { replies } from "../wire/replies.ts";
import { resolutionSchema } from "../wire/resolution.ts";
import type { App, RouteContext } from "./context.ts";

export function addResolve(app: App, { reference }: RouteContext): void {
  const schema = {
    body: benchContentsSchema,
    response: replies(resolutionSchema),
  };
  app.post("/api/resolve", { schema }, async ({ body }) =>
    valueOrThrow(resolveContents(completeContents(body), reference)),
  );
}
