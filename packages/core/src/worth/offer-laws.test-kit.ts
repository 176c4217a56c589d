import { normalCdf, normalDensity, normalQuantile } from "./normal.ts";
import type { PriceLaw } from "./price-law.ts";

/** A law with its mean, which the laws that books print examples for all have. */
export interface OfferLaw extends PriceLaw {
  readonly mean: number;
}

export function uniformLaw(low: number, high: number): OfferLaw {
  const width = high - low;
  return {
    mean: (low + high) / 2,
    cdf: (at) => Math.min(1, Math.max(0, (at - low) / width)),
    expectedSaving: (limit) =>
      limit <= low ? 0 : limit >= high ? limit - (low + high) / 2 : (limit - low) ** 2 / (2 * width),
    quantile: (chance) => low + chance * width,
  };
}

export function exponentialLaw(mean: number): OfferLaw {
  return {
    mean,
    cdf: (at) => (at <= 0 ? 0 : -Math.expm1(-at / mean)),
    expectedSaving: (limit) => (limit <= 0 ? 0 : limit + mean * Math.expm1(-limit / mean)),
    quantile: (chance) => -mean * Math.log1p(-chance),
  };
}

export function normalLaw(mean: number, sd: number): OfferLaw {
  return {
    mean,
    cdf: (at) => normalCdf((at - mean) / sd),
    expectedSaving: (limit) => {
      const z = (limit - mean) / sd;
      return (limit - mean) * normalCdf(z) + sd * normalDensity(z);
    },
    quantile: (chance) => mean + sd * normalQuantile(chance),
  };
}

/** Values, lowest first, each with its chance. */
export function discreteLaw(values: readonly number[], chances: readonly number[]): OfferLaw {
  const sum = (of: (value: number) => number) =>
    values.reduce((total, value, at) => total + chances[at]! * of(value), 0);
  const cdf = (at: number) => sum((value) => (value <= at ? 1 : 0));
  return {
    mean: sum((value) => value),
    cdf,
    expectedSaving: (limit) => sum((value) => Math.max(0, limit - value)),
    quantile: (chance) => values.find((value) => cdf(value) >= chance)!,
  };
}

/** What a seller is offered, as prices of a buyer who nets `about`: an offer X is a part at about − X. For laws without steps. */
export function mirrored(law: OfferLaw, about: number): OfferLaw {
  return {
    mean: about - law.mean,
    cdf: (at) => 1 - law.cdf(about - at),
    expectedSaving: (limit) => law.mean - (about - limit) + law.expectedSaving(about - limit),
    quantile: (chance) => about - law.quantile(1 - chance),
  };
}
