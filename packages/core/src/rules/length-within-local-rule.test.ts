import { rulesMethodSlackIn } from "../measure/uncut-length.ts";
import { cases } from "./cases.test-kit.ts";
import { lengthWithinLocalRule, localRuleLengthMaxIn } from "./length-within-local-rule.ts";

const ends = { bbgmIn: 1, capThicknessIn: 0.125 };
const on = { localRule46: true };

/** A reading that cannot be off, so that a sum of readings can stand on a bound. */
const exact = (value: number) => ({ value, plusMinus: 0, source: "measured" });

// Model Local Rule G-10 (announced 12 October 2021): 46 in, putters exempt. Slack of 1/12 in: tutelman.com/golf/measure/ruler.php.
cases(lengthWithinLocalRule, [
  {
    title: "has nothing to say while the local rule is off",
    facts: { localRule46: false, clubType: "driver", targetIn: 47 },
    verdict: "fits",
  },
  {
    title: "has nothing to say while nobody mentions the local rule",
    facts: { clubType: "driver", targetIn: 47 },
    verdict: "fits",
  },
  {
    title: "passes a wanted length well inside",
    facts: { ...on, clubType: "driver", targetIn: 45 },
    verdict: "fits",
  },
  {
    title: "passes a wanted length shorter than 46 in by more than the methods differ",
    facts: { ...on, clubType: "driver", targetIn: localRuleLengthMaxIn - rulesMethodSlackIn - 0.01 },
    verdict: "fits",
  },
  {
    title: "wants a wanted length as near under 46 in as the methods differ measured",
    facts: { ...on, clubType: "driver", targetIn: localRuleLengthMaxIn - rulesMethodSlackIn },
    verdict: "fits",
    code: "length-near-limit",
  },
  {
    title: "wants a wanted length of exactly 46 in measured",
    facts: { ...on, clubType: "driver", targetIn: 46 },
    verdict: "fits",
    code: "length-near-limit",
    says: /at 60 degrees/,
  },
  {
    title: "leaves a wanted length a little over 46 in to a measurement at 60 degrees",
    facts: { ...on, clubType: "driver", targetIn: 46.08 },
    verdict: "unsettled",
    code: "target-just-over-limit",
    ask: "targetIn",
    says: /46\.08 in, over the 46 in .*at 60 degrees.*plane at 60 degrees/,
  },
  {
    title: "asks what a club a little over 46 in is",
    facts: { ...on, targetIn: 46.08 },
    verdict: "unsettled",
    code: "club-type-unknown",
    ask: "clubType",
  },
  {
    title: "refuses a wanted length over 46 in by more than the methods differ",
    facts: { ...on, clubType: "driver", targetIn: 46.09 },
    verdict: "does-not-fit",
    code: "target-too-long",
    because: ["localRule46", "targetIn", "clubType"],
    says: /46\.09 in, and the local rule allows 46 in.*local rule off/,
  },
  { title: "does not limit a putter", facts: { ...on, clubType: "putter", targetIn: 50 }, verdict: "fits" },
  {
    title: "asks what a club of 47 in is",
    facts: { ...on, targetIn: 47 },
    verdict: "unsettled",
    code: "club-type-unknown",
    ask: "clubType",
    says: /What kind of club/,
  },
  {
    title: "passes an uncut club well inside",
    facts: { ...on, clubType: "driver", aloneLengthIn: 44, ...ends },
    verdict: "fits",
  },
  {
    title: "wants an uncut club of 46 in measured",
    facts: { ...on, clubType: "driver", aloneLengthIn: 44.875, ...ends },
    verdict: "fits",
    code: "length-near-limit",
  },
  {
    title: "cuts an uncut club that is too long down to 46 in",
    facts: { ...on, clubType: "driver", aloneLengthIn: 45.375, ...ends },
    verdict: "fits-with-work",
    code: "cut-to-local-rule",
    steps: ["butt-trim"],
    says: /about 46\.5 in long, and has to lose 0\.5 in/,
  },
  {
    title: "cuts an uncut club just over 46 in, for a cut settles it",
    facts: { ...on, clubType: "driver", aloneLengthIn: 44.925, ...ends },
    verdict: "fits-with-work",
    code: "cut-to-local-rule",
    steps: ["butt-trim"],
  },
  {
    title: "wants an uncut club measured where its interval ends within what the methods differ",
    facts: { ...on, clubType: "driver", aloneLengthIn: 44.85, ...ends },
    verdict: "fits",
    code: "length-near-limit",
  },
  {
    title: "asks for the vaguest length where an uncut club may be clearly over 46 in",
    facts: {
      ...on,
      clubType: "driver",
      ...ends,
      aloneLengthIn: { value: 44.5, plusMinus: 0.5, source: "stated" },
    },
    verdict: "unsettled",
    code: "length-too-vague",
    ask: "aloneLengthIn",
    says: /too vague to say whether it is within the 46 in/,
  },
  {
    title: "asks what an uncut club of 47 in is",
    facts: { ...on, aloneLengthIn: 45.875, ...ends },
    verdict: "unsettled",
    code: "club-type-unknown",
    ask: "clubType",
  },
  {
    title: "asks for the shaft's length",
    facts: { ...on, clubType: "driver", ...ends },
    verdict: "unsettled",
    code: "length-unknown",
    ask: "aloneLengthIn",
    says: /tip to its butt/,
  },
  {
    title: "asks for the bottom of the bore where it decides",
    facts: { ...on, clubType: "driver", aloneLengthIn: 44, capThicknessIn: 0.125 },
    verdict: "unsettled",
    code: "length-unknown",
    ask: "bbgmIn",
  },
  {
    title: "asks for the cap where it decides",
    facts: { ...on, clubType: "driver", aloneLengthIn: 44.5, bbgmIn: 1 },
    verdict: "unsettled",
    code: "length-unknown",
    ask: "capThicknessIn",
  },
  {
    title: "leaves a wanted length over 46 in by just as much as the methods differ to a measurement",
    facts: { ...on, clubType: "driver", targetIn: localRuleLengthMaxIn + rulesMethodSlackIn },
    verdict: "unsettled",
    code: "target-just-over-limit",
    ask: "targetIn",
  },
  {
    title: "wants an uncut club as near under 46 in as the methods differ measured",
    facts: {
      ...on,
      clubType: "driver",
      aloneLengthIn: exact(localRuleLengthMaxIn - rulesMethodSlackIn),
      bbgmIn: exact(0),
      capThicknessIn: exact(0),
    },
    verdict: "fits",
    code: "length-near-limit",
  },
  {
    title: "says by how much an uncut club is cut",
    facts: { ...on, clubType: "driver", aloneLengthIn: 46, ...ends },
    verdict: "fits-with-work",
    code: "cut-to-local-rule",
    figures: { lengthIn: 47.125, trimIn: 1.125, "butt-trim.trimIn": 1.125 },
  },
]);
