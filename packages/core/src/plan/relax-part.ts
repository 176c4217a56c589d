import { type Counts, draftOf } from "./draft.ts";
import { guideOf } from "./guide.ts";
import { fill, improve } from "./improve-draft.ts";
import type { PartSearch } from "./part-search.ts";
import { countsOf, planProgramme, pricesOf } from "./plan-programme.ts";
import { isWhole, rounded } from "./whole-counts.ts";

/** The share of the time left that search may take before the whole-number solver has its turn. */
const searchShare = 0.2;

/** With so few uses the relaxation takes hundredths of a second, and without it there is no bound worth telling. */
const soonRelaxed = 3_000;

/** Whether the relaxation is to be solved: a small one always, however little time there is, unless the user stops. */
export function mayRelax({ packing, effort, out }: PartSearch): boolean {
  return packing.uses.length <= soonRelaxed ? !effort.shouldStop() : !out();
}

/** Solves the relaxation for its prices and its bound; where it is whole, it is the plan. Null where the solver has no answer. */
export async function relax(search: PartSearch): Promise<Counts | null> {
  const { packing } = search;
  const all = packing.uses.map((_, place) => place);
  const programme = planProgramme(packing, all, false);
  const answer = await (all.length <= soonRelaxed
    ? search.askSurely(programme.programme)
    : search.ask(programme.programme, { seconds: search.secondsLeft, relativeGap: 0 }));
  if (answer.prices === null || !search.takePrices(pricesOf(packing, programme, answer.prices))) return null;
  const relaxed = answer.values && countsOf(packing, programme, answer.values);
  if (relaxed && isWhole(relaxed)) search.offer(draftOf(packing, rounded(relaxed)), "relaxation");
  search.tell();
  return relaxed;
}

/** The relaxation made whole: bundles it takes enough of are bought, uses rounded down, and the rest filled up. */
export function roundOff(search: PartSearch, relaxed: Counts): void {
  const { packing, dual } = search;
  const scores = dual.beyond.map((beyond, place) => {
    const part = (relaxed.uses[place] ?? 0) % 1;
    return part > 1e-6 && part < 1 - 1e-6 ? 1e7 * part : beyond;
  });
  const guide = guideOf(packing, scores);
  for (const enough of [0.9, 0.5, 0.2]) {
    const draft = draftOf(packing, {
      uses: relaxed.uses.map((times) => Math.floor(times + 1e-6)),
      bundles: relaxed.bundles.map((times) => Math.floor(times + 1 - enough + 1e-6)),
    });
    fill(draft, guide);
    search.offer(draft, "heuristic");
  }
}

/** Exchanges among the uses that could still be in a better choice, at most so many. */
export function improveAlive(search: PartSearch, most: number): void {
  const { packing, effort, dual, counts } = search;
  const places = search.withChosen(search.aliveUses(most));
  const small = { ...packing, uses: places.flatMap((place) => packing.uses[place] ?? []) };
  const draft = draftOf(small, { ...counts, uses: places.map((place) => counts.uses[place] ?? 0) });
  const until = effort.now() + search.secondsLeft * 1000 * searchShare;
  const stop = () => search.out() || effort.now() > until;
  const guide = guideOf(
    small,
    places.map((place) => dual.beyond[place] ?? 0),
  );
  improve(draft, guide, stop);
  search.offerSome(places, draft.counts);
}
