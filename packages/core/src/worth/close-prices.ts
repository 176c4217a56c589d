import { roundMinor } from "../money.ts";
import { type Closeness, closenessOf } from "./closeness.ts";
import type { Subject } from "./evidence.ts";
import type { Loading } from "./mixed-model.ts";
import type { NextPrice, PriceModel } from "./price-model.ts";
import type { EvidenceWeight } from "./resale.ts";

/** A noted price as what bears on others: what its effects come to but for its model's, and what they are called. */
export interface BearingPrice {
  readonly price: PriceModel["prices"][number];
  readonly at: number;
  readonly known: number;
  readonly names: ReadonlySet<string>;
}

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

export function bearingPrices(model: PriceModel): BearingPrice[] {
  return model.prices.map((price, at) => ({
    ...{ price, at, known: knownEffects(model, price.loadings) },
    names: new Set(price.loadings.map(({ effect }) => effect.name)),
  }));
}

/** Those that bear on the thing. A club says something of its head and a head of its club, though less than its like. */
export function closePrices(
  prices: readonly BearingPrice[],
  subject: Subject,
  currency: string,
): ClosePrice[] {
  const sibling = siblingOf(subject);
  const close: ClosePrice[] = [];
  for (const bearing of prices) {
    const { row } = bearing.price;
    const asked = row.kind === subject.kind ? subject : row.kind === sibling?.kind ? sibling : null;
    if (asked === null || bearing.price.currency !== currency) continue;
    const closeness = closenessOf(asked, row);
    if (closeness === null) continue;
    const isOfKind = asked === subject;
    close.push({ bearing, closeness: isOfKind ? closeness : "same-class", isOfKind });
  }
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
