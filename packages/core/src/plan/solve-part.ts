import { Draft, draftOf } from "./draft.ts";
import { dualBound, plainPrices, wholeBound } from "./dual-bound.ts";
import type { Effort, SolvedPart } from "./effort.ts";
import { greedyDraft } from "./greedy-plan.ts";
import { guideOf, scoresByNet, scoresByScarcity, scoresByTime } from "./guide.ts";
import { improve } from "./improve-draft.ts";
import type { LinearSolver } from "./linear-solver.ts";
import type { Packing } from "./packing.ts";
import { PartSearch } from "./part-search.ts";
import { improveAlive, mayRelax, relax, roundOff } from "./relax-part.ts";
import { searchAround } from "./search-around.ts";
import { solveWhole } from "./solve-whole.ts";

/** Up to so many uses, exchanges are tried on all of them before the relaxation says which are worth it. */
const fewUses = 600;
/** A first whole-number solve sees this many: all of them where the model is small, and then that is the end of it. */
const fewAlive = 300;
/** A part of no more than that is looked at for twice the time of the whole, within these, however little is its share. */
const leastMsOfFew = { low: 300, high: 2_000 };
/** The next whole-number solve sees about so many uses, those nearest to paying at the prices of the relaxation. */
const firstUses = 1_500;
/** With more uses than this the whole-number solver does not come to anything, nor back in time. */
const manyUses = 12_000;

/** The least time for a part: what can be solved to its end, which takes hundredths of a second, is not stopped by a busy machine. */
export function leastMsOf({ uses }: Packing, seconds: number): number {
  const { low, high } = leastMsOfFew;
  return uses.length <= fewAlive ? Math.max(low, Math.min(high, 2_000 * seconds)) : 0;
}

/** What is known of a part before anything is tried: nothing done, and the bound that needs no solver. */
export function nothingOf(packing: Packing): SolvedPart {
  return {
    counts: new Draft(packing).counts,
    net: 0,
    bound: wholeBound(dualBound(packing, plainPrices(packing)).bound),
    prices: null,
    method: "heuristic",
    stopped: true,
  };
}

/** The best choice of one part that was found, and how good it could be at most. */
export async function solvePart(packing: Packing, solver: LinearSolver, effort: Effort): Promise<SolvedPart> {
  const search = new PartSearch(packing, solver, effort);
  begin(search);
  if (search.isPlainlyBest()) return search.result;
  // Even where the first choice is near enough: the prices say what binds.
  const relaxed = mayRelax(search) ? await relax(search) : null;
  if (relaxed && !search.isNear) roundOff(search, relaxed);
  if (!search.done) improveAlive(search, 2 * firstUses);
  if (!search.done) await solveWhole(search, fewAlive, 0.4);
  if (!search.done) await searchAround(search);
  if (!search.done) await solveWhole(search, firstUses, 0.5);
  if (!search.done) await solveWhole(search, manyUses, 1);
  return search.result;
}

/** What is given to begin from, greedy in several orders, the best of them improved by exchanges where there are few enough uses to try all. */
function begin(search: PartSearch): void {
  const { packing, effort } = search;
  if (effort.start) search.offer(draftOf(packing, effort.start), "heuristic");
  for (const scores of [scoresByNet, scoresByScarcity, scoresByTime])
    search.offer(greedyDraft(packing, scores(packing)), "heuristic");
  if (packing.uses.length > fewUses) return;
  const draft = draftOf(packing, search.counts);
  improve(draft, guideOf(packing, scoresByNet(packing)), search.out);
  search.offer(draft, "heuristic");
}
