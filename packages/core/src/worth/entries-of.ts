import { roundMinor, splitMinor } from "../money.ts";
import type { Money } from "../parts/part.ts";
import type { CostSettings } from "./cost-settings.ts";
import type { Entry } from "./entry.ts";

/** A line of the books that has not been given its id yet. */
export type NewEntry = Omit<Entry, "id">;

/** What one part had of an amount that was for several. */
export interface PartShare {
  readonly part: string;
  readonly share: Money;
}

/** Something bought, as it becomes lines of the books. Amounts are positive, as one says them. */
export interface Purchase {
  readonly paid: Money;
  /** How much of the bench's currency one unit of `paid.currency` was worth that day. */
  readonly rate?: number | undefined;
  readonly on: string;
  readonly partIds: readonly string[];
  /** In what proportion the parts share what was paid; evenly where left out. */
  readonly weights?: readonly number[] | undefined;
  readonly club?: string | undefined;
  readonly sighting?: string | undefined;
  readonly roundTripKm?: number | undefined;
  readonly minutes?: number | undefined;
  readonly postage?: Money | undefined;
  readonly expected?: Entry["expected"];
  readonly note?: string | undefined;
}

/** Something sold, as it becomes lines of the books. Amounts are positive, as one says them. */
export interface Sale {
  readonly parts: readonly string[];
  readonly club?: string | undefined;
  readonly price: Money;
  readonly rate?: number | undefined;
  readonly on: string;
  readonly daysToSell?: number | undefined;
  /** Time that selling took: photographs, words, packing. */
  readonly minutes?: number | undefined;
  /** What the place took; by its fee table where left out. */
  readonly fees?: Money | undefined;
  /** What sending it cost; the buyer pays as much on top of the price where the costs say that buyers pay the postage. */
  readonly postage?: Money | undefined;
  readonly expected?: Entry["expected"];
  readonly note?: string | undefined;
}

type Rates = Pick<CostSettings, "currency" | "rates">;

/** Leaves out what is not known, so that a line of the books holds no empty field. */
function entry(fields: { readonly [Key in keyof NewEntry]: NewEntry[Key] | undefined }): NewEntry {
  return Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined),
  ) as unknown as NewEntry;
}

/** The rate of the day for an amount, so that a rate that is typed in later leaves the books as they are. */
function rateFor(amount: Money, deal: { currency: string; rate?: number | undefined }, costs: Rates) {
  if (amount.currency === costs.currency) return undefined;
  return (amount.currency === deal.currency ? deal.rate : undefined) ?? costs.rates[amount.currency];
}

function out({ amountMinor, currency }: Money): Money {
  return { amountMinor: amountMinor === 0 ? 0 : -amountMinor, currency };
}

/** Splits an amount over parts in proportion to weights (evenly without), so that no minor unit is lost. Throws without a part. */
export function sharePerPart(
  amount: Money,
  parts: readonly string[],
  weights?: readonly number[],
): PartShare[] {
  const shares = splitMinor(amount.amountMinor, weights ?? parts.map(() => 1));
  return parts.map((part, at) => {
    const amountMinor = shares[at];
    if (amountMinor === undefined)
      throw new RangeError(`expected a weight for each part, got none for ${part}`);
    return { part, share: { amountMinor, currency: amount.currency } };
  });
}

function tripOf(purchase: Purchase, currency: string, perKmMinor: number): Money | null {
  const { roundTripKm: km = 0, minutes = 0 } = purchase;
  return km > 0 || minutes > 0 ? { amountMinor: roundMinor(km * perKmMinor), currency } : null;
}

/**
 * The lines of the books for something bought, money out being negative: what was paid, what sending it cost, and the trip to fetch
 * it (money by the kilometre; its minutes are written down, not paid). With what each part had of the price.
 */
export function entriesOfPurchase(
  purchase: Purchase,
  costs: Rates & Pick<CostSettings, "perKmMinor">,
): { entries: NewEntry[]; paidPerPart: PartShare[] } {
  const { paid, on, club, sighting, partIds, postage, roundTripKm, minutes, expected, note } = purchase;
  const deal = { currency: paid.currency, rate: purchase.rate };
  const parts = partIds.length > 0 ? [...partIds] : undefined;
  const line = (type: Entry["type"], amount: Money): NewEntry =>
    entry({ on, type, amount: out(amount), rate: rateFor(amount, deal, costs), parts, club, sighting });
  const entries = [entry({ ...line("buy", paid), expected, note })];
  if (postage && postage.amountMinor !== 0) entries.push(line("postage", postage));
  const trip = tripOf(purchase, costs.currency, costs.perKmMinor);
  if (trip) entries.push(entry({ ...line("trip", trip), km: roundTripKm, minutes }));
  return { entries, paidPerPart: parts ? sharePerPart(paid, parts, purchase.weights) : [] };
}

/**
 * The lines of the books for something sold: the price in, the place's fees (`feesMinor` of the bench's currency, unless the sale
 * says what they were) and the postage out; where the buyer pays the postage, as much of it in again, so that it comes to nothing.
 */
export function entriesOfSale(
  sale: Sale,
  costs: Rates & Pick<CostSettings, "buyerPaysPostage">,
  feesMinor: number,
): NewEntry[] {
  const { price, on, club, postage, daysToSell, minutes, expected, note } = sale;
  const deal = { currency: price.currency, rate: sale.rate };
  const parts = [...sale.parts];
  const fees = sale.fees ?? { amountMinor: feesMinor, currency: costs.currency };
  const line = (type: Entry["type"], amount: Money): NewEntry =>
    entry({ on, type, amount, rate: rateFor(amount, deal, costs), parts, club });
  const entries = [entry({ ...line("sale", price), daysToSell, minutes, expected, note })];
  if (fees.amountMinor !== 0) entries.push(line("fee", out(fees)));
  if (postage && postage.amountMinor !== 0) {
    entries.push(line("postage", out(postage)));
    if (costs.buyerPaysPostage) entries.push(line("postage", postage));
  }
  return entries;
}
