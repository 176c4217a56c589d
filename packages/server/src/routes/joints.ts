import { jointSchema } from "@ferrule/core";
import { z } from "zod";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";
import { addShelf } from "./shelf.ts";

export function addJoints(app: App, { bench }: RouteContext): void {
  const schema = { response: replies(z.strictObject({ joints: z.array(jointSchema) })) };
  app.get("/api/bench/joints", { schema }, async () => ({ joints: bench.joints.all() }));
  addShelf(app, { url: "/api/bench/joints", shelf: bench.joints, schema: jointSchema, inputSchema: jointSchema });
}
