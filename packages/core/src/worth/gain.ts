import { normalCdf, normalQuantile } from "./normal.ts";

/**
 * Money that is not certain, before it is rounded: a best estimate and its 95 % interval in minor units. `value` need not be
 * in the middle, so either side has a spread of its own.
 */
export interface Gain {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Half the width of a 95 % interval of a normal law, in standard deviations. */
const halfWidth = normalQuantile(0.975);

export const certain = (value: number): Gain => ({ value, low: value, high: value });

/** The sum of gains that do not depend on each other: values add, and the spread of each side adds in squares. */
export function sumOfGains(gains: readonly Gain[]): Gain {
  const value = gains.reduce((sum, gain) => sum + gain.value, 0);
  const down = Math.hypot(...gains.map((gain) => gain.value - gain.low));
  const up = Math.hypot(...gains.map((gain) => gain.high - gain.value));
  return { value, low: value - down, high: value + up };
}

/** The sum of gains that rest on one estimate, and are wrong together: values and spreads add. */
export function sumOfAlikeGains(gains: readonly Gain[]): Gain {
  const total = (pick: (gain: Gain) => number) => gains.reduce((sum, gain) => sum + pick(gain), 0);
  return {
    value: total(({ value }) => value),
    low: total(({ low }) => low),
    high: total(({ high }) => high),
  };
}

/** The chance that a gain ends below nothing, each side of it taken as half of a normal law. */
export function lossChance({ value, low, high }: Gain): number {
  const side = value >= 0 ? value - low : high - value;
  if (side <= 0) return value < 0 ? 1 : 0;
  return normalCdf((-value * halfWidth) / side);
}

/** What a gain exceeds with all but this chance. No sum is so low that a normal law never falls under it. */
export function gainAtChance({ value, low, high }: Gain, chance: number): number {
  const side = chance < 0.5 ? value - low : high - value;
  if (side <= 0 || chance === 0.5) return value;
  if (chance <= 0) return Number.NEGATIVE_INFINITY;
  if (chance >= 1) return Number.POSITIVE_INFINITY;
  return value + (normalQuantile(chance) * side) / halfWidth;
}
