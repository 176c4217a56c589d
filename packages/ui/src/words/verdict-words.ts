import type { Verdict } from "@ferrule/core";

/** How the page says each verdict. */
export const verdictWords: Readonly<Record<Verdict, string>> = {
  fits: "Fits",
  "fits-with-work": "Fits with work",
  unsettled: "Unsettled",
  "does-not-fit": "Does not fit",
};

/** What each verdict means, in one line. */
export const verdictMeanings: Readonly<Record<Verdict, string>> = {
  fits: "Goes together as it is.",
  "fits-with-work": "Goes together after the steps named.",
  unsettled: "A fact is missing. Answer the question and it is decided.",
  "does-not-fit": "Refused, with the facts that prove it.",
};

export const verdictOrder: readonly Verdict[] = ["fits", "fits-with-work", "unsettled", "does-not-fit"];
