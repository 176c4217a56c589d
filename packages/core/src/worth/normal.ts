/**
 * The standard normal law. The distribution function sums the power series of Abramowitz and Stegun, Handbook of Mathematical
 * Functions, 26.2.11, near the middle and the continued fraction 26.2.14 in the tails; the quantile halves the interval it lies in.
 */

const middleMax = 3;

export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/** The chance of a value at or under z. */
export function normalCdf(z: number): number {
  if (Number.isNaN(z)) throw new RangeError("the normal law was asked about no number");
  if (Math.abs(z) > middleMax) return z < 0 ? upperTail(-z) : 1 - upperTail(z);
  let term = z;
  let sum = z;
  for (let n = 1; Math.abs(term) > 1e-17; n += 1) {
    term *= (z * z) / (2 * n + 1);
    sum += term;
  }
  return 0.5 + normalDensity(z) * sum;
}

/** The chance of a value above z, for z well above nothing. */
function upperTail(z: number): number {
  if (z > 40) return 0;
  let fraction = z;
  for (let n = 60; n >= 1; n -= 1) fraction = z + n / fraction;
  return normalDensity(z) / fraction;
}

/** The value that the law exceeds with chance 1 − p. Throws outside of 0 to 1, ends left out. */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`a quantile needs a chance between 0 and 1, got ${p}`);
  if (p > 0.5) return -normalQuantile(1 - p);
  let low = -40;
  let high = 0;
  for (let turn = 0; turn < 200 && high - low > 1e-14; turn += 1) {
    const middle = (low + high) / 2;
    if (normalCdf(middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
