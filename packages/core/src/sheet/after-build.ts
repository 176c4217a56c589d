import type { Build, ClubParts } from "../measure/build.ts";
import type { Estimates } from "../measure/estimate.ts";
import { writtenReading } from "../measure/part-reading.ts";
import { coverageFactor95 } from "../measure/uncertainty.ts";
import type { Shaft } from "../parts/part.ts";
import type { WrittenReading } from "../parts/reading.ts";
import type { Uncertain } from "./measurement.ts";

/** A finished club: its parts as they were before, the build that was carried out, and the estimates for it. */
export interface AfterBuildInput {
  readonly parts: ClubParts;
  readonly build: Build;
  readonly estimates: Estimates;
  /** The playing length as it was measured on the finished club. */
  readonly playingLengthIn: Uncertain | undefined;
  /** Cut from the butt by this build; negative where it was extended. */
  readonly buttTrimIn: number;
}

/** A butt within a hair of its mark is neither cut nor extended. */
const leastTrimIn = 0.01;

/**
 * Fields of the shaft that a build changes, as a merge patch (RFC 7396; `null` takes a field away). The measured playing length
 * becomes its length. Once it has been cut, its old mass and balance no longer hold: they become what is worked out for the cut
 * shaft, with that uncertainty; a frequency that was read before goes, since nobody knows on what length it was read.
 */
export function shaftAfterBuild(input: AfterBuildInput): Readonly<Record<string, unknown>> {
  const { parts, build, playingLengthIn, buttTrimIn } = input;
  const tipTrimIn = build.tipTrimIn ?? 0;
  const isCut = Math.abs(buttTrimIn) > leastTrimIn || tipTrimIn > leastTrimIn;
  return {
    ...lengthAfter(input, isCut, playingLengthIn),
    ...(isCut ? cutReadings(parts.shaft, input.estimates) : {}),
    ...(tipTrimIn > leastTrimIn ? { tip: tipAfter(parts.shaft, tipTrimIn) } : {}),
  };
}

function lengthAfter(
  { parts: { shaft }, estimates }: AfterBuildInput,
  isCut: boolean,
  measured: Uncertain | undefined,
): Readonly<Record<string, unknown>> {
  if (measured) return { length: { lengthIn: { ...measured, source: "measured" }, basis: "playing" } };
  if (!isCut || !shaft.length) return {};
  const { cutLengthIn } = estimates;
  return { length: cutLengthIn ? { lengthIn: workedOut(cutLengthIn), basis: "shaft-alone" } : null };
}

function cutReadings(shaft: Shaft, estimates: Estimates): Readonly<Record<string, unknown>> {
  const { shaftMassG, shaftBalanceFromTipIn } = estimates;
  return {
    ...(shaft.massG === undefined ? {} : { massG: shaftMassG ? workedOut(shaftMassG) : null }),
    ...(shaft.balanceFromTipIn === undefined
      ? {}
      : { balanceFromTipIn: shaftBalanceFromTipIn ? workedOut(shaftBalanceFromTipIn) : null }),
    ...(shaft.frequency && shaft.frequency.beamLengthIn === undefined ? { frequency: null } : {}),
  };
}

/** What was worked out is nobody's measurement. */
function workedOut({ value, low, high }: { value: number; low: number; high: number }): WrittenReading {
  return { value, plusMinus: (high - low) / (2 * coverageFactor95), source: "stated" };
}

/** The parallel section gets shorter by what is cut from it. */
function tipAfter(shaft: Shaft, tipTrimIn: number): Readonly<Record<string, unknown>> {
  const trimmed = writtenReading(shaft, "tip.trimmedIn");
  const parallel = writtenReading(shaft, "tip.parallelSectionIn");
  return {
    ...(trimmed ? { trimmedIn: { ...trimmed, value: trimmed.value + tipTrimIn } } : {}),
    ...(parallel
      ? { parallelSectionIn: { ...parallel, value: Math.max(0, parallel.value - tipTrimIn) } }
      : {}),
  };
}
