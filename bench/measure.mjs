/** What something took by the clock, in milliseconds, and what it returned. */
export function timed(run) {
  const start = performance.now();
  const result = run();
  return { ms: performance.now() - start, result };
}

/** The same in time of the processor, all threads of this process together, so that other work on the machine counts less. */
export function timedCpu(run) {
  const start = process.cpuUsage();
  const result = run();
  const { user, system } = process.cpuUsage(start);
  return { ms: (user + system) / 1000, result };
}

export function median(values) {
  return quantile(values, 0.5);
}

/** The smallest of the values that at least this share of them does not exceed (nearest rank). */
export function quantile(values, share) {
  const ordered = values.toSorted((a, b) => a - b);
  return ordered[Math.max(0, Math.ceil(share * ordered.length) - 1)];
}

/**
 * The exponent b of the power law y = a·x^b that fits best: the slope of a straight line through the logarithms by least squares.
 * 1 is proportional, 2 is with the square, 0 does not grow.
 */
export function growthExponent(sizes, values) {
  return line(sizes.map(Math.log), values.map(Math.log)).slope;
}

/**
 * The slope of y over x by least squares, with its 95 % interval (slope ± 1.96 standard errors; NIST/SEMATECH e-Handbook of Statistical
 * Methods, 4.4.4, for many points). Samples that follow each other are alike, so the interval is rather too narrow than too wide.
 */
export function slopeWithin(xs, ys) {
  const { slope, intercept, mean, spread } = line(xs, ys);
  const left = ys.reduce((sum, y, at) => sum + (y - intercept - slope * xs[at]) ** 2, 0);
  const error = Math.sqrt(left / (xs.length - 2) / spread);
  return { slope, low: slope - 1.96 * error, high: slope + 1.96 * error, mean };
}

function line(xs, ys) {
  const meanOf = (list) => list.reduce((sum, value) => sum + value, 0) / list.length;
  const [meanX, mean] = [meanOf(xs), meanOf(ys)];
  const spread = xs.reduce((sum, x) => sum + (x - meanX) ** 2, 0);
  const slope = xs.reduce((sum, x, at) => sum + (x - meanX) * (ys[at] - mean), 0) / spread;
  return { slope, intercept: mean - slope * meanX, mean, spread };
}
