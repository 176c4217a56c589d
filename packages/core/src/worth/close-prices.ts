import { roundMinor } from "../money.ts";
import { type Closeness, closenessOf } from "./closeness.ts";
import type { Subject } from "./evidence.ts";
import type { Loading } from "./mixed-model.ts";
import { factorBits } from "./price-factors.ts";
import type { NextPrice, PriceModel } from "./price-model.ts";
import type { EvidenceWeight } from "./resale.ts";

/** A noted price as what bears on others: what its effects come to but for its model's, and which factors are in it. */
export interface BearingPrice {
  readonly price: PriceModel["prices"][number];
  readonly at: number;
  readonly known: number;
  readonly factors: number;
}

/** By the kind of thing. */
export type BearingPrices = ReadonlyMap<Subject["kind"], readonly BearingPrice[]>;

export interface ClosePrice {
  readonly bearing: BearingPrice;
  readonly closeness: Closeness;
  readonly isOfKind: boolean;
}

/** What effects come to as learnt, but for those of the one model: what a price is brought over by. */
function knownEffects({ design, learnt }: PriceModel, loadings: readonly Loading[]): number {
  return loadings.reduce((sum, { effect, times }) => {
    if (effect.spread !== null || effect.variance === null) return sum;
    const column = design.columns.get(effect.name);
    const moved = column === undefined ? 0 : (learnt.solution.means[column] as number);
    return sum + times * (effect.mean + moved);
  }, 0);
}

/** The prices in the currency of the bench. */
export function bearingPrices(model: PriceModel, currency: string): BearingPrices {
  const byKind = new Map<Subject["kind"], BearingPrice[]>();
  for (const [at, price] of model.prices.entries()) {
    if (price.currency !== currency) continue;
    const { loadings, row } = price;
    const bearing = { price, at, known: knownEffects(model, loadings), factors: factorBits(loadings) };
    const ofKind = byKind.get(row.kind);
    if (ofKind) ofKind.push(bearing);
    else byKind.set(row.kind, [bearing]);
  }
  return byKind;
}

/** Those that bear on the thing. A club says something of its head and a head of its club, though less than its like. */
export function closePrices(prices: BearingPrices, subject: Subject): ClosePrice[] {
  const close: ClosePrice[] = [];
  for (const bearing of prices.get(subject.kind) ?? []) {
    const closeness = closenessOf(subject, bearing.price.row);
    if (closeness !== null) close.push({ bearing, closeness, isOfKind: true });
  }
  const sibling = siblingOf(subject);
  for (const bearing of (sibling && prices.get(sibling.kind)) ?? [])
    if (closenessOf(sibling as Subject, bearing.price.row) !== null)
      close.push({ bearing, closeness: "same-class", isOfKind: false });
  return close;
}

function siblingOf(subject: Subject): Subject | null {
  if (subject.kind === "head") return { ...subject, kind: "club" };
  return subject.kind === "club" ? { ...subject, kind: "head" } : null;
}

/** The share of each of the close prices in what they weigh together, most first. */
export function basisOf(
  model: PriceModel,
  { weights, loadings }: NextPrice,
  close: readonly ClosePrice[],
): EvidenceWeight[] {
  const weightAt = (at: number) => Math.abs(weights[at] as number);
  const all = close.reduce((sum, { bearing }) => sum + weightAt(bearing.at), 0);
  const mine = knownEffects(model, loadings);
  return close
    .map(({ bearing: { price, at, known }, closeness }) => ({
      evidence: price.row.id,
      closeness,
      share: weightAt(at) / all,
      adjustedMinor: roundMinor(price.amountMinor * Math.exp(mine - known)),
    }))
    .sort((one, other) => other.share - one.share || (one.evidence < other.evidence ? -1 : 1));
}
