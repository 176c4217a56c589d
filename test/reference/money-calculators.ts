import {
  type FeeTable,
  feesOn,
  type Parcel,
  type PostageService,
  postageFor,
  waitForPart,
} from "../../packages/core/src/index.ts";
import { cmFromIn, gFromLb, inFromCm, kgFromG, lbFromG } from "../../packages/core/src/units.ts";
import {
  discreteLaw,
  exponentialLaw,
  mirrored,
  normalLaw,
  type OfferLaw,
  uniformLaw,
} from "../../packages/core/src/worth/offer-laws.test-kit.ts";
import { chargedMassG, measuresOf } from "../../packages/core/src/worth/parcel-measures.ts";
import { gainOfWaiting } from "../../packages/core/src/worth/waiting-value.ts";
import type { Answer } from "./reference-rows.ts";

/**
 * Printed examples are about somebody who is offered X; ours is about somebody who nets `about` and pays P = about − X. Whole
 * minor units are too coarse for what is printed, so that one of the example's units is a million of ours.
 */
const unit = 1e6;
const about = 10_000 * unit;

type Law =
  | { type: "uniform"; low: number; high: number }
  | { type: "exponential"; mean: number }
  | { type: "normal"; mean: number; sd: number };

interface Offers {
  readonly law: Law;
  readonly ratePerWeek: number;
  readonly holdingPerWeek: number;
  readonly discountPerWeek: number;
  readonly deadlineWeeks?: number | null;
  readonly outside?: number;
}

interface McCall {
  readonly wages: { from: number; to: number; count: number };
  readonly betaBinomial: { n: number; a: number; b: number };
  readonly incomePerPeriod: number;
  readonly patience: number;
}

function offerLaw(law: Law): OfferLaw {
  if (law.type === "uniform") return uniformLaw(law.low * unit, law.high * unit);
  if (law.type === "exponential") return exponentialLaw(law.mean * unit);
  return normalLaw(law.mean * unit, law.sd * unit);
}

function waitForOffers({ law, deadlineWeeks = null, outside = 0, ...offers }: Offers) {
  const prices = mirrored(offerLaw(law), about);
  const answer = waitForPart({
    valueMinor: about,
    ratePerWeek: offers.ratePerWeek,
    prices,
    holdingPerWeekMinor: offers.holdingPerWeek * unit,
    discountPerWeek: offers.discountPerWeek,
    outsideMinor: outside * unit,
    deadlineWeeks,
  });
  return { ...answer, takeChance: prices.cdf(answer.takeAtOrUnderMinor) };
}

/** The chances of a beta-binomial law, by the ratio of each to the one before it. */
function betaBinomial({ n, a, b }: McCall["betaBinomial"]): number[] {
  const ratios = [1];
  for (let k = 0; k < n; k += 1) ratios.push((ratios[k]! * (n - k) * (a + k)) / ((k + 1) * (b + n - k - 1)));
  const total = ratios.reduce((sum, ratio) => sum + ratio, 0);
  return ratios.map((ratio) => ratio / total);
}

function wagesOf({ wages: { from, to, count } }: McCall): number[] {
  return Array.from({ length: count }, (_, at) => from + ((to - from) * at) / (count - 1));
}

/**
 * The job seeker's equation in ours: a wage w kept for ever is worth X = w/(1−β), one offer comes each period, the discount is
 * (1−β)/β and waiting is paid c/β: dividing H = c + βE[max(X, H)] by β gives ((1−β)/β)H = c/β + E[(X − H)⁺].
 */
function mccall(given: McCall, chances = betaBinomial(given.betaBinomial)) {
  const { patience, incomePerPeriod } = given;
  const wages = wagesOf(given);
  const pricesUp = wages.map((wage) => about - (wage * unit) / (1 - patience)).reverse();
  const prices = discreteLaw(pricesUp, [...chances].reverse());
  const answer = waitForPart({
    valueMinor: about,
    ratePerWeek: 1,
    prices,
    holdingPerWeekMinor: (-incomePerPeriod / patience) * unit,
    discountPerWeek: (1 - patience) / patience,
    outsideMinor: 0,
    deadlineWeeks: null,
  });
  return {
    reservationWage: (answer.valueMinor / unit) * (1 - patience),
    takeChance: prices.cdf(answer.takeAtOrUnderMinor),
    meanWaitPeriods: answer.expectedWaitWeeks ?? Number.NaN,
    meanWage: wages.reduce((sum, wage, at) => sum + wage * chances[at]!, 0),
  };
}

/** A sixth of each wage's chance goes to each of its neighbours, which leaves the mean where it was (the ends keep theirs). */
function spread(chances: readonly number[]): number[] {
  const wider = chances.map((chance, at) =>
    at === 0 || at === chances.length - 1 ? chance : (2 / 3) * chance,
  );
  for (let at = 1; at < chances.length - 1; at += 1) {
    wider[at - 1]! += chances[at]! / 6;
    wider[at + 1]! += chances[at]! / 6;
  }
  return wider;
}

function direction(from: number, to: number): string {
  return to > from ? "rises" : to < from ? "falls" : "stays";
}

type WrittenParcel =
  | Parcel
  | { shape: Parcel["shape"]; lengthIn: number; widthIn: number; heightIn: number; massLb: number };

function parcelOf(written: WrittenParcel): Parcel {
  if (!("lengthIn" in written)) return written;
  return {
    shape: written.shape,
    lengthCm: cmFromIn(written.lengthIn),
    widthCm: cmFromIn(written.widthIn),
    heightCm: cmFromIn(written.heightIn),
    massG: gFromLb(written.massLb),
  };
}

const cm3PerIn3 = cmFromIn(1) ** 3;

/** How each `of` is computed by the code under test; nothing here knows an answer. */
export const moneyCalculators: Readonly<Record<string, (given: never) => Answer>> = {
  mccall: (given: McCall) => mccall(given),
  mccallSigns: (given: McCall) => {
    const { reservationWage } = mccall(given);
    const withPatience = mccall({ ...given, patience: given.patience + 0.01 });
    const withIncome = mccall({ ...given, incomePerPeriod: given.incomePerPeriod + 1 });
    const withSpread = mccall(given, spread(betaBinomial(given.betaBinomial)));
    return {
      withPatience: direction(reservationWage, withPatience.reservationWage),
      withIncome: direction(reservationWage, withIncome.reservationWage),
      withSpread: direction(reservationWage, withSpread.reservationWage),
    };
  },
  offers: ({ withinWeeks, ...given }: Offers & { withinWeeks?: number }) => {
    const { valueMinor, takeChance, expectedWaitWeeks, chanceWithin } = waitForOffers(given);
    return {
      reservation: valueMinor / unit,
      takeChance,
      meanWaitWeeks: expectedWaitWeeks ?? Number.NaN,
      chanceWithin: withinWeeks === undefined ? Number.NaN : chanceWithin(withinWeeks),
    };
  },
  farFromDeadline: ({ weeks, ...given }: Offers & { weeks: number[] }) => {
    const thresholds = weeks.map((deadlineWeeks) => waitForOffers({ ...given, deadlineWeeks }).valueMinor);
    return { thresholdSpread: (Math.max(...thresholds) - Math.min(...thresholds)) / unit };
  },
  noOffer: ({ ratePerWeek, weeks }: { ratePerWeek: number; weeks: number }) => {
    // Waiting is so dear that any offer is taken, and what is outside is worse still.
    const law: Law = { type: "uniform", low: 50, high: 150 };
    const dear = { law, ratePerWeek, holdingPerWeek: 100, discountPerWeek: 0, outside: -1000 };
    return { chance: 1 - waitForOffers(dear).chanceWithin(weeks) };
  },
  drawsLeft: ({ law, draws }: { law: Law; draws: number }) => {
    const prices = mirrored(offerLaw(law), about);
    const oneDraw = {
      ratePerWeek: 1,
      holdingPerWeek: 0,
      discountPerWeek: 0,
      expectedGain: (value: number) => prices.expectedSaving(about - value),
      takeChance: (value: number) => prices.cdf(about - value),
    };
    let value = 0;
    for (let turn = 0; turn < draws; turn += 1) value += gainOfWaiting(oneDraw, value);
    return { value: value / unit };
  },
  fixedThreshold: ({ ratePerWeek, weeks }: { ratePerWeek: number; weeks: number }) => {
    const law = uniformLaw(0, 1);
    const worth = (threshold: number) => {
      const takes = 1 - law.cdf(threshold);
      const taken = threshold + (law.mean - threshold + law.expectedSaving(threshold)) / takes;
      return taken * -Math.expm1(-ratePerWeek * takes * weeks);
    };
    const thresholds = Array.from({ length: 99_999 }, (_, at) => (at + 1) / 100_000);
    const threshold = thresholds.reduce((best, next) => (worth(next) > worth(best) ? next : best));
    const falling = fallingThreshold(ratePerWeek, weeks);
    return {
      threshold,
      value: worth(threshold),
      beatenByFallingThreshold: falling > worth(threshold) ? "yes" : "no",
    };
  },
  fallingThreshold: ({ ratePerWeek, weeks }: { ratePerWeek: number; weeks: number }) => ({
    value: fallingThreshold(ratePerWeek, weeks),
  }),
  fees: (given: { priceMinor: number; postageMinor: number; table: Omit<FeeTable, "id" | "name"> }) => {
    const table = { id: "example", name: "the example", ...given.table };
    const { lines, totalMinor, soldOnlyMinor } = feesOn(given.priceMinor, given.postageMinor, table);
    const line = (code: string) => lines.find((each) => each.code === code)?.amountMinor ?? 0;
    return {
      listingMinor: line("listing"),
      sellingMinor: line("selling"),
      paymentMinor: line("payment"),
      cashOutMinor: line("cash-out"),
      totalMinor,
      soldOnlyMinor,
      leftMinor: given.priceMinor + given.postageMinor - totalMinor,
    };
  },
  measures: ({ parcel }: { parcel: WrittenParcel }) => {
    const { longestCm, girthCm, lengthPlusGirthCm, volumeM3 } = measuresOf(parcelOf(parcel));
    return {
      longestCm,
      girthCm,
      lengthPlusGirthCm,
      girthIn: inFromCm(girthCm),
      lengthPlusGirthIn: inFromCm(lengthPlusGirthCm),
      volumeFt3: (volumeM3 * 1e6) / cm3PerIn3 / 12 ** 3,
    };
  },
  chargedMass: (given: { parcel: WrittenParcel; kgPerM3?: number; in3PerLb?: number }) => {
    const kgPerM3 = given.kgPerM3 ?? (kgFromG(gFromLb(1)) * 1e6) / cm3PerIn3 / given.in3PerLb!;
    const massG = chargedMassG(parcelOf(given.parcel), kgPerM3);
    return { massKg: kgFromG(massG), massLb: lbFromG(massG) };
  },
  takes: (given: { parcel: WrittenParcel; service: Omit<PostageService, "id" | "name" | "priceMinor"> }) => {
    const service = { id: "example", name: "the example", priceMinor: 1000, ...given.service };
    const { service: taken, refused } = postageFor(parcelOf(given.parcel), [service]);
    return { refusals: taken ? "none" : refused.map(({ code }) => code).join(", ") };
  },
};

function fallingThreshold(ratePerWeek: number, weeks: number): number {
  const law: Law = { type: "uniform", low: 0, high: 1 };
  const given = { law, ratePerWeek, holdingPerWeek: 0, discountPerWeek: 0, deadlineWeeks: weeks };
  return waitForOffers(given).valueMinor / unit;
}
