import type { Claim, Joint, Part } from "@ferrule/core";
import type { Bench } from "./api.ts";
import type { LengthUnit } from "./format/length.ts";

/** What a club, a finding or a fact needs around it to be said: the parts by name, and how to show lengths. */
export interface BenchContext {
  readonly parts: ReadonlyMap<string, Part>;
  readonly joints: readonly Joint[];
  readonly claims: readonly Claim[];
  readonly lengthUnit: LengthUnit;
}

export function contextOf(bench: Bench, lengthUnit: LengthUnit): BenchContext {
  return {
    parts: new Map(bench.parts.map((part) => [part.id, part])),
    joints: bench.joints,
    claims: bench.claims,
    lengthUnit,
  };
}
