import { roundMinor } from "../money.ts";
import type { Money } from "../parts/part.ts";
import { type ItemDraft, itemsAbout } from "./item-draft.ts";
import type { MoneyFound } from "./read-money.ts";

/** What is asked for the whole listing and for one of each item, with the sums that say it. */
export interface Prices {
  readonly asking: Money | null;
  readonly askingAt: MoneyFound | null;
  /** By the place of the item. */
  readonly prices: ReadonlyMap<number, { readonly money: Money; readonly at: MoneyFound }>;
  /** A sum of which it is not plain what it is for. */
  readonly unsure: readonly MoneyFound[];
}

interface Sum extends MoneyFound {
  readonly money: Money;
}

type PriceAt = { readonly money: Money; readonly at: Sum };

const isSum = (found: MoneyFound): found is Sum => found.money !== null;

/** The sums that stand with each item; items of one noun share the words, so each has the sum. */
function pricesOf(
  items: readonly ItemDraft[],
  each: readonly Sum[],
  single: readonly Sum[],
): Map<number, { money: Money; at: Sum }> {
  const prices = new Map<number, { money: Money; at: Sum }>();
  // "… €60 and €120": as many prices behind all the things as there are things, in their order.
  const lastNamed = Math.max(...items.map(({ last }) => last));
  if (items.length > 1 && single.length === items.length && single.every(({ start }) => start >= lastNamed))
    return new Map(single.map((at, place) => [place, { money: at.money, at }]));
  for (const at of [...each, ...(single.length > 1 || each.length > 0 ? single : [])])
    for (const item of itemsAbout(items, at.start)) {
      const place = items.indexOf(item);
      if (!prices.has(place)) prices.set(place, { money: at.money, at });
    }
  const [forEach] = each;
  // A single price each, said of all: "£10 each".
  if (forEach && each.length === 1 && single.length === 0)
    for (const place of items.keys()) prices.set(place, { money: forEach.money, at: forEach });
  return prices;
}

/** Whether prices are in more than one currency: such are never added. */
const isMixed = (prices: ReadonlyMap<number, PriceAt>) =>
  new Set([...prices.values()].map(({ money }) => money.currency)).size > 1;

function sumOf(
  items: readonly ItemDraft[],
  prices: ReadonlyMap<number, { money: Money; at: Sum }>,
): Money | null {
  const currency = [...prices.values()][0]?.money.currency;
  if (currency === undefined || isMixed(prices)) return null;
  const amounts = [...prices].map(
    ([place, { money, at }]) =>
      money.amountMinor * (at.role === "each" ? (items[place]?.quantity?.value ?? 1) : 1),
  );
  return { amountMinor: roundMinor(amounts.reduce((total, amount) => total + amount, 0)), currency };
}

/** Only what is the price of one: "ten grips £15" prices the ten. */
const ofOne = (
  items: readonly ItemDraft[],
  prices: ReadonlyMap<number, PriceAt>,
): ReadonlyMap<number, PriceAt> =>
  new Map([...prices].filter(([place, { at }]) => at.role === "each" || !items[place]?.quantity));

/** Works out what is asked: a sum for all together wins; else the prices of the items added up; else the one price. */
export function priceItems(items: readonly ItemDraft[], money: readonly MoneyFound[]): Prices {
  const sums = money.filter(isSum);
  const together = sums.find(({ role }) => role === "together") ?? null;
  const each = sums.filter(({ role }) => role === "each");
  const allSingle = sums.filter(({ role }) => role === "asking");
  // "Asked £180 in spring. Now £150."
  const current = allSingle.filter(({ now }) => now);
  const single = current.length > 0 ? current.slice(-1) : allSingle;
  const apart = items.length > 1 || each.length > 0 || together !== null;
  const prices =
    apart && (single.length > 0 || each.length > 0)
      ? pricesOf(items, each, single)
      : new Map<number, PriceAt>();
  if (together) {
    return { asking: together.money, askingAt: together, prices: ofOne(items, prices), unsure: [] };
  }
  const [only, another] = single;
  // "£39 or £3.50 each": the one price is for all of it.
  if (items.length === 1 && only && !another && each[0] && each[0].money.amountMinor < only.money.amountMinor)
    return {
      asking: only.money,
      askingAt: only,
      prices: new Map([[0, { money: each[0].money, at: each[0] }]]),
      unsure: [],
    };
  // "€140, will split at €25 each".
  const [split] = each;
  if (
    split?.split &&
    each.length === 1 &&
    only &&
    !another &&
    split.money.amountMinor <= only.money.amountMinor
  )
    return {
      asking: only.money,
      askingAt: only,
      prices: new Map(items.map((_, place) => [place, { money: split.money, at: split }])),
      unsure: [],
    };
  if (isMixed(prices))
    return {
      asking: null,
      askingAt: null,
      prices: ofOne(items, prices),
      unsure: [...prices.values()].map(({ at }) => at),
    };
  const total = prices.size > 0 ? sumOf(items, prices) : null;
  if (total)
    return {
      asking: total,
      askingAt: [...prices.values()][0]?.at ?? null,
      prices: ofOne(items, prices),
      unsure: [],
    };
  const [first, ...others] = single;
  const differing = others.filter(({ money: other }) => other.amountMinor !== first?.money.amountMinor);
  return { asking: first?.money ?? null, askingAt: first ?? null, prices, unsure: differing };
}
