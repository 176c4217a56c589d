import type { DealVerdict, EvidenceWeight, Sighting, Way } from "@ferrule/core";

/** How the page says each verdict on a listing, where no amount goes with it. */
export const dealVerdictWords: Readonly<Record<DealVerdict, string>> = {
  buy: "Buy it",
  "offer-up-to": "Make an offer",
  "ask-first": "Ask first",
  leave: "Leave it",
};

/** What can be done with a listing. */
export const wayWords: Readonly<Record<Way, string>> = {
  "build-now": "Build with what is here",
  wait: "Wait for a part",
  "sell-as-it-is": "Sell it as it is",
  "part-out": "Take it apart and sell the parts",
  leave: "Leave it",
};

/** What became of a listing. */
export const outcomeWords: Readonly<Record<Sighting["outcome"], string>> = {
  open: "Not decided",
  bought: "Bought",
  sold: "Sold to somebody else",
  gone: "Gone",
  ignored: "Passed over",
};

export const closenessWords: Readonly<Record<EvidenceWeight["closeness"], string>> = {
  "same-model-and-condition": "Same model and condition",
  "same-model": "Same model",
  "same-class-and-age": "Same kind and age",
  "same-class": "Same kind",
};

export const conditionWords = { "as-new": "As new", good: "Good", fair: "Fair", poor: "Poor" } as const;

export const pricedWords = { sold: "Sold at", asked: "Asked" } as const;
