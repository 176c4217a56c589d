import { roundMinor } from "../money.ts";
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

/** A way with its figures. */
export interface ReckonedWay {
  readonly alternative: Alternative;
  /** The most to pay before it is cut off at nothing: below nothing where the listing is not worth having for nothing. */
  readonly borneMinor: number | undefined;
}

/** What the user asks of a deal: the least it must bring, and the greatest chance of a loss. */
type Demands = Pick<CostSettings, "leastNetMinor" | "mostLossChance">;

/** The way at the price asked; at nothing where none is asked. */
export function reckonedWay(
  sum: WaySum,
  here: GettingHere,
  askingMinor: number,
  costs: Demands & Pick<CostSettings, "hourValueMinor">,
): ReckonedWay {
  const before = minus(sumOfGains(sum.gains), here.totalMinor);
  const net = minus(before, askingMinor);
  const minutes = sum.minutes + here.minutes;
  const price =
    askingMinor === 0 ? [] : [{ code: "price", text: "the price asked", amountMinor: -askingMinor }];
  const borneMinor = mostBorne(before, costs);
  const alternative: Alternative = {
    way: sum.way,
    possible: true,
    outlayMinor: roundMinor(askingMinor + here.moneyMinor + sum.spentMinor),
    net: {
      valueMinor: roundMinor(net.value),
      lowMinor: roundMinor(net.low),
      highMinor: roundMinor(net.high),
    },
    mostToPayMinor: Math.max(0, borneMinor),
    lossChance: lossChance(net),
    minutes: Math.round(minutes),
    profitPerHourMinor: perHour(net.value + timeMinor(minutes, costs), minutes),
    daysToMoney: sum.days,
    lines: [...sum.lines, ...here.lines, ...price],
    risks: sum.risks,
    reasons: sum.reasons,
    clubs: sum.clubs,
    usesParts: sum.usesParts,
    waiting: sum.waiting,
  };
  return { alternative, borneMinor };
}

/**
 * The price, in whole minor units, at which a gain brings just what the user asks of it, or at which its chance of a loss is
 * just what the user bears, whichever is less. It can lie below nothing.
 */
export function mostBorne(before: Gain, { leastNetMinor, mostLossChance }: Demands): number {
  return Math.floor(Math.min(before.value - leastNetMinor, gainAtChance(before, mostLossChance)));
}

function perHour(amountMinor: number, minutes: number): number | null {
  return minutes > 0 ? roundMinor(amountMinor / (minutes / 60)) : null;
}

const minus = ({ value, low, high }: Gain, amount: number): Gain => ({
  value: value - amount,
  low: low - amount,
  high: high - amount,
});

/** A way that cannot be gone, and why. */
export function closedWay(way: Way, reasons: readonly DealReason[]): ReckonedWay {
  const alternative: Alternative = {
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
  return { alternative, borneMinor: undefined };
}

/** Days until the last of several sales, after so many days of work or waiting; unknown where one sale's are. */
export function daysOfSales(sales: readonly Sale[], after: Days): Days | null {
  const known = sales.flatMap(({ days }) => days ?? []);
  if (known.length === 0 || known.length < sales.length) return null;
  const last = (side: keyof Days) => Math.round(after[side] + Math.max(...known.map((days) => days[side])));
  return { value: last("value"), low: last("low"), high: last("high") };
}
