/** Lanczos' coefficients for g = 7, n = 9, as published by P. Godfrey (2001). */
const lanczos = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;

/** Natural logarithm of the gamma function, for arguments over nothing. */
function logGamma(x: number): number {
  const [first, ...others] = lanczos;
  const sum = others.reduce((soFar, coefficient, at) => soFar + coefficient / (x + at), first as number);
  const t = x + 6.5;
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Continued fraction of the incomplete beta function (Abramowitz and Stegun 26.5.8), by Lentz' method. */
function betaFraction(a: number, b: number, x: number): number {
  const tiny = 1e-300;
  const kept = (value: number) => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / kept(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m <= 300; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    for (const term of [even, odd]) {
      d = 1 / kept(1 + term * d);
      c = kept(1 + term / c);
      fraction *= d * c;
    }
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return fraction;
}

/** Regularised incomplete beta function (Abramowitz and Stegun 26.5.1). */
function regularisedBeta(a: number, b: number, x: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x));
  if (x < (a + 1) / (a + b + 2)) return (front * betaFraction(a, b, x)) / a;
  return 1 - (front * betaFraction(b, a, 1 - x)) / b;
}

/** Chance that Student's t with some degrees of freedom, whole or not, is over `t` ≥ 0 (Abramowitz and Stegun 26.7.1). */
function upperTail(t: number, degreesOfFreedom: number): number {
  return regularisedBeta(degreesOfFreedom / 2, 0.5, degreesOfFreedom / (degreesOfFreedom + t * t)) / 2;
}

/**
 * The value that Student's t stays under with the given chance. Degrees of freedom over nothing, whole or not; the chance from
 * 0.5 to under 1. Found by halving an interval, to about ten digits.
 */
export function studentQuantile(chance: number, degreesOfFreedom: number): number {
  if (!(chance >= 0.5 && chance < 1)) throw new RangeError(`expected a chance from 0.5 to 1, got ${chance}`);
  if (!(degreesOfFreedom > 0)) throw new RangeError(`expected degrees of freedom, got ${degreesOfFreedom}`);
  const over = 1 - chance;
  let low = 0;
  let high = 1;
  while (upperTail(high, degreesOfFreedom) > over && high < 1e12) high *= 2;
  for (let turn = 0; turn < 60; turn += 1) {
    const middle = (low + high) / 2;
    if (upperTail(middle, degreesOfFreedom) > over) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
