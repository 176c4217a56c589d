import { draftOf } from "./draft.ts";
import { type Neighbourhood, neighbourhoodOf, withKept } from "./neighbourhood.ts";
import type { PartSearch } from "./part-search.ts";
import { countsOf, planProgramme, valuesOf } from "./plan-programme.ts";
import { rounded } from "./whole-counts.ts";

/** The share of the time left that goes into solving parts of the choice anew. */
const aroundShare = 0.7;
/** So many uses at most are looked at when a part of the choice is solved anew. */
const aroundUses = 800;
/** After so many parts in a row that brought nothing, no more are solved. */
const mostVain = 60;

/**
 * Solves, again and again, what is left to decide when a part of the best choice is let go and the rest kept. More is let go
 * after what was solved to its end, less after what was not. What is drawn is the same every time.
 */
export async function searchAround(search: PartSearch): Promise<void> {
  const { packing, effort } = search;
  const until = effort.now() + search.secondsLeft * 1000 * aroundShare;
  const draw = parkMiller();
  let share = 0.4;
  let vain = 0;
  while (!search.done && effort.now() < until && vain < mostVain && share < 1) {
    const alive = search.nearestFirst(search.aliveUses(Number.POSITIVE_INFINITY));
    const around = neighbourhoodOf(packing, search.counts, alive, share, aroundUses, draw);
    const before = search.net;
    const ended = await solveAround(search, around, Math.min(1, (until - effort.now()) / 1000));
    share *= ended ? 1.04 : 0.9;
    vain = search.net > before ? 0 : vain + 1;
  }
}

/** Whether it was solved to its end. */
async function solveAround(search: PartSearch, around: Neighbourhood, seconds: number): Promise<boolean> {
  const all = around.uses.map((_, at) => at);
  const programme = planProgramme(around.packing, all, true);
  const start = valuesOf(around.packing, programme, around.start);
  const options = { seconds, relativeGap: 0, ...(start === null ? {} : { start }) };
  const answer = await search.ask(programme.programme, options);
  if (answer.values === null) return false;
  const chosen = rounded(countsOf(around.packing, programme, answer.values));
  // Choices as good as the best are taken too: from another one, other ways lead on.
  search.offer(draftOf(search.packing, withKept(around, chosen)), "heuristic", true);
  return answer.status === "best";
}

/** S. K. Park and K. W. Miller, Communications of the ACM 31 (1988) 1192–1201, as numbers above 0 and below 1. */
function parkMiller(): () => number {
  let value = 1;
  return () => {
    value = (value * 16807) % 2147483647;
    return value / 2147483647;
  };
}
