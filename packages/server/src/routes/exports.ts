import { z } from "zod";
import { benchContentsSchema } from "../bench/bench-contents.ts";
import { rowKinds } from "../transfer/columns.ts";
import { writeCsv } from "../transfer/write-csv.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";
import { csvReply } from "./list-files.ts";

const querySchema = z.strictObject({ kind: z.enum(rowKinds).optional() });

export function addExports(app: App, { bench }: RouteContext): void {
  app.get(
    "/api/bench/export.json",
    { schema: { response: replies(benchContentsSchema) } },
    async (_request, reply) => {
      const { parts, joints, claims, goal } = bench.view();
      return reply
        .header("content-disposition", 'attachment; filename="ferrule-bench.json"')
        .send({ parts, joints, claims, goal });
    },
  );
  app.get(
    "/api/bench/export.csv",
    { schema: { querystring: querySchema, response: csvReply } },
    async ({ query }, reply) => {
      const name = `ferrule-${query.kind ?? "bench"}.csv`;
      reply.header("content-disposition", `attachment; filename="${name}"`).type("text/csv; charset=utf-8");
      return reply.send(writeCsv(bench.view(), query.kind));
    },
  );
}
