import { roundMinor } from "../money.ts";
import type { PriceLaw } from "./price-law.ts";
import {
  atDeadline,
  earlier,
  gainOfWaiting,
  reservationValue,
  type Waiting,
  type WaitLeft,
} from "./waiting-value.ts";

type Discount =
  | { readonly discountPerYearPercent: number; readonly discountPerWeek?: never }
  | { readonly discountPerWeek: number; readonly discountPerYearPercent?: never };

/**
 * What is known when a part is missing. Amounts are in minor units, times in weeks; money loses worth by a percent a year or a
 * continuous rate a week.
 */
export type PartWait = Discount & {
  /** What the completed club nets, before the price of the part that is missing. */
  readonly valueMinor: number;
  /** How often a part that would do turns up. */
  readonly ratePerWeek: number;
  readonly prices: PriceLaw;
  readonly holdingPerWeekMinor: number;
  /** What can be had instead at any time: the head sold as it is. */
  readonly outsideMinor: number;
  /** Give up, and take what is outside, after so many weeks; null for never. */
  readonly deadlineWeeks: number | null;
};

/** When to take a missing part, and what waiting for it is worth. Amounts are whole minor units. */
export interface WaitAnswer {
  /** Take the first part at or under this price. It is 0 where not even a part for nothing beats what is outside. */
  readonly takeAtOrUnderMinor: number;
  /** What is held now: waiting, or what is outside where that is more. */
  readonly valueMinor: number;
  /** Whether waiting beats taking what is outside now. */
  readonly waits: boolean;
  /**
   * Weeks until a part is taken, on the average; with a deadline, until one is taken or the deadline comes. Null where nobody
   * waits, and where waiting is free and has no deadline, so that one waits for a price that never comes.
   */
  readonly expectedWaitWeeks: number | null;
  /** Chance that a part has been taken so many weeks from now. 0 where nobody waits. */
  readonly chanceWithin: (weeks: number) => number;
  /** With a deadline: the price to take when so many weeks are left. It rises as they run out. */
  readonly thresholds?: readonly { readonly weeks: number; readonly takeAtOrUnderMinor: number }[];
}

/** Weeks in a year of 365.25 days. */
const weeksPerYear = 365.25 / 7;

/** What money must earn in a year, in percent, as a continuous rate for a week. */
export function discountPerWeekOf(percentPerYear: number): number {
  return Math.log1p(percentPerYear / 100) / weeksPerYear;
}

/**
 * Optimal stopping in continuous time: parts turn up as a Poisson process at prices P, and the first at or under V − R is
 * taken, where R is what waiting is worth (see `reservationValue`; with a deadline see `earlier`).
 */
export function waitForPart(wait: PartWait): WaitAnswer {
  const waiting = waitingFor(wait);
  if (gainOfWaiting(waiting, wait.outsideMinor) <= 0) return notWorthWaiting(wait);
  const reservation = reservationValue(waiting, wait.outsideMinor);
  return wait.deadlineWeeks === null
    ? waitForEver(wait, waiting, reservation)
    : waitUntil(wait, waiting, reservation, wait.deadlineWeeks);
}

function waitingFor(wait: PartWait): Waiting {
  return {
    ratePerWeek: wait.ratePerWeek,
    holdingPerWeek: wait.holdingPerWeekMinor,
    discountPerWeek: wait.discountPerWeek ?? discountPerWeekOf(wait.discountPerYearPercent),
    expectedGain: (value) => wait.prices.expectedSaving(wait.valueMinor - value),
    takeChance: (value) => wait.prices.cdf(wait.valueMinor - value),
  };
}

function takeAtOrUnder(wait: PartWait, value: number): number {
  return Math.max(0, roundMinor(wait.valueMinor - value));
}

function notWorthWaiting(wait: PartWait): WaitAnswer {
  return {
    takeAtOrUnderMinor: takeAtOrUnder(wait, wait.outsideMinor),
    valueMinor: roundMinor(wait.outsideMinor),
    waits: false,
    expectedWaitWeeks: null,
    chanceWithin: () => 0,
  };
}

function waitForEver(wait: PartWait, waiting: Waiting, reservation: number): WaitAnswer {
  const takesPerWeek = waiting.ratePerWeek * waiting.takeChance(reservation);
  const costsNothing = waiting.holdingPerWeek === 0 && waiting.discountPerWeek === 0;
  return {
    takeAtOrUnderMinor: takeAtOrUnder(wait, reservation),
    valueMinor: roundMinor(reservation),
    waits: true,
    expectedWaitWeeks: costsNothing || takesPerWeek === 0 ? null : 1 / takesPerWeek,
    chanceWithin: (weeks) => 1 - Math.exp(-takesPerWeek * Math.max(0, weeks)),
  };
}

function waitUntil(wait: PartWait, waiting: Waiting, reservation: number, deadlineWeeks: number): WaitAnswer {
  const leftAt = (weeks: number) => earlier(waiting, atDeadline(wait.outsideMinor), weeks, reservation);
  const now = leftAt(deadlineWeeks);
  return {
    takeAtOrUnderMinor: takeAtOrUnder(wait, now.value),
    valueMinor: roundMinor(now.value),
    waits: true,
    expectedWaitWeeks: now.weeks,
    chanceWithin: (weeks) => {
      const passed = Math.min(deadlineWeeks, Math.max(0, weeks));
      return 1 - Math.exp(leftAt(deadlineWeeks - passed).takes - now.takes);
    },
    thresholds: thresholdsBefore(deadlineWeeks, leftAt).map(({ weeks, left }) => ({
      weeks,
      takeAtOrUnderMinor: takeAtOrUnder(wait, left.value),
    })),
  };
}

/** Now, at each quarter of the time, and at the deadline. */
function thresholdsBefore(deadlineWeeks: number, leftAt: (weeks: number) => WaitLeft) {
  return [1, 0.75, 0.5, 0.25, 0].map((share) => ({
    weeks: deadlineWeeks * share,
    left: leftAt(deadlineWeeks * share),
  }));
}
