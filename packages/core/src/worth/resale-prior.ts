import type { Closeness } from "./closeness.ts";

/**
 * What is taken for granted about second-hand prices before there are any: all from memory, no published source. They decide how
 * wide an interval is where there is little evidence, and fade as evidence comes.
 */
export const resalePrior = {
  /** Standard deviation of the logarithm of the price from one sale to the next of the same thing: give or take a fifth. */
  spread: 0.2,
  /** The same of days to sell: from a third of the middle to three times as long is ordinary. */
  daysSpread: 1,
  /** How many degrees of freedom that spread counts for against residuals. */
  degreesOfFreedom: 4,
  /** How many prices' worth of variance one asked price has against one that was paid. */
  askedWeight: 0.5,
  /** The same for a price of another condition, brought over by a factor; and for each fact that is not known on either side. */
  otherConditionWeight: 0.7,
  otherFlexWeight: 0.8,
  unknownConditionWeight: 0.8,
  unknownExtraWeight: 0.95,
  /** What not knowing the condition, the cover or the wrench of the thing itself adds to the spread. */
  unknownConditionSpread: 0.1,
  unknownExtraSpread: 0.03,
} as const;

/** Standard deviation of the logarithm of the price level between a thing and others that are so close to it. From memory. */
export const levelSpread: Readonly<Record<Closeness, number>> = {
  "same-model-and-condition": 0,
  "same-model": 0,
  "same-class-and-age": 0.4,
  "same-class": 0.6,
};

/** Added where it is not even known for what kind of club a head or a club is. From memory. */
export const unknownTypeSpread = 0.6;
