import { readFileSync } from "node:fs";
import type { Adapter, Grip, Head, Shaft } from "../parts/part.ts";
import { type TypicalRow, typicalRowSchema } from "../parts/typical.ts";
import type { Build, ClubParts } from "./build.ts";
import type { Estimates } from "./estimate.ts";
import { estimateClub } from "./estimates.ts";

/** The rows that the product ships with. */
export const shippedTypical: readonly TypicalRow[] = typicalRowSchema
  .array()
  .parse(
    JSON.parse(readFileSync(new URL("../../../../data/reference/typical.json", import.meta.url), "utf8")),
  );

export const driverHead: Head = {
  id: "H1",
  kind: "head",
  clubType: "driver",
  massG: 200,
  loftDeg: 10.5,
  lieDeg: 58,
  socket: { type: "bore", bbgmIn: 1, depthIn: 1.125, diameterIn: 0.335 },
};
export const receiverHead: Head = {
  id: "H2",
  kind: "head",
  clubType: "driver",
  massG: 198,
  loftDeg: 10.5,
  lieDeg: 58,
  faceAngleDeg: 0,
  socket: { type: "receiver", family: "alder", seatToGroundIn: 2.4 },
};
export const adapter: Adapter = {
  id: "A1",
  kind: "adapter",
  family: "alder",
  hand: "right",
  massG: 8,
  tiltDeg: 1.5,
  tipStopFromSeatIn: 0.9,
  bore: { diameterIn: 0.335, form: "parallel", depthIn: 1.1 },
  settings: [
    { label: "upright", rotationDeg: 0 },
    { label: "closed", rotationDeg: 90 },
  ],
};
export const woodShaft: Shaft = {
  id: "S1",
  kind: "shaft",
  suits: "wood",
  material: "graphite",
  massG: 60,
  length: { lengthIn: 44.5, basis: "shaft-alone" },
  tip: { diameterIn: 0.335, form: "parallel" },
};
export const grip: Grip = {
  id: "G1",
  kind: "grip",
  massG: 50,
  capThicknessIn: 0.125,
  cgFromCapIn: 4,
  lengthIn: 10.5,
};

/** A bored driver that is whole and ungripped. */
export const driver: ClubParts = { head: driverHead, shaft: woodShaft, grip };

/** The estimates of a club that is not refused. */
export function estimated(
  parts: ClubParts,
  build: Build = {},
  typical: readonly TypicalRow[] = shippedTypical,
): Estimates {
  const result = estimateClub(parts, build, { typical });
  if (!result.ok) throw new Error(JSON.stringify(result.refusals));
  return result.estimates;
}

/** The shipped rows with some fields set to a certain value, to leave out what a worked example leaves out. */
export function typicalWith(values: Readonly<Record<string, number>>): readonly TypicalRow[] {
  return shippedTypical.map((row) =>
    Object.hasOwn(values, row.field) ? { ...row, value: values[row.field]!, plusMinus: 1e-9 } : row,
  );
}

/** Point masses with nothing between them: no tape, epoxy, ferrule or inertia of head and grip. */
export const pointMasses = typicalWith({
  tapeMassG: 0,
  epoxyMassG: 0,
  ferruleMassG: 0,
  moiAboutCgKgCm2: 0,
  balanceFraction: 0.5,
});
