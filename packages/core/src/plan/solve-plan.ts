import type { Counts } from "./draft.ts";
import type { SolvedPart } from "./effort.ts";
import type { LinearSolver } from "./linear-solver.ts";
import type { Packing } from "./packing.ts";
import type { PlanChoice, PlanModel, PlanSolution } from "./plan-model.ts";
import { readyPacking } from "./ready-packing.ts";
import { reducePacking } from "./reduce-packing.ts";
import { leastMsOf, nothingOf, solvePart } from "./solve-part.ts";
import { splitPacking } from "./split-packing.ts";

/** How many seconds `solvePlan` may search, from where, and who is told of what it finds. */
export interface PlanOptions {
  readonly seconds: number;
  /** Good enough: (bound − net) / |bound| at most this. */
  readonly relativeGap: number;
  /** A choice to begin from, as far as there is room for it. */
  readonly start?: PlanChoice;
  /** A clock in milliseconds. */
  readonly now: () => number;
  /** Asked often; once it says yes, the best so far is the answer. */
  readonly shouldStop?: () => boolean;
  /** Told of every better choice and every lower bound; what is told is what the answer would be if solving stopped there. */
  readonly onProgress?: (sofar: PlanSolution) => void;
}

interface SolvedPacking {
  readonly part: Packing;
  readonly solved: SolvedPart;
}

/**
 * The best choice that is found in the time, with a bound that no choice exceeds. A model that contradicts itself throws; a
 * solver that fails makes the bound worse and nothing else.
 */
export async function solvePlan(
  model: PlanModel,
  solver: LinearSolver,
  options: PlanOptions,
): Promise<PlanSolution> {
  const { now, seconds, shouldStop = () => false, relativeGap } = options;
  const until = now() + seconds * 1000;
  const parts = splitPacking(reducePacking(readyPacking(model)));
  // The great parts last: what the small ones do not need of the time is theirs.
  parts.sort((a, b) => a.uses.length - b.uses.length);
  const solved: SolvedPacking[] = parts.map((part) => ({ part, solved: nothingOf(part) }));
  for (const [at, part] of parts.entries()) {
    const ahead = parts.slice(at).reduce((sum, { uses }) => sum + uses.length, 0);
    const share = part.uses.length / ahead;
    const keep = (better: SolvedPart) => {
      solved[at] = { part, solved: better };
      options.onProgress?.(solutionOf(solved));
    };
    const ms = Math.max(Math.max(0, until - now()) * share, leastMsOf(part, seconds));
    const start = options.start && countsIn(part, options.start);
    const effort = { relativeGap, now, shouldStop, until: now() + ms, ...(start ? { start } : {}) };
    keep(await solvePart(part, solver, { ...effort, onBetter: keep }));
  }
  return solutionOf(solved);
}

/** What a choice has of a part. */
function countsIn({ uses, bundles }: Packing, choice: PlanChoice): Counts {
  const bought = new Set(choice.bundles);
  return {
    uses: uses.map(({ id }) => choice.uses[id] ?? 0),
    bundles: bundles.map(({ ids }) => ids.filter((id) => bought.has(id)).length),
  };
}

function solutionOf(parts: readonly SolvedPacking[]): PlanSolution {
  const net = sumOf(parts, "net");
  const bound = Math.max(net, sumOf(parts, "bound"));
  const methods = new Set(parts.map(({ solved }) => solved.method));
  return {
    choice: choiceOf(parts),
    netMinor: net,
    boundMinor: bound,
    gap: bound === net ? 0 : (bound - net) / Math.abs(bound),
    binding: parts
      .flatMap(bindingOf)
      .sort((a, b) => b.worthMinor - a.worthMinor || (a.limit < b.limit ? -1 : 1)),
    method: methods.has("whole-numbers")
      ? "whole-numbers"
      : methods.has("heuristic")
        ? "heuristic"
        : "relaxation",
    stopped: parts.some(({ solved }) => solved.stopped),
  };
}

function choiceOf(parts: readonly SolvedPacking[]): PlanChoice {
  const uses = parts.flatMap(({ part, solved }) =>
    part.uses.flatMap(({ id }, place): [string, number][] => {
      const times = solved.counts.uses[place] ?? 0;
      return times > 0 ? [[id, times]] : [];
    }),
  );
  const bundles = parts.flatMap(({ part, solved }) =>
    part.bundles.flatMap(({ ids }, place) => ids.slice(0, solved.counts.bundles[place] ?? 0)),
  );
  return { uses: Object.fromEntries(uses.sort(([a], [b]) => (a < b ? -1 : 1))), bundles: bundles.sort() };
}

function bindingOf({ part, solved: { prices } }: SolvedPacking): { limit: string; worthMinor: number }[] {
  if (prices === null) return [];
  const named = [
    { limit: "budget", worthMinor: prices.budget },
    { limit: "minutes", worthMinor: prices.minutes },
    ...part.kinds.map(({ id }, place) => ({ limit: `kind:${id}`, worthMinor: prices.kinds[place] ?? 0 })),
    ...part.resources.map(({ id }, place) => ({ limit: id, worthMinor: prices.resources[place] ?? 0 })),
  ];
  return named.filter(({ worthMinor }) => worthMinor > 1e-7);
}

function sumOf(parts: readonly SolvedPacking[], of: "net" | "bound"): number {
  return parts.reduce((sum, { solved }) => sum + solved[of], 0);
}
