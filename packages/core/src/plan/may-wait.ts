import type { MeaningfulUse } from "./meaningful-use.ts";
import type { Offer } from "./offers.ts";
import type { StockType } from "./stock.ts";

/** A sort of head or shaft with those of the other kind that it makes a club with today. */
interface Side {
  readonly type: StockType;
  readonly kind: "head" | "shaft";
  /** What it makes a club with, and what the best such club brings. */
  readonly partners: Map<Side, number>;
  /** How many there are to pair. */
  count: number;
}

/**
 * The sorts of things of which one may have to wait: those that are left over in some way of making as many clubs as can be,
 * of what is on the bench and what can be bought today at a price that a club bears. A head and a shaft that make a club today
 * never wait both: each would count on buying what the other has. What else is on offer waits where nothing it goes with
 * does; of two such things, the head.
 */
export function mayWait(
  types: readonly StockType[],
  uses: readonly MeaningfulUse[],
  offers: readonly Offer[],
): (type: StockType) => boolean {
  const sides = sidesOf(types, uses);
  const bearable = bearableOffers(sides, uses, offers);
  for (const side of sides)
    side.count = side.type.instances.filter(
      ({ bundle }) => bundle === undefined || bearable.has(bundle),
    ).length;
  const waits = leftOver(sides.filter(({ count }) => count > 0));
  for (const kind of ["head", "shaft"] as const) {
    for (const side of sides) {
      if (side.kind !== kind || side.count > 0) continue;
      if (![...side.partners.keys()].some((partner) => waits.has(partner))) waits.add(side);
    }
  }
  const byType = new Map(sides.map((side) => [side.type, side]));
  return (type) => {
    const side = byType.get(type);
    return side !== undefined && waits.has(side);
  };
}

/** Listings whose price leaves a club made of them more than its other half brings as it is. */
function bearableOffers(
  sides: readonly Side[],
  uses: readonly MeaningfulUse[],
  offers: readonly Offer[],
): ReadonlySet<string> {
  const priceOf = new Map(offers.map((offer) => [offer.id, offer.priceMinor + tripMinor(offer)]));
  const soldFor = new Map(uses.map((use) => [use.parts.join("+"), use.do === "sell" ? use.netMinor : 0]));
  const bearable = new Set<string>();
  const costOf = ({ type }: Side): { costMinor: number; offer?: string } => {
    if (type.instances.some(({ bundle }) => bundle === undefined))
      return { costMinor: Math.max(0, soldFor.get(type.parts.map(({ id }) => id).join("+")) ?? 0) };
    const [best] = type.instances
      .flatMap(({ bundle }) => {
        const costMinor = priceOf.get(bundle ?? "");
        return bundle === undefined || costMinor === undefined ? [] : [{ costMinor, offer: bundle }];
      })
      .sort((one, other) => one.costMinor - other.costMinor);
    return best ?? { costMinor: Number.POSITIVE_INFINITY };
  };
  for (const head of sides) {
    if (head.kind !== "head") continue;
    for (const [shaft, netMinor] of head.partners) {
      const halves = [costOf(head), costOf(shaft)];
      if (netMinor <= halves.reduce((sum, { costMinor }) => sum + costMinor, 0)) continue;
      for (const { offer } of halves) if (offer !== undefined) bearable.add(offer);
    }
  }
  return bearable;
}

const tripMinor = ({ trip }: Offer) => (trip ? trip.moneyMinor + trip.timeMinor : 0);

function sidesOf(types: readonly StockType[], builds: readonly MeaningfulUse[]): Side[] {
  const sideOf = new Map<string, Side>();
  const sides: Side[] = [];
  for (const type of types) {
    const leads = type.parts.filter(({ kind }) => kind === "head" || kind === "shaft");
    const [lead] = leads;
    if (!lead || leads.length > 1) continue;
    const side = { type, kind: lead.kind as Side["kind"], partners: new Map<Side, number>(), count: 0 };
    sides.push(side);
    sideOf.set(lead.id, side);
  }
  for (const { club, netMinor } of builds) {
    const [head, shaft] = [sideOf.get(club?.head ?? ""), sideOf.get(club?.shaft ?? "")];
    if (!head || !shaft) continue;
    const bestMinor = Math.max(netMinor, head.partners.get(shaft) ?? Number.NEGATIVE_INFINITY);
    head.partners.set(shaft, bestMinor);
    shaft.partners.set(head, bestMinor);
  }
  return sides;
}

/** A pairing of as many as can be, each side as often as there are of it. */
type Pairing = Map<Side, Map<Side, number>>;

/** Dulmage and Mendelsohn: whatever an alternating path leads to from a thing that no partner is left for. */
function leftOver(sides: readonly Side[]): Set<Side> {
  const pairing = greatestPairing(sides);
  const left = new Set(sides.filter((side) => freeOf(side, pairing) > 0));
  for (const side of left)
    for (const partner of side.partners.keys()) {
      for (const [other, count] of pairing.get(partner) ?? []) if (count > 0) left.add(other);
    }
  return left;
}

function freeOf(side: Side, pairing: Pairing): number {
  let used = 0;
  for (const count of pairing.get(side)?.values() ?? []) used += count;
  return side.count - used;
}

function greatestPairing(sides: readonly Side[]): Pairing {
  const pairing: Pairing = new Map(sides.map((side) => [side, new Map<Side, number>()]));
  for (const head of sides) {
    if (head.kind !== "head") continue;
    while (freeOf(head, pairing) > 0 && findPartner(head, pairing, new Set())) {
      // As long as there is one more to pair.
    }
  }
  return pairing;
}

/** Pairs one more head of a sort, if need be by finding another partner for one that has its shaft. */
function findPartner(head: Side, pairing: Pairing, tried: Set<Side>): boolean {
  for (const shaft of head.partners.keys()) {
    const taken = pairing.get(shaft);
    if (!taken || tried.has(shaft)) continue;
    tried.add(shaft);
    const isFree = freeOf(shaft, pairing) > 0;
    const moved = isFree
      ? undefined
      : [...taken].find(([other, count]) => count > 0 && findPartner(other, pairing, tried))?.[0];
    if (!isFree && !moved) continue;
    if (moved) change(moved, shaft, -1, pairing);
    change(head, shaft, 1, pairing);
    return true;
  }
  return false;
}

function change(head: Side, shaft: Side, by: number, pairing: Pairing): void {
  for (const [one, other] of [
    [head, shaft],
    [shaft, head],
  ] as const)
    pairing.get(one)?.set(other, (pairing.get(one)?.get(other) ?? 0) + by);
}
