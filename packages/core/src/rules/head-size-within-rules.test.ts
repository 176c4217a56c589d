import { cases } from "./cases.test-kit.ts";
import { headSizeWithinRules } from "./head-size-within-rules.ts";

const stated = (value: number) => ({ value, plusMinus: 0.06, source: "stated" });

/** A reading that cannot be off, so that a sum of readings can stand on a bound. */
const exact = (value: number) => ({ value, plusMinus: 0, source: "measured" });

// USGA Equipment Rules Part 2 s.4b(i): heel to toe at most 5 in and more than face to back, sole to crown at most 2.8 in.
cases(headSizeWithinRules, [
  {
    title: "passes a driver well inside",
    facts: { clubType: "driver", heelToToeIn: 4.8, faceToBackIn: 4.4, soleToCrownIn: 2.4 },
    verdict: "fits",
  },
  {
    title: "passes a driver on both limits",
    facts: { clubType: "driver", heelToToeIn: 5, faceToBackIn: 4.9, soleToCrownIn: 2.8 },
    verdict: "fits",
  },
  {
    title: "refuses 5.01 in from heel to toe",
    facts: { clubType: "driver", heelToToeIn: 5.01 },
    verdict: "does-not-fit",
    code: "heel-to-toe-too-long",
    because: ["heelToToeIn", "clubType"],
    says: /5\.01 in from heel to toe.*allow a wood 5 in/,
  },
  {
    title: "asks about about 5.05 in from heel to toe",
    facts: { clubType: "driver", heelToToeIn: stated(5.05) },
    verdict: "unsettled",
    code: "heel-to-toe-near-limit",
    ask: "heelToToeIn",
    says: /How far is it from heel to toe/,
  },
  {
    title: "refuses 2.81 in from sole to crown",
    facts: { clubType: "fairway", soleToCrownIn: 2.81 },
    verdict: "does-not-fit",
    code: "sole-to-crown-too-high",
    because: ["soleToCrownIn", "clubType"],
    says: /2\.81 in from sole to crown/,
  },
  {
    title: "asks about about 2.85 in from sole to crown",
    facts: { clubType: "driver", soleToCrownIn: stated(2.85) },
    verdict: "unsettled",
    code: "sole-to-crown-near-limit",
    ask: "soleToCrownIn",
    says: /top of the crown/,
  },
  {
    title: "refuses a head as deep as it is wide",
    facts: { clubType: "driver", heelToToeIn: 4.7, faceToBackIn: 4.71 },
    verdict: "does-not-fit",
    code: "deeper-than-wide",
    because: ["heelToToeIn", "faceToBackIn", "clubType"],
    says: /4\.7 in from heel to toe and 4\.71 in from face to back/,
  },
  {
    title: "passes a head a hundredth wider than deep",
    facts: { clubType: "driver", heelToToeIn: 4.71, faceToBackIn: 4.7 },
    verdict: "fits",
  },
  {
    title: "asks about a head stated as deep as it is wide",
    facts: { clubType: "driver", heelToToeIn: stated(4.7), faceToBackIn: stated(4.7) },
    verdict: "unsettled",
    code: "about-as-deep-as-wide",
    ask: "faceToBackIn",
    says: /about as deep/,
  },
  {
    title: "refuses before it asks",
    facts: { clubType: "driver", heelToToeIn: stated(5.05), soleToCrownIn: 3 },
    verdict: "does-not-fit",
    code: "sole-to-crown-too-high",
  },
  {
    title: "asks what a head too big for a wood is",
    facts: { heelToToeIn: 5.5 },
    verdict: "unsettled",
    code: "club-type-unknown",
    ask: "clubType",
    says: /What kind of club/,
  },
  { title: "does not limit an iron", facts: { clubType: "iron", soleToCrownIn: 3 }, verdict: "fits" },
  { title: "has nothing to say where nothing is measured", facts: { clubType: "driver" }, verdict: "fits" },
  {
    title: "refuses a driver that is just as deep as it is wide",
    facts: { clubType: "driver", heelToToeIn: exact(4), faceToBackIn: exact(4) },
    verdict: "does-not-fit",
    code: "deeper-than-wide",
    because: ["heelToToeIn", "faceToBackIn", "clubType"],
  },
]);
