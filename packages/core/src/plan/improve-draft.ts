import type { Draft } from "./draft.ts";
import type { Guide } from "./guide.ts";

/** So many uses of each thing that was bought or became free are tried by force. */
const tries = 24;
/** One use put in by force may push out so many others. */
const mostEvicted = 6;

type Stop = () => boolean;

/** Does as much more as there is room for, the most promising first. */
export function fill(draft: Draft, { order }: Guide): void {
  for (const place of order) {
    const room = draft.roomFor(place);
    if (room > 0) draft.do(place, room);
  }
}

/**
 * Changes a draft for the better until no change of these kinds helps: a bundle or a whole trip more or less, and a use put in
 * the place of those that stand in its way. Every step brings more, so it ends; the same draft ends the same unless stopped.
 */
export function improve(draft: Draft, guide: Guide, stop: Stop): void {
  let before: number;
  do {
    before = draft.net;
    fill(draft, guide);
    shop(draft, guide, stop);
    unload(draft, guide, stop);
    exchange(draft, guide, stop);
    draft.settle();
  } while (draft.net > before && !stop());
}

/** The change if the draft is better for it; as it was otherwise. */
function keepIfBetter(draft: Draft, change: () => boolean): boolean {
  const { mark, net } = draft;
  if (change() && draft.net > net) return true;
  draft.backTo(mark);
  return false;
}

function shop(draft: Draft, guide: Guide, stop: Stop): void {
  const { bundles, trips } = draft.packing;
  trips.forEach((_, trip) => {
    if (stop()) return;
    keepIfBetter(draft, () => {
      bundles.forEach((bundle, place) => {
        while (bundle.trip === trip && draft.canBuy(place)) buyAndUse(draft, place, guide);
      });
      bundles.forEach((bundle, place) => {
        if (bundle.trip === trip) unloadOne(draft, place, guide);
      });
      return true;
    });
  });
  bundles.forEach((_, place) => {
    if (stop()) return;
    while (draft.canBuy(place) && keepIfBetter(draft, () => buyAndUse(draft, place, guide)));
  });
}

function buyAndUse(draft: Draft, place: number, guide: Guide): boolean {
  draft.buy(place, 1);
  for (const { resource } of draft.packing.bundles[place]?.gives ?? []) useUp(draft, resource, guide);
  return true;
}

/** Finds the best thing to do with what is free of a resource, pushing out what brings less. */
function useUp(draft: Draft, resource: number, guide: Guide): void {
  const list = guide.byResource[resource] ?? [];
  for (let at = 0; at < list.length && at < tries && (draft.free[resource] ?? 0) > 0; at += 1)
    while ((draft.free[resource] ?? 0) > 0 && force(draft, list[at] ?? 0, guide));
  fillFrom(draft, [resource], guide);
}

function unload(draft: Draft, guide: Guide, stop: Stop): void {
  const { bundles, trips } = draft.packing;
  trips.forEach((_, trip) => {
    if (stop()) return;
    keepIfBetter(draft, () =>
      bundles.every(
        (bundle, place) => bundle.trip !== trip || giveBack(draft, place, draft.bundles[place] ?? 0, guide),
      ),
    );
  });
  bundles.forEach((_, place) => {
    if (!stop()) unloadOne(draft, place, guide);
  });
}

function unloadOne(draft: Draft, place: number, guide: Guide): void {
  while ((draft.bundles[place] ?? 0) > 0 && keepIfBetter(draft, () => giveBack(draft, place, 1, guide)));
}

function giveBack(draft: Draft, place: number, times: number, guide: Guide): boolean {
  if (times === 0) return true;
  draft.buy(place, -times);
  return makeRoom(draft, -1, guide, Number.POSITIVE_INFINITY);
}

function exchange(draft: Draft, guide: Guide, stop: Stop): void {
  for (const place of guide.order) {
    if (stop()) return;
    while (force(draft, place, guide));
  }
}

/** Does a use once more, pushing out what stands in its way and using what that leaves; only if it is better so. */
function force(draft: Draft, place: number, guide: Guide): boolean {
  return keepIfBetter(draft, () => {
    draft.do(place, 1);
    return makeRoom(draft, place, guide, mostEvicted);
  });
}

/** Pushes out uses, the least promising first and `but` never, until nothing is overused; then uses what that left. */
function makeRoom(draft: Draft, but: number, guide: Guide, most: number): boolean {
  const { uses, resources } = draft.packing;
  const touched = new Set<number>();
  let left = most;
  const evict = (place: number) => {
    left -= 1;
    draft.do(place, -1);
    for (const { resource } of uses[place]?.takes ?? []) touched.add(resource);
  };
  const evictWhile = (list: readonly number[], over: () => boolean, helps: (place: number) => boolean) => {
    for (let at = list.length - 1; at >= 0 && over(); at -= 1) {
      const place = list[at] ?? 0;
      if (place === but || !helps(place)) continue;
      while (left > 0 && over() && (draft.uses[place] ?? 0) > 0) evict(place);
    }
    return !over();
  };
  const suspects = but < 0 ? resources.keys() : (uses[but]?.takes ?? []).map(({ resource }) => resource);
  for (const resource of suspects) {
    const over = () => (draft.free[resource] ?? 0) < 0;
    if (over() && !evictWhile(guide.byResource[resource] ?? [], over, () => true)) return false;
  }
  const kind = uses[but]?.kind ?? -1;
  const done =
    evictWhile(
      guide.order,
      () => kind >= 0 && draft.isKindOver(kind),
      (place) => uses[place]?.kind === kind,
    ) &&
    evictWhile(
      guide.order,
      () => draft.minutesLeft < -1e-9,
      (place) => (uses[place]?.minutes ?? 0) > 0,
    ) &&
    evictWhile(
      guide.order,
      () => draft.budgetLeft < 0,
      (place) => (uses[place]?.outlay ?? 0) > 0,
    );
  if (done) fillFrom(draft, touched, guide);
  return done;
}

function fillFrom(draft: Draft, resources: Iterable<number>, guide: Guide): void {
  for (const resource of resources) {
    for (const place of guide.byResource[resource] ?? []) {
      if ((draft.free[resource] ?? 0) <= 0) break;
      const room = draft.roomFor(place);
      if (room > 0) draft.do(place, room);
    }
  }
}
