import { type Counts, type Draft, draftOf } from "./draft.ts";
import { capacities, mostTimes, type Packing } from "./packing.ts";

/** What is left to decide when the rest of a choice stays as it is. */
export interface Neighbourhood {
  /** The packing of what the rest leaves, with those uses and bundles that could still be chosen. */
  readonly packing: Packing;
  readonly uses: readonly number[];
  readonly bundles: readonly number[];
  readonly fixed: Counts;
  /** What of the choice was let go: a choice of this packing. */
  readonly start: Counts;
}

/**
 * Lets go of about such a share of a choice, drawn one by one, and keeps the rest. Bundles that the rest needs are kept with
 * it. Of the uses only those with places in `alive` can be chosen anew, at most so many, the first of them first.
 */
export function neighbourhoodOf(
  packing: Packing,
  choice: Counts,
  alive: readonly number[],
  share: number,
  mostUses: number,
  draw: () => number,
): Neighbourhood {
  const draft = draftOf(packing, choice);
  const letGo = (times: number) =>
    Array.from({ length: times }, draw).filter((drawn) => drawn < share).length;
  choice.uses.forEach((times, place) => {
    const less = letGo(times);
    if (less > 0) draft.do(place, -less);
  });
  choice.bundles.forEach((times, place) => {
    for (let less = letGo(times); less > 0; less -= 1) giveBackIfSpare(draft, place);
  });
  return leftBy(draft, choice, alive, mostUses);
}

function giveBackIfSpare(draft: Draft, place: number): void {
  const { mark } = draft;
  draft.buy(place, -1);
  if (!draft.holds) draft.backTo(mark);
}

function leftBy(draft: Draft, choice: Counts, alive: readonly number[], mostUses: number): Neighbourhood {
  const { packing } = draft;
  const bundles = packing.bundles.flatMap((bundle, place) =>
    (draft.bundles[place] ?? 0) < bundle.ids.length ? [place] : [],
  );
  const left: Packing = {
    ...packing,
    resources: packing.resources.map(({ id }, place) => ({ id, count: draft.free[place] ?? 0 })),
    budget: draft.budgetLeft,
    minutes: draft.minutesLeft,
    kinds: packing.kinds.map(({ id }, place) => ({ id, most: draft.kindLeft(place) })),
    bundles: bundles.flatMap((place) => {
      const bundle = packing.bundles[place];
      if (bundle === undefined) return [];
      const trip = draft.isDriven(bundle.trip) ? -1 : bundle.trip;
      return [{ ...bundle, trip, ids: bundle.ids.slice(draft.bundles[place] ?? 0) }];
    }),
  };
  const capacity = capacities(left);
  const fixed = draft.counts;
  const gone = (place: number) => (choice.uses[place] ?? 0) - (fixed.uses[place] ?? 0);
  const possible = alive.filter((place) => {
    const use = packing.uses[place];
    return gone(place) === 0 && use !== undefined && mostTimes(use, left, capacity) > 0;
  });
  const letGo = fixed.uses.flatMap((_, place) => (gone(place) > 0 ? [place] : []));
  const uses = [...letGo, ...possible.slice(0, mostUses)].sort((a, b) => a - b);
  return {
    packing: { ...left, uses: uses.flatMap((place) => packing.uses[place] ?? []) },
    uses,
    bundles,
    fixed,
    start: {
      uses: uses.map(gone),
      bundles: bundles.map((place) => (choice.bundles[place] ?? 0) - (fixed.bundles[place] ?? 0)),
    },
  };
}

/** The whole choice that a choice in the neighbourhood makes with what was kept. */
export function withKept({ fixed, uses, bundles }: Neighbourhood, chosen: Counts): Counts {
  const all = { uses: [...fixed.uses], bundles: [...fixed.bundles] };
  uses.forEach((place, at) => {
    all.uses[place] = (all.uses[place] ?? 0) + (chosen.uses[at] ?? 0);
  });
  bundles.forEach((place, at) => {
    all.bundles[place] = (all.bundles[place] ?? 0) + (chosen.bundles[at] ?? 0);
  });
  return all;
}
