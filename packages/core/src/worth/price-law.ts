import { normalCdf, normalQuantile } from "./normal.ts";

/** How the prices of a part are spread, as far as somebody who waits for a good one has to know. In minor units. */
export interface PriceLaw {
  /** Chance that a price is at or under this one. */
  cdf(priceMinor: number): number;
  /** What a price falls short of the limit by, nothing where it is over it, on the average: E[(limit − P)⁺]. */
  expectedSaving(limitMinor: number): number;
  /** The price that this share of the prices is at or under. */
  quantile(chance: number): number;
}

/**
 * Prices whose logarithm is normal: never below nothing, and as often double the median as half of it. The expected saving is
 * the partial expectation of the log-normal law (derived, no published source: k Φ(z) − mean Φ(z − σ)).
 */
export function logNormalPrices(belief: {
  readonly medianMinor: number;
  readonly sigmaLog: number;
}): PriceLaw {
  const { medianMinor, sigmaLog } = belief;
  if (!(medianMinor > 0 && sigmaLog > 0))
    throw new RangeError(`log-normal prices need a median and a spread above 0`);
  const meanMinor = medianMinor * Math.exp((sigmaLog * sigmaLog) / 2);
  const z = (priceMinor: number) => Math.log(priceMinor / medianMinor) / sigmaLog;
  return {
    cdf: (priceMinor) => (priceMinor <= 0 ? 0 : normalCdf(z(priceMinor))),
    expectedSaving: (limitMinor) => {
      if (limitMinor <= 0) return 0;
      const at = z(limitMinor);
      return Math.max(0, limitMinor * normalCdf(at) - meanMinor * normalCdf(at - sigmaLog));
    },
    quantile: (chance) => medianMinor * Math.exp(sigmaLog * normalQuantile(chance)),
  };
}

/**
 * The same prices, of which what lies under a floor counts as the floor: what is saved beyond it would be had all the same by
 * selling the part on. E[(limit − max(P, floor))⁺] = E[(limit − P)⁺] − E[(floor − P)⁺] where the limit is over the floor.
 */
export function pricesFrom(law: PriceLaw, floorMinor: number): PriceLaw {
  const below = law.expectedSaving(floorMinor);
  return {
    cdf: (priceMinor) => (priceMinor < floorMinor ? 0 : law.cdf(priceMinor)),
    expectedSaving: (limitMinor) =>
      limitMinor <= floorMinor ? 0 : Math.max(0, law.expectedSaving(limitMinor) - below),
    quantile: (chance) => Math.max(floorMinor, law.quantile(chance)),
  };
}
