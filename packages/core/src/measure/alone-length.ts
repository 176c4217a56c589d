import type { Adapter, Grip, Shaft } from "../parts/part.ts";
import type { Reading, ReadingSource } from "../parts/reading.ts";
import type { TypicalRow } from "../parts/typical.ts";
import { partReading, writtenReading } from "./part-reading.ts";

/** A shaft with what was on it when somebody measured it. */
export interface ShaftInHand {
  readonly shaft: Shaft;
  readonly adapter?: Adapter;
  readonly grip?: Grip;
  readonly gripped?: boolean;
  readonly bonded?: boolean;
}

/** The measures that a shaft's own length is made of. */
export type LengthKey =
  | "statedLengthIn"
  | "adapterEndIn"
  | "oldBbgmIn"
  | "oldCapIn"
  | "capThicknessIn"
  | "basisDoubtIn"
  | "rawLengthIn"
  | "tipTrimmedIn";

/** One addend: `weight` times a reading. The length is the sum of them. */
export interface LengthTerm {
  readonly key: LengthKey;
  readonly weight: number;
  readonly part: string;
  readonly field: string;
  readonly reading: Reading;
}

/**
 * Length of the shaft alone, tip to butt, in inches, as it is now; `undefined` where neither a length nor a raw length with
 * its tip trim is known. `typical` when any measure in it is, for then it may confirm and may not refuse.
 * Bases, common practice, no source:
 * - `shaft-alone`: the bare shaft, whatever is on it now.
 * - `with-adapter`: from the adapter's far end to the butt, or to the edge of the grip cap where it is gripped.
 * - `playing`: from the ground to the edge of the grip cap, so its old head and a cap are always in it.
 * - `unstated`: anywhere between the bare shaft and the playing club, as a rectangle about the middle (JCGM 100:2008 4.3.7).
 */
export function aloneLength(inHand: ShaftInHand, typical: readonly TypicalRow[]): Reading | undefined {
  const terms = aloneLengthTerms(inHand, typical);
  if (terms === undefined) return undefined;
  const value = terms.reduce((sum, { weight, reading }) => sum + weight * reading.value, 0);
  const variance = terms.reduce((sum, { weight, reading }) => sum + (weight * reading.plusMinus) ** 2, 0);
  return { value, plusMinus: Math.sqrt(variance), source: weakestSource(terms) };
}

/** The addends of the length, so that an estimate can say which of them matters. */
export function aloneLengthTerms(
  inHand: ShaftInHand,
  typical: readonly TypicalRow[],
): readonly LengthTerm[] | undefined {
  const { shaft } = inHand;
  const stated = writtenReading(shaft, "length.lengthIn");
  if (stated === undefined) return rawLengthTerms(shaft);
  const whole: LengthTerm = {
    key: "statedLengthIn",
    weight: 1,
    part: shaft.id,
    field: "length.lengthIn",
    reading: stated,
  };
  switch (shaft.length?.basis ?? "unstated") {
    case "shaft-alone":
      return [whole];
    case "with-adapter":
      return joined(whole, [
        adapterEndTerm(inHand, typical),
        ...(inHand.gripped ? [capTerm(inHand, typical)] : []),
      ]);
    case "playing":
      return joined(whole, [oldBbgmTerm(shaft, typical), capTerm(inHand, typical)]);
    case "unstated":
      return unstatedTerms(whole, [oldBbgmTerm(shaft, typical), capTerm(inHand, typical)], shaft.id);
  }
}

function joined(
  whole: LengthTerm,
  less: readonly (LengthTerm | undefined)[],
): readonly LengthTerm[] | undefined {
  return less.every((term) => term !== undefined) ? [whole, ...less] : undefined;
}

/** The adapter's end lies between the tip and the ground, so the playing length bounds every basis. */
function unstatedTerms(
  whole: LengthTerm,
  less: readonly (LengthTerm | undefined)[],
  part: string,
): readonly LengthTerm[] | undefined {
  if (!less.every((term) => term !== undefined)) return undefined;
  const halves = less.map((term) => ({ ...term, weight: term.weight / 2 }));
  const halfWidthIn = -halves.reduce((sum, { weight, reading }) => sum + weight * reading.value, 0);
  const reading: Reading = { value: 0, plusMinus: halfWidthIn / Math.sqrt(3), source: "typical" };
  return [whole, ...halves, { key: "basisDoubtIn", weight: 1, part, field: "length.basis", reading }];
}

/** A raw length tells the present one only where the tip trim is known too; the butt is then taken as uncut. */
function rawLengthTerms(shaft: Shaft): readonly LengthTerm[] | undefined {
  const raw = writtenReading(shaft, "rawLengthIn");
  const trimmed = writtenReading(shaft, "tip.trimmedIn");
  if (raw === undefined || trimmed === undefined) return undefined;
  return [
    { key: "rawLengthIn", weight: 1, part: shaft.id, field: "rawLengthIn", reading: raw },
    { key: "tipTrimmedIn", weight: -1, part: shaft.id, field: "tip.trimmedIn", reading: trimmed },
  ];
}

function adapterEndTerm(
  { shaft, adapter, bonded }: ShaftInHand,
  typical: readonly TypicalRow[],
): LengthTerm | undefined {
  const holder = bonded && adapter ? adapter : shaft;
  const reading = partReading(holder, "endBelowTipIn", typical);
  return reading && { key: "adapterEndIn", weight: -1, part: holder.id, field: "endBelowTipIn", reading };
}

function oldBbgmTerm(shaft: Shaft, typical: readonly TypicalRow[]): LengthTerm | undefined {
  const reading = partReading(shaft, "oldBbgmIn", typical);
  return reading && { key: "oldBbgmIn", weight: -1, part: shaft.id, field: "oldBbgmIn", reading };
}

/** The cap of the grip that is on the shaft, which stays; else that of the unknown grip it was measured with. */
function capTerm(
  { shaft, grip, gripped }: ShaftInHand,
  typical: readonly TypicalRow[],
): LengthTerm | undefined {
  if (gripped && grip) {
    const reading = partReading(grip, "capThicknessIn", typical);
    return reading && { key: "capThicknessIn", weight: -1, part: grip.id, field: "capThicknessIn", reading };
  }
  const reading = partReading({ kind: "grip", id: shaft.id }, "capThicknessIn", typical);
  return reading && { key: "oldCapIn", weight: -1, part: shaft.id, field: "oldCapThicknessIn", reading };
}

const sourcesFromBest: readonly ReadingSource[] = ["measured", "catalogue", "stated", "typical"];

function weakestSource(terms: readonly LengthTerm[]): ReadingSource {
  const ranks = terms.map(({ reading }) => sourcesFromBest.indexOf(reading.source));
  return sourcesFromBest[Math.max(...ranks)] ?? "typical";
}
