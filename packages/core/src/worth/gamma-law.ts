/**
 * The chance that a gamma draw with this shape and a scale of 1 is at or under `at`: the regularised lower incomplete gamma
 * function, by its series below the mean (NIST DLMF 8.7.1) and its continued fraction above (NIST DLMF 8.9.2).
 */
export function gammaCdf(shape: number, at: number): number {
  if (!(shape > 0)) throw new RangeError(`a gamma law has a shape above 0, got ${shape}`);
  if (at <= 0) return 0;
  const front = Math.exp(shape * Math.log(at) - at - logGamma(shape));
  return at < shape + 1 ? front * lowerSeries(shape, at) : 1 - front * upperFraction(shape, at);
}

/** The value that a gamma draw with this shape and a scale of 1 is at or under with this chance, by bisection. */
export function gammaQuantile(shape: number, chance: number): number {
  if (!(chance >= 0 && chance < 1)) throw new RangeError(`a chance lies from 0 to under 1, got ${chance}`);
  let [low, high] = [0, shape + 1];
  while (gammaCdf(shape, high) < chance) high *= 2;
  for (let turn = 0; turn < 100; turn += 1) {
    const middle = (low + high) / 2;
    if (gammaCdf(shape, middle) < chance) low = middle;
    else high = middle;
  }
  return high;
}

function lowerSeries(shape: number, at: number): number {
  let term = 1 / shape;
  let sum = term;
  for (let n = 1; term > sum * Number.EPSILON; n += 1) {
    term *= at / (shape + n);
    sum += term;
  }
  return sum;
}

/** Lentz's way of working a continued fraction out from its front; a few hundred turns are more than it ever needs here. */
function upperFraction(shape: number, at: number): number {
  let b = at + 1 - shape;
  let c = 1e300;
  let d = 1 / b;
  let product = d;
  for (let n = 1; n < 10_000; n += 1) {
    const a = -n * (n - shape);
    b += 2;
    d = 1 / (a * d + b);
    c = b + a / c;
    product *= c * d;
    if (Math.abs(c * d - 1) < 4 * Number.EPSILON) break;
  }
  return product;
}

const lanczos = [
  676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
];

/** Logarithm of the gamma function for what is above 0, by Lanczos's approximation with g = 7 and nine terms. */
function logGamma(of: number): number {
  if (of < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * of)) - logGamma(1 - of);
  const x = of - 1;
  const sum = lanczos.reduce(
    (total, coefficient, at) => total + coefficient / (x + at + 1),
    0.9999999999998099,
  );
  const t = x + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (x + 0.5) * Math.log(t) - t + Math.log(sum);
}
