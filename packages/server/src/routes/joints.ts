import { z } from "zod";
import { namedJointSchema } from "../wire/named.ts";
import { benchThingsSchema, replies } from "../wire/replies.ts";
import { versionsIn, versionsQuery, versionsReply } from "../wire/versions.ts";
import type { App, RouteContext } from "./context.ts";
import { addShelf } from "./shelf.ts";

export function addJoints(app: App, { bench, history }: RouteContext): void {
  const schema = {
    querystring: z.strictObject(versionsQuery),
    response: replies(z.strictObject({ joints: z.array(namedJointSchema), ...versionsReply })),
  };
  app.get("/api/bench/joints", { schema }, async ({ query }) => {
    const joints = bench.joints.all();
    return { joints, ...versionsIn(query, joints) };
  });
  addShelf(app, {
    url: "/api/bench/joints",
    table: "joints",
    history,
    shelf: bench.joints,
    schema: namedJointSchema,
    inputSchema: namedJointSchema,
    deletedSchema: benchThingsSchema,
  });
}
