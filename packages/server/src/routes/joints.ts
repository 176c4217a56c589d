import { z } from "zod";
import { namedJointSchema } from "../wire/named.ts";
import { benchThingsSchema, replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";
import { addShelf } from "./shelf.ts";

export function addJoints(app: App, { bench }: RouteContext): void {
  const schema = {
    response: replies(z.strictObject({ joints: z.array(namedJointSchema) })),
  };
  app.get("/api/bench/joints", { schema }, async () => ({
    joints: bench.joints.all(),
  }));
  addShelf(app, {
    url: "/api/bench/joints",
    shelf: bench.joints,
    schema: namedJointSchema,
    inputSchema: namedJointSchema,
    deletedSchema: benchThingsSchema,
  });
}
