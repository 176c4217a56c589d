import type { Amount, PackedUse, Packing } from "./packing.ts";

/**
 * Drops uses that another does better with no more: a use that takes as much or more, of time and money too, and brings no
 * more than one other use, or than the best ways to do something with each thing it takes alone. Alike uses are one by this.
 */
export function dropDominated(packing: Packing): Packing {
  const byThings = usesByThings(packing.uses);
  const beaten = (use: PackedUse) =>
    beatenWithin(use, 0, byThings, packing) || beatenApart(use, byThings, packing);
  return { ...packing, uses: packing.uses.filter((use) => !beaten(use)) };
}

/** Uses by what they take, one thing after another: those of exactly these things, the best first, and those of one more. */
interface ByThings {
  readonly uses: PackedUse[];
  readonly more: Map<number, ByThings>;
}

function usesByThings(uses: readonly PackedUse[]): ByThings {
  const root = nothingYet();
  // Sorted once, so that the uses of each place come in order.
  for (const use of uses.toSorted((a, b) => b.net - a.net)) {
    let at = root;
    for (const { resource } of use.takes) {
      const next = at.more.get(resource) ?? nothingYet();
      at.more.set(resource, next);
      at = next;
    }
    at.uses.push(use);
  }
  return root;
}

const nothingYet = (): ByThings => ({ uses: [], more: new Map() });

/** Whether a use of some or all of these things, those so far and any from a place on, beats this one. */
function beatenWithin(use: PackedUse, from: number, at: ByThings, packing: Packing): boolean {
  if (beatenByOne(use, at.uses, packing)) return true;
  for (let place = from; place < use.takes.length; place += 1) {
    const next = at.more.get((use.takes[place] as Amount).resource);
    if (next !== undefined && beatenWithin(use, place + 1, next, packing)) return true;
  }
  return false;
}

function beatenByOne(use: PackedUse, others: readonly PackedUse[], packing: Packing): boolean {
  for (const other of others) {
    if (other.net < use.net) return false;
    if (other !== use && noMore(other, use, packing) && (!noMore(use, other, packing) || before(other, use)))
      return true;
  }
  return false;
}

/** Of two uses that are alike in all but what they bring, the one that brings more stays, then the one whose id comes first. */
function before(a: PackedUse, b: PackedUse): boolean {
  return a.net > b.net || (a.net === b.net && a.id < b.id);
}

/** Whether the one takes no more than the other of anything that is limited. */
function noMore(one: PackedUse, other: PackedUse, { minutes, budget }: Packing): boolean {
  return (
    (minutes === Number.POSITIVE_INFINITY || one.minutes <= other.minutes) &&
    (budget === Number.POSITIVE_INFINITY || one.outlay <= other.outlay) &&
    (one.kind < 0 || one.kind === other.kind) &&
    one.takes.every((took) =>
      other.takes.some(({ resource, count }) => resource === took.resource && took.count <= count),
    )
  );
}

function beatenApart(use: PackedUse, byThings: ByThings, packing: Packing): boolean {
  const { takes } = use;
  if (takes.length < 2 || takes.some(({ count }) => count !== 1)) return false;
  let [net, minutes, outlay] = [0, 0, 0];
  for (const { resource } of takes) {
    const single = byThings.more
      .get(resource)
      ?.uses.find(
        ({ takes: [took], kind, ...other }) =>
          took?.count === 1 &&
          kind < 0 &&
          (packing.minutes === Number.POSITIVE_INFINITY || other.minutes <= use.minutes) &&
          (packing.budget === Number.POSITIVE_INFINITY || other.outlay <= use.outlay),
      );
    if (single === undefined) continue;
    net += single.net;
    minutes += single.minutes;
    outlay += single.outlay;
  }
  return (
    net >= use.net &&
    (packing.minutes === Number.POSITIVE_INFINITY || minutes <= use.minutes) &&
    (packing.budget === Number.POSITIVE_INFINITY || outlay <= use.outlay)
  );
}
