import { type Build, buildSchema, type Measurement, measuredQuantities, parseWith } from "@ferrule/core";
import { z } from "zod";
import { done, problem, valueOrThrow } from "../errors.ts";
import { namedJointSchema, namedMeasurementSchema, namedPartSchema } from "../wire/named.ts";
import { idParamsSchema, removedReply, replies } from "../wire/replies.ts";
import { buildSheetSchema, comparedShape } from "../wire/sheet.ts";
import { holdToVersion } from "../wire/version-tag.ts";
import { versionsIn, versionsQuery, versionsReply } from "../wire/versions.ts";
import type { App, RouteContext } from "./context.ts";

const figure = z.string().regex(/^-?\d{1,3}(\.\d{1,6})?$/, "a number");

/** The club and the choices made for it; numbers arrive as text in an address. */
const querySchema = z.strictObject({
  club: z.string().min(1).max(400),
  tipTrimIn: figure.optional(),
  buttTrimIn: figure.optional(),
  playingLengthIn: figure.optional(),
  extraHeadMassG: figure.optional(),
  counterweightG: figure.optional(),
});

const sheetReplySchema = z.strictObject({
  sheet: buildSheetSchema,
  measured: z.array(z.strictObject(comparedShape)),
});

function readSchema({ min, max }: { readonly min: number; readonly max: number }) {
  const value = z
    .number({ error: `a number from ${min} to ${max}` })
    .min(min)
    .max(max);
  return z.union([
    value,
    z.strictObject({
      value,
      plusMinus: z
        .number()
        .min(0)
        .max(max - min)
        .optional(),
    }),
  ]);
}

const measureSchema = z.strictObject({
  club: z.string().min(1).max(400),
  build: buildSchema.optional(),
  measured: z
    .strictObject({
      playingLengthIn: readSchema(measuredQuantities.playingLengthIn).optional(),
      swingWeightPoints: readSchema(measuredQuantities.swingWeightPoints).optional(),
      massG: readSchema(measuredQuantities.massG).optional(),
      frequencyCpm: readSchema(measuredQuantities.frequencyCpm).optional(),
    })
    .refine((measured) => Object.keys(measured).length > 0, "at least one figure"),
  built: z.boolean().optional().describe("The club has been put together: its joints are made on the bench"),
  on: z.iso.date().optional(),
  by: z.string().max(200).optional(),
  note: z.string().max(2000).optional(),
});

const measuredReplySchema = z.strictObject({
  ...comparedShape,
  parts: z.array(namedPartSchema),
  joints: z.array(namedJointSchema),
  undone: z.array(namedJointSchema),
});

function buildFrom({ club: _club, ...figures }: z.infer<typeof querySchema>): Build {
  const named = Object.entries(figures).flatMap(([name, text]) =>
    text === undefined ? [] : [[name, Number(text)] as const],
  );
  const parsed = parseWith(buildSchema, Object.fromEntries(named));
  if (parsed.ok) return parsed.value;
  return valueOrThrow(problem("bad-request", "There is no sheet for such a build", parsed.refusals));
}

export function addSheet(app: App, { sheetDesk, bench, history }: RouteContext): void {
  app.get(
    "/api/sheet",
    { schema: { querystring: querySchema, response: replies(sheetReplySchema) } },
    async ({ query }) => valueOrThrow(sheetDesk.sheet(query.club, buildFrom(query))),
  );
  app.post(
    "/api/sheet/measured",
    { schema: { body: measureSchema, response: replies(measuredReplySchema) } },
    async ({ body }) => valueOrThrow(sheetDesk.measure(body)),
  );
  const list = replies(z.strictObject({ measurements: z.array(namedMeasurementSchema), ...versionsReply }));
  const querystring = z.strictObject(versionsQuery);
  app.get("/api/measurements", { schema: { querystring, response: list } }, async ({ query }) => {
    const measurements = bench.measurements.all();
    return { measurements, ...versionsIn(query, measurements) };
  });
  app.delete(
    "/api/measurements/:id",
    { schema: { params: idParamsSchema, response: replies(removedReply(namedMeasurementSchema)) } },
    async (request) => {
      const { id } = request.params;
      const hold = (present: Measurement) =>
        holdToVersion(request, {
          present: () => done(present),
          given: null,
          base: (tag) => history.version("measurements", id, tag),
        });
      return valueOrThrow(bench.measurements.remove(id, hold));
    },
  );
}
