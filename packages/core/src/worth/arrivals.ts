import { gammaQuantile } from "./gamma-law.ts";

/** A belief about how often something turns up: so many sightings in so many weeks of looking. */
export interface ArrivalPrior {
  readonly shape: number;
  readonly weeks: number;
}

/** How often a part that would do turns up for sale. */
export interface Arrivals {
  /** Mean of the belief. */
  readonly ratePerWeek: number;
  /** The gamma law of the rate: its shape, and the weeks that divide it. */
  readonly shape: number;
  readonly weeks: number;
  /** How many were seen; without the prior. */
  readonly count: number;
  /** Whether nobody has looked yet, so that it is the prior that speaks. */
  readonly priorOnly: boolean;
  /** The rate lies between these with a chance of 95 %. */
  readonly low: number;
  readonly high: number;
}

/** One in eight weeks, worth as much as eight weeks of looking: a weak guess from memory, where the settings are not at hand. */
export const weakArrivalPrior: ArrivalPrior = { shape: 1, weeks: 8 };

/**
 * The rate of a Poisson process from a gamma prior and a count: shape and weeks add up (A. Gelman et al., Bayesian Data
 * Analysis, 3rd ed., section 2.6). Weeks of looking without a sighting are evidence too, and bring the rate down.
 */
export function arrivalsOf(
  seen: { readonly count: number; readonly weeks: number },
  prior: ArrivalPrior = weakArrivalPrior,
): Arrivals {
  if (!(prior.shape > 0 && prior.weeks > 0)) throw new RangeError("a prior of arrivals is above 0");
  if (!(seen.count >= 0 && seen.weeks >= 0)) throw new RangeError("nobody sees less than nothing");
  const shape = prior.shape + seen.count;
  const weeks = prior.weeks + seen.weeks;
  return {
    ratePerWeek: shape / weeks,
    shape,
    weeks,
    count: seen.count,
    priorOnly: seen.count === 0 && seen.weeks === 0,
    low: gammaQuantile(shape, 0.025) / weeks,
    high: gammaQuantile(shape, 0.975) / weeks,
  };
}
