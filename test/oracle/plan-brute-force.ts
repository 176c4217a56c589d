import type { Bundle, PlanModel, Use } from "../../packages/core/src/plan/plan-model.ts";

/** The most a small model can bring, by trying every choice of bundles and, for each, every number of every use. */
export function bestByTrying(model: PlanModel): number {
  let best = 0;
  for (const bought of choicesOf(alikeBundles(model.bundles))) {
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
    best = Math.max(best, tryUses(model, { stock, net, minutes, money }));
  }
  return best;
}

/** Bundles that differ in nothing but their ids: which of them are bought makes no difference, only how many. */
function alikeBundles(bundles: readonly Bundle[]): (readonly Bundle[])[] {
  const alike = new Map<string, Bundle[]>();
  for (const bundle of bundles) {
    const { id: _, ...rest } = bundle;
    const key = JSON.stringify(rest);
    alike.set(key, [...(alike.get(key) ?? []), bundle]);
  }
  return [...alike.values()];
}

function* choicesOf([first, ...rest]: readonly (readonly Bundle[])[]): Generator<readonly Bundle[]> {
  if (first === undefined) {
    yield [];
    return;
  }
  for (const others of choicesOf(rest))
    for (let count = 0; count <= first.length; count += 1) yield [...first.slice(0, count), ...others];
}

/** What is spent before anything is used, and what is there then. */
interface Spent {
  readonly stock: ReadonlyMap<string, number>;
  readonly net: number;
  readonly minutes: number;
  readonly money: number;
}

/** A use by places: what one of it takes of what is left. */
interface Taking extends Omit<Use, "takes"> {
  readonly takes: readonly { readonly place: number; readonly count: number }[];
}

function tryUses({ uses, limits }: PlanModel, spent: Spent): number {
  const kinds = Object.keys(limits.mostOfKind);
  const resources = [...spent.stock.keys()];
  const left = [...spent.stock.values(), ...Object.values(limits.mostOfKind)];
  if (left.some((count) => count < 0)) return -Infinity;
  const takings = uses.map((use): Taking => {
    const takes = use.takes.map(({ resource, count }) => ({ place: resources.indexOf(resource), count }));
    const kind = use.kind === undefined ? -1 : kinds.indexOf(use.kind);
    const ofKind = kind < 0 ? [] : [{ place: resources.length + kind, count: 1 }];
    return { ...use, takes: [...takes, ...ofKind] };
  });
  // Nothing is ever given back, so what cannot be done once now cannot be done later.
  const possible = takings.filter((use) => {
    const enough = take(use, 1, left);
    take(use, -1, left);
    return enough;
  });
  return tryFrom(possible, 0, left, spent, limits);
}

/** Takes so many of a use's shares from what is left. Returns whether there was enough. */
function take({ takes }: Taking, times: number, left: number[]): boolean {
  let enough = true;
  for (const { place, count } of takes) {
    left[place]! -= times * count;
    if (left[place]! < 0) enough = false;
  }
  return enough;
}

/** What is left is changed on the way, and is at the end what it was. */
function tryFrom(
  uses: readonly Taking[],
  from: number,
  left: number[],
  { net, minutes, money }: Omit<Spent, "stock">,
  limits: PlanModel["limits"],
): number {
  if (minutes > (limits.minutes ?? Infinity) || money > (limits.budgetMinor ?? Infinity)) return -Infinity;
  const use = uses[from];
  if (use === undefined) return net;
  let best = tryFrom(uses, from + 1, left, { net, minutes, money }, limits);
  let taken = 0;
  while (taken < 12) {
    taken += 1;
    if (!take(use, 1, left)) break;
    const value = tryFrom(
      uses,
      from + 1,
      left,
      {
        net: net + taken * use.netMinor,
        minutes: minutes + taken * use.minutes,
        money: money + taken * use.outlayMinor,
      },
      limits,
    );
    if (value === -Infinity) break;
    best = Math.max(best, value);
  }
  take(use, -taken, left);
  return best;
}
