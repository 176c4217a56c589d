import type { PlanModel } from "../../packages/core/src/plan/plan-model.ts";

/** The most a small model can bring, by trying every set of bundles and, for each, every number of every use. */
export function bestByTrying(model: PlanModel): number {
  let best = 0;
  for (let mask = 0; mask < 2 ** model.bundles.length; mask += 1) {
    const bought = model.bundles.filter((_, place) => mask & (2 ** place));
    const stock = new Map(model.resources.map(({ id, count }) => [id, count]));
    let [net, minutes, money] = [0, 0, 0];
    for (const { gives, priceMinor, timeMinor, minutes: own } of bought) {
      for (const { resource, count } of gives) stock.set(resource, stock.get(resource)! + count);
      net -= priceMinor + timeMinor;
      minutes += own;
      money += priceMinor;
    }
    for (const trip of model.trips.filter(({ id }) => bought.some((bundle) => bundle.trip === id))) {
      net -= trip.moneyMinor + trip.timeMinor;
      minutes += trip.minutes;
      money += trip.moneyMinor;
    }
    best = Math.max(best, tryUses(model, 0, { stock, net, minutes, money, kinds: new Map() }));
  }
  return best;
}

interface Spent {
  readonly stock: Map<string, number>;
  readonly net: number;
  readonly minutes: number;
  readonly money: number;
  readonly kinds: ReadonlyMap<string, number>;
}

function tryUses(model: PlanModel, from: number, spent: Spent): number {
  const { limits } = model;
  if (spent.minutes > (limits.minutes ?? Infinity) || spent.money > (limits.budgetMinor ?? Infinity))
    return -Infinity;
  if ([...spent.stock.values()].some((count) => count < 0)) return -Infinity;
  if (Object.entries(limits.mostOfKind).some(([kind, most]) => (spent.kinds.get(kind) ?? 0) > most))
    return -Infinity;
  const use = model.uses[from];
  if (use === undefined) return spent.net;
  let best = tryUses(model, from + 1, spent);
  const stock = new Map(spent.stock);
  const kinds = new Map(spent.kinds);
  for (let times = 1; times <= 12; times += 1) {
    for (const { resource, count } of use.takes) stock.set(resource, stock.get(resource)! - count);
    if (use.kind !== undefined) kinds.set(use.kind, (kinds.get(use.kind) ?? 0) + 1);
    const value = tryUses(model, from + 1, {
      stock: new Map(stock),
      kinds: new Map(kinds),
      net: spent.net + times * use.netMinor,
      minutes: spent.minutes + times * use.minutes,
      money: spent.money + times * use.outlayMinor,
    });
    if (value === -Infinity) break;
    best = Math.max(best, value);
  }
  return best;
}
