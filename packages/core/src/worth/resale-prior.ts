/**
 * What is taken for granted about second-hand prices before there are any: all from memory, no published source. They decide how
 * wide an interval is where there is little evidence, and fade as evidence comes. Spreads are standard deviations of logarithms.
 */
export const resalePrior = {
  /** From one sale to the next of the same thing: give or take a fifth. */
  spread: 0.2,
  /** From one asked price to the next of the same thing: who asks has not yet found a buyer. */
  askedSpread: 0.35,
  /** From one sale to the next in days: from a third of the middle to three times as long is ordinary. */
  daysSpread: 1,
  /** Between the days that sorts of things, and models of one sort, take. */
  daysByKindSpread: 0.3,
  daysByModelSpread: 0.3,
  /** How many values each spread counts for against what is seen. */
  degreesOfFreedom: 4,
  /** Between what kinds of club sell for. */
  typeSpread: 0.6,
  /** Between models of one type: in what all of one model is dear, and in what its heads or its clubs alone are. */
  modelSpread: 0.37,
  modelKindSpread: 0.15,
  /** How the share of a club's price that its head is worth differs by type of club. */
  headByTypeSpread: 0.1,
  /** What is paid for a shaft without an adapter, as a share of one with. */
  bareShare: 0.65,
  bareShareSpread: 0.4,
  bareShareByTypeSpread: 0.1,
  /** How much dearer a model is that is a year newer. */
  newerByYear: 0.05,
  newerByYearSpread: 0.06,
  unknownYearSpread: 0.3,
  leftHandSpread: 0.3,
  flexSpread: 0.1,
  numberSpread: 0.1,
  /** Between things with adapters of one family and of another. */
  familySpread: 0.1,
  /** How far off a factor of the settings may be; and that of what is asked over what is paid, and how that differs by kind. */
  factorSpread: 0.15,
  askedFactorSpread: 0.25,
  askedByKindSpread: 0.1,
  monthSpread: 0.05,
  /** What is not known of a thing: how far that may be from what is taken for it. */
  unknownConditionSpread: 0.1,
  unknownExtraSpread: 0.03,
  unknownHandSpread: 0.1,
  unknownFlexSpread: 0.1,
  unknownAdapterSpread: 0.3,
} as const;
