import type { Interval } from "../interval.ts";
import type { Estimates } from "../measure/estimate.ts";
import { coverageFactor95 } from "../measure/uncertainty.ts";
import type { ClubType } from "../parts/part.ts";
import {
  type MeasuredQuantity,
  type Measurement,
  measuredQuantityNames,
  type Uncertain,
} from "./measurement.ts";
import { type BiasScales, type Residual, shrunkBias } from "./shrunk-bias.ts";

/** What this bench has found of its own estimates of one quantity. */
export interface Experience {
  /** Measured less estimated, drawn towards nothing where few clubs say so. */
  readonly bias: Uncertain;
  /** Clubs of this type that it rests on, and clubs of every type. */
  readonly clubs: number;
  readonly clubsOfAll: number;
  /** The estimate with the bias taken in; never surer than the estimate was. */
  readonly expected: { readonly value: number } & Interval;
}

/** A blank to fill in: what was estimated, and what this bench would expect by what it measured before. */
export interface Blank {
  readonly quantity: MeasuredQuantity;
  readonly estimate: ({ readonly value: number } & Interval) | null;
  /** Nothing where no club has been measured yet. */
  readonly experience: Experience | null;
}

/** One figure beside what was estimated of it. */
export interface Comparison {
  readonly quantity: MeasuredQuantity;
  readonly measured: Uncertain;
  readonly estimated: Uncertain | null;
  /** Measured less estimated. */
  readonly difference: number | null;
  /** Whether the two are further apart than 95 in 100 would be: measure again, or look for what is not as it was said. */
  readonly isSurprising: boolean;
}

/**
 * How far the estimates of a whole bench may lie off, and those of one type of club from these: from memory, chosen so that one
 * club moves little and five move most of the way. Playing length in inches, swing weight in points, mass in grams, frequency
 * in cycles a minute.
 */
export const biasScales: Readonly<Record<MeasuredQuantity, BiasScales>> = {
  playingLengthIn: { shared: 0.15, between: 0.1 },
  swingWeightPoints: { shared: 1.5, between: 1 },
  massG: { shared: 4, between: 3 },
  frequencyCpm: { shared: 6, between: 4 },
};

/** The estimate of a quantity with its standard uncertainty. */
export function estimatedOf(estimates: Estimates, quantity: MeasuredQuantity): Uncertain | undefined {
  const found = intervalOf(estimates, quantity);
  return found && { value: found.value, plusMinus: (found.high - found.low) / (2 * coverageFactor95) };
}

/** Every blank of a sheet, in the order in which a finished club is measured. */
export function blanksOf(
  estimates: Estimates,
  clubType: ClubType | undefined,
  measurements: readonly Measurement[],
): readonly Blank[] {
  return measuredQuantityNames.map((quantity) => {
    const estimate = intervalOf(estimates, quantity) ?? null;
    return { quantity, estimate, experience: experienceOf(estimates, quantity, clubType, measurements) };
  });
}

/** Estimate against measured, for every figure that was read. */
export function comparisonsOf({ measured, estimated }: Measurement): readonly Comparison[] {
  return measuredQuantityNames.flatMap((quantity) => {
    const read = measured[quantity];
    return read ? [comparison(quantity, read, estimated[quantity] ?? null)] : [];
  });
}

function comparison(
  quantity: MeasuredQuantity,
  measured: Uncertain,
  estimated: Uncertain | null,
): Comparison {
  if (!estimated) return { quantity, measured, estimated, difference: null, isSurprising: false };
  const difference = measured.value - estimated.value;
  const allowed = coverageFactor95 * Math.hypot(measured.plusMinus, estimated.plusMinus);
  return { quantity, measured, estimated, difference, isSurprising: Math.abs(difference) > allowed };
}

function intervalOf(
  estimates: Estimates,
  quantity: MeasuredQuantity,
): ({ readonly value: number } & Interval) | undefined {
  if (quantity === "swingWeightPoints") {
    const { swingWeight } = estimates;
    return swingWeight
      ? { value: swingWeight.points, low: swingWeight.low, high: swingWeight.high }
      : undefined;
  }
  const found = estimates[quantity];
  return found ? { value: found.value, low: found.low, high: found.high } : undefined;
}

function experienceOf(
  estimates: Estimates,
  quantity: MeasuredQuantity,
  clubType: ClubType | undefined,
  measurements: readonly Measurement[],
): Experience | null {
  const residuals = measurements.flatMap((measurement) => residualOf(measurement, quantity));
  const estimate = estimatedOf(estimates, quantity);
  if (residuals.length === 0 || !estimate) return null;
  const shrunk = shrunkBias(residuals, clubType ?? "unknown", biasScales[quantity]);
  const { value, plusMinus, count, countOfAll } = shrunk;
  const half = coverageFactor95 * Math.hypot(estimate.plusMinus, plusMinus);
  const middle = estimate.value + value;
  return {
    bias: { value, plusMinus },
    clubs: count,
    clubsOfAll: countOfAll,
    expected: { value: middle, low: middle - half, high: middle + half },
  };
}

/** The least that a difference is uncertain by, so that a figure said to be exact cannot outweigh all others. */
const leastPlusMinus = 1e-3;

function residualOf(
  { measured, estimated, clubType }: Measurement,
  quantity: MeasuredQuantity,
): readonly Residual[] {
  const [read, before] = [measured[quantity], estimated[quantity]];
  if (!read || !before) return [];
  const plusMinus = Math.max(leastPlusMinus, Math.hypot(read.plusMinus, before.plusMinus));
  return [{ group: clubType ?? "unknown", value: read.value - before.value, plusMinus }];
}
