import { z } from "zod";
import { ProblemError, valueOrThrow } from "../errors.ts";
import { isThisMachine } from "../plugins/paired-devices.ts";
import { changeSchema } from "../wire/history.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const count = (most: number) => z.coerce.number().int().min(0).max(most);
const change = z.coerce.number().int().min(0).max(Number.MAX_SAFE_INTEGER);
const name = z.string().max(80);

const listQuery = z
  .strictObject({
    limit: count(200).default(50),
    before: change.optional(),
    table: name.optional(),
    id: name.optional(),
  })
  .refine(({ table, id }) => id === undefined || table !== undefined, "an id comes with its table");
const oneQuery = z.strictObject({ from: count(10_000_000).default(0), limit: count(1000).default(200) });

const listSchema = z.strictObject({
  changes: z.array(changeSchema).describe("The newest first"),
  next: z.number().int().nullable().describe("What the next page comes before"),
});
const oneSchema = changeSchema.extend({
  next: z.number().int().nullable().describe("What to go on from with the things of a large change"),
});
const undoneSchema = z.strictObject({
  change: changeSchema.describe("The undo, which is a change itself and can be undone"),
  undo: z.number().int().describe("How many steps POST /api/bench/undo can take back now"),
});
const ownNameSchema = z.strictObject({ name: z.string().trim().min(1).max(60).nullable() });

/** Who changed what when, and undoing any one change. */
export function addHistory(app: App, { history, ownName }: RouteContext): void {
  app.get(
    "/api/history",
    { schema: { querystring: listQuery, response: replies(listSchema) } },
    async ({ query }) => history.list(query),
  );
  const params = z.object({ number: change });
  app.get(
    "/api/history/:number",
    { schema: { params, querystring: oneQuery, response: replies(oneSchema) } },
    async (request) => {
      const { from, limit } = request.query;
      return valueOrThrow(history.get(request.params.number, from, limit));
    },
  );
  app.post(
    "/api/history/:number/undo",
    { schema: { params, response: replies(undoneSchema) } },
    async (request) => valueOrThrow(history.undo(request.params.number)),
  );
  const response = replies(ownNameSchema);
  app.get("/api/own-name", { schema: { response } }, async () => ({ name: ownName.read() }));
  app.put("/api/own-name", { schema: { body: ownNameSchema, response } }, async (request) => {
    if (!isThisMachine(request)) throw new ProblemError({ code: "only-here" });
    ownName.write(request.body.name);
    return { name: ownName.read() };
  });
}
