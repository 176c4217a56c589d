/** What the prices of a part are believed to be, before any was seen or after. */
export interface PricePrior {
  readonly medianMinor: number;
  /** Standard deviation of the logarithm of the next price. */
  readonly sigmaLog: number;
  /** How many seen prices the prior is worth; above 0. */
  readonly weight: number;
}

/** A log-normal law of the next price, by its median and the spread of its logarithm. */
export interface PriceBelief {
  /** Not rounded: it is a belief, no amount that is paid. */
  readonly medianMinor: number;
  readonly sigmaLog: number;
  /** How many seen prices it rests on. */
  readonly count: number;
  readonly priorOnly: boolean;
}

/**
 * The next price as log-normal, from a prior and the prices seen: the conjugate update of a normal law with unknown mean and
 * spread (A. Gelman et al., Bayesian Data Analysis, 3rd ed., section 3.3), its Student predictive put as a normal law of the
 * same scale. With no price seen it is the prior itself. A price of nothing has no logarithm and is left out.
 */
export function priceBeliefOf(pricesMinor: readonly number[], prior: PricePrior): PriceBelief {
  if (!(prior.medianMinor > 0 && prior.sigmaLog > 0 && prior.weight > 0))
    throw new RangeError("a prior of prices needs a median, a spread and a weight above 0");
  const logs = pricesMinor.filter((price) => price > 0).map(Math.log);
  const count = logs.length;
  if (count === 0)
    return { medianMinor: prior.medianMinor, sigmaLog: prior.sigmaLog, count, priorOnly: true };
  const total = prior.weight + count;
  const priorLog = Math.log(prior.medianMinor);
  const seenLog = logs.reduce((sum, log) => sum + log, 0) / count;
  const squares = logs.reduce((sum, log) => sum + (log - seenLog) ** 2, 0);
  const between = ((prior.weight * count) / total) * (seenLog - priorLog) ** 2;
  // The prior's spread is that of a next price; the part of it that is doubt about the median is taken out and put back.
  const within = prior.sigmaLog ** 2 / (1 + 1 / prior.weight);
  const variance = ((prior.weight * within + squares + between) / total) * (1 + 1 / total);
  const medianLog = (prior.weight * priorLog + count * seenLog) / total;
  return { medianMinor: Math.exp(medianLog), sigmaLog: Math.sqrt(variance), count, priorOnly: false };
}
