import { clearanceSchema, faultNames, type InspectionRow, inspectionSchema } from "@ferrule/core";
import { z } from "zod";
import { valueOrThrow } from "../errors.ts";
import { namedClearanceSchema, namedInspectionSchema, namedPartSchema } from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const faultSchema = z.enum(faultNames);

const rowSchema = z
  .strictObject({
    id: z.string(),
    kinds: z.array(z.enum(["head", "adapter", "shaft", "grip", "cover", "wrench"])),
    material: z.array(z.string()).optional(),
    socket: z.array(z.string()).optional(),
    question: z.string(),
    look: z.string(),
    meaning: z.string(),
    limits: z.string().optional(),
    yes: z.array(faultSchema),
    no: z.array(faultSchema),
    source: z.string(),
  })
  .meta({ id: "InspectionRow" }) satisfies z.ZodType<InspectionRow>;

const viewSchema = z.strictObject({
  part: namedPartSchema,
  rows: z.array(rowSchema),
  inspections: z.array(namedInspectionSchema),
  clearances: z.array(namedClearanceSchema),
  stops: z.array(z.strictObject({ fault: faultSchema, canBePutRight: z.boolean() })),
});

const inspectSchema = inspectionSchema
  .pick({ part: true, answers: true, on: true, by: true, note: true })
  .partial({ on: true });
const inspectedSchema = z.strictObject({
  inspection: namedInspectionSchema,
  part: namedPartSchema,
  toClear: z
    .array(faultSchema)
    .describe("Denied now, but said before: they stand until a person clears them"),
});

const clearSchema = clearanceSchema.omit({ id: true }).partial({ on: true });
const clearedSchema = z.strictObject({ clearance: namedClearanceSchema, part: namedPartSchema });

export function addInspection(app: App, { sheetDesk, reference }: RouteContext): void {
  const table = replies(z.strictObject({ rows: z.array(rowSchema) }));
  app.get("/api/inspection/rows", { schema: { response: table } }, async () => ({
    rows: reference.inspection,
  }));
  const querystring = z.strictObject({ part: z.string().min(1).max(80) });
  app.get("/api/inspection", { schema: { querystring, response: replies(viewSchema) } }, async ({ query }) =>
    valueOrThrow(sheetDesk.inspection(query.part)),
  );
  app.post(
    "/api/inspection",
    { schema: { body: inspectSchema, response: replies(inspectedSchema) } },
    async ({ body }) => valueOrThrow(sheetDesk.inspect(body)),
  );
  app.post(
    "/api/inspection/clear",
    { schema: { body: clearSchema, response: replies(clearedSchema) } },
    async ({ body }) => valueOrThrow(sheetDesk.clear(body)),
  );
}
