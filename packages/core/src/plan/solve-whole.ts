import { draftOf } from "./draft.ts";
import { wholeBound } from "./dual-bound.ts";
import type { PartSearch } from "./part-search.ts";
import { countsOf, planProgramme, valuesOf } from "./plan-programme.ts";
import { rounded } from "./whole-counts.ts";

/**
 * The whole-number solve over the most promising uses, from the best choice so far, in a share of the time left. A choice with
 * any use left out brings no more than the relaxation less what that use lacks, so the bound holds for them all.
 */
export async function solveWhole(search: PartSearch, most: number, share: number): Promise<void> {
  const { packing, dual } = search;
  const places = search.withChosen(search.aliveUses(most));
  const inside = new Set(places);
  const lack = dual.beyond.reduce(
    (least, beyond, place) => (inside.has(place) ? least : Math.max(least, beyond)),
    Number.NEGATIVE_INFINITY,
  );
  const programme = planProgramme(packing, places, true);
  const start = valuesOf(packing, programme, search.counts);
  const answer = await search.ask(programme.programme, {
    seconds: search.secondsLeft * share,
    relativeGap: search.effort.relativeGap * 0.9,
    ...(start === null ? {} : { start }),
  });
  if (answer.values !== null)
    search.offer(draftOf(packing, rounded(countsOf(packing, programme, answer.values))), "whole-numbers");
  if (answer.bound === null) return;
  const outside = wholeBound(dual.bound + Math.min(0, lack));
  search.takeBound(Math.max(wholeBound(answer.bound), inside.size === packing.uses.length ? 0 : outside));
  search.tell();
}
