import type { PackedUse, Packing } from "./packing.ts";

/**
 * Drops uses that another does better with no more: a use that takes as much or more, of time and money too, and brings no
 * more than one other use, or than the best ways to do something with each thing it takes alone. Alike uses are one by this.
 */
export function dropDominated(packing: Packing): Packing {
  const byThings = new Map<string, PackedUse[]>();
  for (const use of packing.uses) {
    const key = keyOf(use.takes.map(({ resource }) => resource));
    const alike = byThings.get(key);
    if (alike === undefined) byThings.set(key, [use]);
    else alike.push(use);
  }
  for (const alike of byThings.values()) alike.sort((a, b) => b.net - a.net);
  const beaten = (use: PackedUse) =>
    subsetsOf(use).some((key) => beatenByOne(use, byThings.get(key) ?? [], packing)) ||
    beatenApart(use, byThings, packing);
  return { ...packing, uses: packing.uses.filter((use) => !beaten(use)) };
}

/** Uses with more things than this are compared only with those that take the very same things. */
const mostThings = 5;

function subsetsOf({ takes }: PackedUse): string[] {
  const all = takes.map(({ resource }) => resource);
  if (all.length > mostThings) return [keyOf(all)];
  return Array.from({ length: 2 ** all.length - 1 }, (_, mask) =>
    keyOf(all.filter((_, place) => (mask + 1) & (2 ** place))),
  );
}

function keyOf(resources: readonly number[]): string {
  return resources.join(" ");
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

function beatenApart(use: PackedUse, byThings: ReadonlyMap<string, PackedUse[]>, packing: Packing): boolean {
  const { takes } = use;
  if (takes.length < 2 || takes.some(({ count }) => count !== 1)) return false;
  let [net, minutes, outlay] = [0, 0, 0];
  for (const { resource } of takes) {
    const single = byThings
      .get(keyOf([resource]))
      ?.find(
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
