import type { CostSettings } from "./cost-settings.ts";
import type { Alternative, DealLine, DealReason, WaitingAnswer, Way } from "./deal.ts";
import { type Gain, gainAtChance, lossChance, sumOfGains } from "./gain.ts";
import type { GettingHere } from "./getting-here.ts";
import type { Sale } from "./sale.ts";
import { timeMinor } from "./trip-cost.ts";

type Days = NonNullable<Alternative["daysToMoney"]>;

/** A way with a listing before anything is paid for it and before it is here. */
export interface WaySum {
  readonly way: Way;
  readonly gains: readonly Gain[];
  /** The lines of the sum; money in is positive. They add up to the gains' values, to the rounding of each. */
  readonly lines: readonly DealLine[];
  readonly minutes: number;
  /** Money laid out for work and for listing what is sold, besides the price. */
  readonly spentMinor: number;
  readonly days: Days | null;
  readonly clubs: readonly string[];
  readonly usesParts: readonly string[];
  readonly risks: readonly DealReason[];
  readonly reasons: readonly DealReason[];
  readonly waiting: WaitingAnswer | null;
}

/** What the user asks of a deal: the least it must bring, and the greatest chance of a loss. */
type Demands = Pick<CostSettings, "leastNetMinor" | "mostLossChance" | "hourValueMinor">;

/** The way at the price asked; at nothing where none is asked. */
export function alternativeOf(
  sum: WaySum,
  here: GettingHere,
  askingMinor: number,
  costs: Demands,
): Alternative {
  const before = minus(sumOfGains(sum.gains), here.totalMinor);
  const net = minus(before, askingMinor);
  const minutes = sum.minutes + here.minutes;
  const ownTime = timeMinor(minutes, costs);
  const price =
    askingMinor === 0 ? [] : [{ code: "price", text: "the price asked", amountMinor: -askingMinor }];
  return {
    way: sum.way,
    possible: true,
    outlayMinor: Math.round(askingMinor + here.moneyMinor + sum.spentMinor),
    net: {
      valueMinor: Math.round(net.value),
      lowMinor: Math.round(net.low),
      highMinor: Math.round(net.high),
    },
    mostToPayMinor: mostToPay(before, costs),
    lossChance: lossChance(net),
    minutes: Math.round(minutes),
    profitPerHourMinor: minutes > 0 ? Math.round((net.value + ownTime) / (minutes / 60)) : null,
    daysToMoney: sum.days,
    lines: [...sum.lines, ...here.lines, ...price],
    risks: sum.risks,
    reasons: sum.reasons,
    clubs: sum.clubs,
    usesParts: sum.usesParts,
    waiting: sum.waiting,
  };
}

/** Where the way brings just what the user asks of it, and its chance of a loss is just what the user bears. */
function mostToPay(before: Gain, { leastNetMinor, mostLossChance }: Demands): number {
  const careful = gainAtChance(before, mostLossChance);
  return Math.max(0, Math.floor(Math.min(before.value - leastNetMinor, careful)));
}

const minus = ({ value, low, high }: Gain, amount: number): Gain => ({
  value: value - amount,
  low: low - amount,
  high: high - amount,
});

/** A way that cannot be gone, and why. */
export function closedWay(way: Way, reasons: readonly DealReason[]): Alternative {
  return {
    way,
    possible: false,
    outlayMinor: null,
    net: null,
    mostToPayMinor: null,
    lossChance: null,
    minutes: null,
    profitPerHourMinor: null,
    daysToMoney: null,
    lines: [],
    risks: [],
    reasons,
    clubs: [],
    usesParts: [],
    waiting: null,
  };
}

/** Days until the last of several sales, after so many days of work or waiting; unknown where one sale's are. */
export function daysOfSales(sales: readonly Sale[], after: number): Days | null {
  const known = sales.flatMap(({ days }) => days ?? []);
  if (known.length === 0 || known.length < sales.length) return null;
  const last = (pick: (days: Days) => number) => Math.round(after + Math.max(...known.map(pick)));
  return { value: last(({ value }) => value), low: last(({ low }) => low), high: last(({ high }) => high) };
}
