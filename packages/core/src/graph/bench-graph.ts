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
import type { Place } from "./shape.ts";

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
  const refusals = addParts(parts, bench.parts);
  const { occupancy, refusals: jointRefusals } = occupancyOf(parts, bench.joints ?? []);
  refusals.push(...jointRefusals);
  if (refusals.length > 0) return { ok: false, refusals };
  const compiled = rules.map(compileRule);
  return {
    ok: true,
    graph: {
      parts,
      at: sortedInto({ head: [], adapter: [], shaft: [], grip: [] }, [...parts.values()]),
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

/** The graph of a bench with a few more parts on it. All that the bench has stays shared; maps and lists are copied. */
export function graphWith(graph: BenchGraph, more: readonly Part[], joints: readonly Joint[]): GraphResult {
  const parts = new Map(graph.parts);
  const refusals = addParts(parts, more);
  const { occupancy, refusals: jointRefusals } = graph.occupancy.withJoints(parts, joints);
  refusals.push(...jointRefusals);
  if (refusals.length > 0) return { ok: false, refusals };
  return { ok: true, graph: { ...graph, parts, occupancy, at: sortedInto(graph.at, more) } };
}

function addParts(parts: Map<string, Part>, more: readonly Part[]): Refusal[] {
  return more.flatMap((part, index) => {
    const isTaken = parts.has(part.id);
    parts.set(part.id, part);
    return isTaken
      ? [
          {
            field: `parts.${index}.id`,
            got: part.id,
            expected: "an id that no other part of the bench has",
          },
        ]
      : [];
  });
}

/** Parts by the place they take, in the order of their ids. */
function sortedInto(at: BenchGraph["at"], more: readonly Part[]): BenchGraph["at"] {
  const sorted = (place: Place) => {
    const added = more.filter(({ kind }) => kind === place);
    return added.length === 0 ? at[place] : [...at[place], ...added].sort((a, b) => (a.id < b.id ? -1 : 1));
  };
  return { head: sorted("head"), adapter: sorted("adapter"), shaft: sorted("shaft"), grip: sorted("grip") };
}
