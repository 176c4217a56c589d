/**
 * Whole minor units of a currency. Everything that has to be rounded is rounded here, half away from zero, and once: a sum of
 * exact shares is rounded, never a sum of rounded ones.
 */

/** ISO 4217 gives most currencies two decimals; these are the ones in common use that differ. */
const minorDigitsOfOthers: Readonly<Record<string, number>> = {
  JPY: 0,
  KRW: 0,
  ISK: 0,
  HUF: 2,
  KWD: 3,
  BHD: 3,
  TND: 3,
};

/** How many decimals a currency has (ISO 4217). */
export function minorDigits(currency: string): number {
  return minorDigitsOfOthers[currency] ?? 2;
}

/** No amount is larger than this, either way, so that thousands of them still add up exactly (2^53 is about 9 × 10^15). */
export const amountMinorMost = 1_000_000_000_000;

/**
 * Rounds to whole minor units, half away from zero; more than `amountMinorMost` counts as that much. Throws when given no
 * finite number, which is our bug.
 */
export function roundMinor(amount: number): number {
  if (!Number.isFinite(amount)) throw new RangeError(`an amount of money has to be a number, got ${amount}`);
  // A value that is a half but for the last bits of a product (0.145 × 100) counts as a half.
  const size = Math.abs(amount);
  const rounded = Math.floor(size + 0.5 + size * 4 * Number.EPSILON);
  return rounded === 0 ? 0 : Math.sign(amount) * Math.min(rounded, amountMinorMost);
}

/** A percentage of whole minor units, rounded once. */
export function percentOfMinor(amountMinor: number, percent: number): number {
  return roundMinor((amountMinor * percent) / 100);
}

/** Whole minor units of one currency in another at a typed-in rate: how much of the target one unit of the source is worth. */
export function convertMinor(amountMinor: number, from: string, to: string, rate: number): number {
  return roundMinor(amountMinor * rate * 10 ** (minorDigits(to) - minorDigits(from)));
}

/**
 * Splits whole minor units in proportion to weights, so that the shares add up to the whole exactly: what rounding leaves over
 * goes to the largest remainders, the earlier first. Weights of nothing split evenly. Throws when there is nobody to share.
 */
export function splitMinor(amountMinor: number, weights: readonly number[]): number[] {
  if (weights.length === 0) throw new RangeError("an amount has to be split over at least one share");
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const exact = weights.map((weight) =>
    total > 0 ? (amountMinor * weight) / total : amountMinor / weights.length,
  );
  const shares = exact.map((share) => Math.floor(share));
  const left = amountMinor - shares.reduce((sum, share) => sum + share, 0);
  const byRemainder = exact
    .map((share, at) => ({ at, remainder: share - Math.floor(share) }))
    .sort((one, other) => other.remainder - one.remainder || one.at - other.at);
  for (let turn = 0; turn < left; turn += 1) {
    const { at } = byRemainder[turn % byRemainder.length] as { at: number };
    shares[at] = (shares[at] as number) + 1;
  }
  return shares;
}
