import { cases } from "./cases.test-kit.ts";
import { neckWithinRules } from "./neck-within-rules.ts";

// USGA Equipment Rules Part 2 s.2c: 5 in (127 mm) from the top of the neck or socket to the sole.
cases(neckWithinRules, [
  { title: "passes a neck of 2.5 in", facts: { neckToSoleIn: 2.5 }, verdict: "fits" },
  { title: "passes a neck of exactly 5 in", facts: { neckToSoleIn: 5 }, verdict: "fits" },
  {
    title: "refuses a neck of 5.01 in",
    facts: { neckToSoleIn: 5.01 },
    verdict: "does-not-fit",
    code: "neck-too-long",
    because: ["neckToSoleIn"],
    says: /5\.01 in long, and the Rules allow 5 in/,
  },
  {
    title: "asks to measure a neck that may or may not be too long",
    facts: { neckToSoleIn: { value: 5.05, plusMinus: 0.06, source: "stated" } },
    verdict: "unsettled",
    code: "neck-near-limit",
    ask: "neckToSoleIn",
    says: /may be over the 5 in.*ruler/,
  },
  { title: "has nothing to say of a neck nobody measured", facts: {}, verdict: "fits" },
]);
