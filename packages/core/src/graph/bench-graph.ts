import type { Claim } from "../parts/claim.ts";
import type { Goal } from "../parts/goal.ts";
import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import type { Reference } from "../parts/reference.ts";
import type { Refusal } from "../parts/refusal.ts";
import type { Rule } from "../rules/rule.ts";
import { type CompiledRule, compileRule } from "./compiled-rule.ts";
import type { WorkTable } from "./judge-route.ts";
import { type Occupancy, occupancyOf } from "./occupancy.ts";
import { type Place, places } from "./shape.ts";

/** A bench as it is given: parts, the joints already made, fit claims, and what is wanted. */
export interface Bench {
  readonly parts: readonly Part[];
  readonly joints?: readonly Joint[];
  readonly claims?: readonly Claim[];
  readonly goal?: Goal;
}

/** A bench made ready for questions. */
export interface BenchGraph {
  readonly parts: ReadonlyMap<string, Part>;
  readonly at: Readonly<Record<Place, readonly Part[]>>;
  readonly occupancy: Occupancy;
  readonly rules: readonly CompiledRule[];
  /** Of the rules, those that must hold. */
  readonly musts: readonly CompiledRule[];
  readonly goal: Goal;
  readonly claims: readonly Claim[];
  readonly reference: Reference;
  readonly work: WorkTable;
}

export type GraphResult =
  | { readonly ok: true; readonly graph: BenchGraph }
  | { readonly ok: false; readonly refusals: Refusal[] };

/** Indexes a bench. Two parts of one id, or joints that cannot be, are refused. */
export function graphOf(bench: Bench, rules: readonly Rule[], reference: Reference): GraphResult {
  const parts = new Map<string, Part>();
  const refusals: Refusal[] = [];
  bench.parts.forEach((part, index) => {
    if (parts.has(part.id)) {
      refusals.push({
        field: `parts.${index}.id`,
        got: part.id,
        expected: "an id that no other part of the bench has",
      });
    }
    parts.set(part.id, part);
  });
  const { occupancy, refusals: jointRefusals } = occupancyOf(parts, bench.joints ?? []);
  refusals.push(...jointRefusals);
  if (refusals.length > 0) return { ok: false, refusals };
  const sorted = [...parts.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  const [head, adapter, shaft, grip] = places.map((place) => sorted.filter(({ kind }) => kind === place));
  const compiled = rules.map(compileRule);
  return {
    ok: true,
    graph: {
      parts,
      at: { head: head ?? [], adapter: adapter ?? [], shaft: shaft ?? [], grip: grip ?? [] },
      occupancy,
      rules: compiled,
      musts: compiled.filter(({ rule }) => rule.strength === "must"),
      goal: bench.goal ?? {},
      claims: bench.claims ?? [],
      reference,
      work: new Map(reference.work.map((row) => [row.step, row])),
    },
  };
}
