import { buildSchema, type ClubDimensions, clubDimensionNames, clubDimensions } from "@ferrule/core";
import { z } from "zod";
import { clubInputShape, clubPartsFrom } from "../wire/club-inputs.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const bodySchema = z.strictObject({ ...clubInputShape, build: buildSchema.optional() });

const inches = z.number().nullable();

const dimensionsSchema = z
  .strictObject({
    playingLengthIn: inches,
    cutLengthIn: inches,
    uncutLengthIn: inches,
    tipTrimIn: inches,
    buttTrimIn: inches,
    bbgmIn: inches,
    insertionIn: inches,
    seatToGroundIn: inches,
    capThicknessIn: inches,
    gripLengthIn: inches,
    lieDeg: z.number().nullable(),
    typical: z.array(z.enum(clubDimensionNames)),
  })
  .meta({
    id: "ClubDimensions",
    description:
      "Where everything of a club lies along its shaft axis; typical names those that a typical figure went into",
  }) satisfies z.ZodType<ClubDimensions>;

export function addDimensions(app: App, { reference }: RouteContext): void {
  const schema = { body: bodySchema, response: replies(dimensionsSchema) };
  app.post("/api/dimensions", { schema }, async ({ body }) =>
    clubDimensions(clubPartsFrom(body), body.build ?? {}, reference),
  );
}
