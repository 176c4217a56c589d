import { cases } from "./cases.test-kit.ts";
import { headHandWanted } from "./head-hand-wanted.ts";

// Common practice, no source.
cases(headHandWanted, [
  { title: "the hand asked for fits", facts: { wantedHand: "left", headHand: "left" }, verdict: "fits" },
  { title: "no wish fits any hand", facts: { headHand: "left" }, verdict: "fits" },
  { title: "no wish needs no hand", facts: {}, verdict: "fits" },
  {
    title: "the other hand is refused",
    facts: { wantedHand: "left", headHand: "right" },
    verdict: "does-not-fit",
    code: "other-hand-wanted",
    because: ["wantedHand", "headHand"],
    says: /^a left-handed club was asked for and the head is right-handed \/ a left-handed head, or a wish without a hand$/,
  },
  {
    title: "a wish about a head of unknown hand asks",
    facts: { wantedHand: "right" },
    verdict: "unsettled",
    code: "head-hand-unknown",
    ask: "headHand",
    says: /^a right-handed club was asked for and nobody has said/,
  },
]);
