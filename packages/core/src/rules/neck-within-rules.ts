import { doesNotFit, fits, unsettled } from "../findings/outcome.ts";
import { readingInterval } from "../measure/reading-interval.ts";
import { defineRule } from "./rule.ts";

export const neckToSoleMaxIn = 5;

/** A neck may be 5 in long at most, from its top to the sole. */
export const neckWithinRules = defineRule({
  id: "neck-within-rules",
  intent: "The neck may be 5 in long at most from its top to the sole, because the Rules of Golf say so.",
  strength: "must",
  grain: "part",
  needs: {},
  uses: { neckToSoleIn: "head.neckToSoleIn" },
  source: { title: "USGA Equipment Rules Part 2 s.2c" },
  check: ({ neckToSoleIn }) => {
    if (neckToSoleIn === undefined || neckToSoleIn.value <= neckToSoleMaxIn) return fits();
    const data = { lengthIn: neckToSoleIn.value, limitIn: neckToSoleMaxIn };
    if (readingInterval(neckToSoleIn).low > neckToSoleMaxIn)
      return doesNotFit("neck-too-long", ["neckToSoleIn"], data);
    return unsettled("neck-near-limit", "neckToSoleIn", data);
  },
  say: {
    "neck-too-long": ({ lengthIn, limitIn }, teller) =>
      `the neck of ${teller.part("head")} is ${teller.inches(Number(lengthIn))} long, and the Rules allow ${teller.inches(Number(limitIn))}`,
    "neck-near-limit": ({ lengthIn, limitIn }, teller) =>
      `the neck of ${teller.part("head")} may be over the ${teller.inches(Number(limitIn))} the Rules allow, at about ${teller.inches(Number(lengthIn))}`,
  },
  ask: { neckToSoleIn: "How long is the neck from its top to the sole, measured along it with a ruler?" },
});
