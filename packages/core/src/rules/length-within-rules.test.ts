import { buttExtensionMaxIn, rulesMethodSlackIn } from "../measure/uncut-length.ts";
import { cases } from "./cases.test-kit.ts";
import { clubLengthMaxIn, clubLengthMinIn, lengthWithinRules } from "./length-within-rules.ts";

const typicalIn = (value: number, plusMinus: number) => ({ value, plusMinus, source: "typical" });
const ends = { bbgmIn: 1, capThicknessIn: 0.125 };

/** A reading that cannot be off, so that a sum of readings can stand on a bound. */
const exact = (value: number) => ({ value, plusMinus: 0, source: "measured" });
const uncut = (lengthIn: number) => ({
  aloneLengthIn: exact(lengthIn),
  bbgmIn: exact(0),
  capThicknessIn: exact(0),
});
const vague = (value: number, plusMinus: number) => ({ value, plusMinus, source: "stated" });

// R&A and USGA "Procedure for measuring the length of golf clubs" rev. 1.1 s. 4.1: 18 in to 48 in, putters exempt from the
// greatest. tutelman.com/golf/measure/ruler.php: the trade's length and that of the Rules differ by less than 1/12 in.
cases(lengthWithinRules, [
  {
    title: "passes a wanted length well inside",
    facts: { clubType: "driver", targetIn: 45 },
    verdict: "fits",
  },
  {
    title: "passes a wanted length shorter than 48 in by more than the methods differ",
    facts: { clubType: "driver", targetIn: clubLengthMaxIn - rulesMethodSlackIn - 0.01 },
    verdict: "fits",
  },
  {
    title: "wants a wanted length as near under 48 in as the methods differ measured",
    facts: { clubType: "driver", targetIn: clubLengthMaxIn - rulesMethodSlackIn },
    verdict: "fits",
    code: "length-near-limit",
  },
  {
    title: "wants a wanted length of exactly 48 in measured",
    facts: { clubType: "driver", targetIn: 48 },
    verdict: "fits",
    code: "length-near-limit",
    says: /measured by their method, at 60 degrees/,
  },
  {
    title: "leaves a wanted length a little over 48 in to a measurement at 60 degrees",
    facts: { clubType: "driver", targetIn: 48.08 },
    verdict: "unsettled",
    code: "target-just-outside",
    ask: "targetIn",
    says: /asks for 48\.08 in, outside a limit.*at 60 degrees.*plane at 60 degrees/,
  },
  {
    title: "refuses a wanted length over 48 in by more than the methods differ",
    facts: { clubType: "driver", targetIn: 48.09, aloneLengthIn: 47, ...ends },
    verdict: "does-not-fit",
    code: "target-too-long",
    because: ["targetIn", "clubType"],
    says: /asks for 48\.09 in, and the Rules allow 48 in.*a shorter club/,
  },
  { title: "does not limit a putter", facts: { clubType: "putter", targetIn: 50 }, verdict: "fits" },
  {
    title: "asks what a club of 50 in is",
    facts: { targetIn: 50 },
    verdict: "unsettled",
    code: "club-type-unknown",
    ask: "clubType",
    says: /unless the club is a putter/,
  },
  {
    title: "wants a wanted length of exactly 18 in measured",
    facts: { clubType: "putter", targetIn: 18 },
    verdict: "fits",
    code: "length-near-limit",
  },
  {
    title: "passes a wanted length over 18 in by more than the methods differ",
    facts: { clubType: "putter", targetIn: clubLengthMinIn + rulesMethodSlackIn + 0.01 },
    verdict: "fits",
  },
  {
    title: "leaves a wanted length a little under 18 in to a measurement at 60 degrees",
    facts: { clubType: "putter", targetIn: 17.99 },
    verdict: "unsettled",
    code: "target-just-outside",
    ask: "targetIn",
  },
  {
    title: "refuses a wanted length under 18 in by more than the methods differ",
    facts: { clubType: "putter", targetIn: 17.91 },
    verdict: "does-not-fit",
    code: "target-too-short",
    because: ["targetIn"],
    says: /17\.91 in, and the Rules for 18 in or more/,
  },
  {
    title: "passes an uncut club well inside",
    facts: { clubType: "driver", aloneLengthIn: 44, ...ends },
    verdict: "fits",
  },
  {
    title: "wants an uncut club of 48 in measured",
    facts: { clubType: "driver", aloneLengthIn: 46.875, ...ends },
    verdict: "fits",
    code: "length-near-limit",
  },
  {
    title: "cuts an uncut club that is too long down to 48 in",
    facts: { clubType: "driver", aloneLengthIn: 47.875, ...ends },
    verdict: "fits-with-work",
    code: "cut-to-rules",
    steps: ["butt-trim"],
    says: /about 49 in long, and has to lose 1 in/,
  },
  {
    title: "cuts an uncut club just over 48 in, for a cut settles it",
    facts: { clubType: "driver", aloneLengthIn: 46.925, ...ends },
    verdict: "fits-with-work",
    code: "cut-to-rules",
    steps: ["butt-trim"],
  },
  {
    title: "asks for the vaguest length where an uncut club may be clearly over 48 in",
    facts: { clubType: "driver", aloneLengthIn: 46.5, capThicknessIn: 0.125, bbgmIn: typicalIn(1, 0.3) },
    verdict: "unsettled",
    code: "length-too-vague",
    ask: "bbgmIn",
    says: /too vague to say whether it is within the limits/,
  },
  {
    title: "does not mind how long a vague putter may be",
    facts: { clubType: "putter", aloneLengthIn: 46.5, capThicknessIn: 0.125, bbgmIn: typicalIn(1, 0.3) },
    verdict: "fits",
  },
  {
    title: "leaves the cutting to the local rule where that is on",
    facts: { localRule46: true, clubType: "driver", aloneLengthIn: 47.875, ...ends },
    verdict: "fits",
  },
  {
    title: "does not cut a putter",
    facts: { clubType: "putter", aloneLengthIn: 50, ...ends },
    verdict: "fits",
  },
  {
    title: "asks what an uncut club of 49 in is",
    facts: { aloneLengthIn: 47.875, ...ends },
    verdict: "unsettled",
    code: "club-type-unknown",
    ask: "clubType",
  },
  {
    title: "lengthens a club of 17 in to 18",
    facts: { clubType: "putter", aloneLengthIn: 15.875, ...ends },
    verdict: "fits-with-work",
    code: "lengthened-to-rules",
    steps: ["butt-extension"],
    says: /lengthened by about 1 in to reach the 18 in/,
  },
  {
    title: "refuses a shaft that cannot reach 18 in",
    facts: { clubType: "putter", aloneLengthIn: 14.8, ...ends },
    verdict: "does-not-fit",
    code: "too-short",
    because: ["aloneLengthIn", "bbgmIn", "capThicknessIn"],
    says: /shorter than the 18 in of the Rules, even lengthened/,
  },
  {
    title: "asks for a length too vague to tell whether it reaches 18 in",
    facts: { clubType: "putter", aloneLengthIn: { value: 15, plusMinus: 0.5, source: "stated" }, ...ends },
    verdict: "unsettled",
    code: "length-unknown",
    ask: "aloneLengthIn",
  },
  {
    title: "asks for the shaft's length",
    facts: { clubType: "driver", ...ends },
    verdict: "unsettled",
    code: "length-unknown",
    ask: "aloneLengthIn",
    says: /from its tip to its butt/,
  },
  {
    title: "does not need the bottom of the bore where no bore would make it too long",
    facts: { clubType: "iron", aloneLengthIn: 36, capThicknessIn: 0.125 },
    verdict: "fits",
  },
  {
    title: "asks for the bottom of the bore where it decides",
    facts: { clubType: "driver", aloneLengthIn: 45, capThicknessIn: 0.125 },
    verdict: "unsettled",
    code: "length-unknown",
    ask: "bbgmIn",
  },
  {
    title: "asks for the cap where it decides",
    facts: { clubType: "driver", aloneLengthIn: 46.5, bbgmIn: 1 },
    verdict: "unsettled",
    code: "length-unknown",
    ask: "capThicknessIn",
  },
  {
    title: "leaves a wanted length under 18 in by just as much as the methods differ to a measurement",
    facts: { clubType: "putter", targetIn: clubLengthMinIn - rulesMethodSlackIn },
    verdict: "unsettled",
    code: "target-just-outside",
    ask: "targetIn",
  },
  {
    title: "wants a wanted length over 18 in by just as much as the methods differ measured",
    facts: { clubType: "putter", targetIn: clubLengthMinIn + rulesMethodSlackIn },
    verdict: "fits",
    code: "length-near-limit",
  },
  {
    title: "leaves a wanted length over 48 in by just as much as the methods differ to a measurement",
    facts: { clubType: "driver", targetIn: clubLengthMaxIn + rulesMethodSlackIn },
    verdict: "unsettled",
    code: "target-just-outside",
    ask: "targetIn",
  },
  {
    title: "lengthens by just the most that a butt is lengthened",
    facts: { clubType: "putter", ...uncut(clubLengthMinIn - buttExtensionMaxIn) },
    verdict: "fits-with-work",
    code: "lengthened-to-rules",
    figures: { extensionIn: 2, "butt-extension.extensionIn": 2 },
  },
  {
    title: "lengthens no uncut club of exactly 18 in",
    facts: { clubType: "putter", ...uncut(clubLengthMinIn) },
    verdict: "fits",
    code: "length-near-limit",
  },
  ...[clubLengthMinIn + rulesMethodSlackIn, clubLengthMinIn + 0.05, clubLengthMaxIn - rulesMethodSlackIn].map(
    (lengthIn) => ({
      title: `wants an uncut club of ${lengthIn.toFixed(2)} in measured`,
      facts: { clubType: "driver", ...uncut(lengthIn) },
      verdict: "fits" as const,
      code: "length-near-limit" as const,
    }),
  ),
  {
    title: "wants a club of 18.05 in measured that may be as short as 17.99",
    facts: { clubType: "putter", ...uncut(18.05), aloneLengthIn: vague(18.05, 0.03) },
    verdict: "fits",
    code: "length-near-limit",
  },
  {
    title: "asks for the length of a putter of which hardly anything is known",
    facts: { clubType: "putter", ...uncut(50), aloneLengthIn: vague(50, 17) },
    verdict: "unsettled",
    code: "length-too-vague",
    ask: "aloneLengthIn",
  },
  {
    title: "wants a vague putter measured that is 18 in or more at the least, however long at the most",
    facts: { clubType: "putter", ...uncut(34), aloneLengthIn: vague(34, 8.16) },
    verdict: "fits",
    code: "length-near-limit",
  },
  {
    title: "says by how much an uncut club is cut",
    facts: { clubType: "driver", ...uncut(49.5) },
    verdict: "fits-with-work",
    code: "cut-to-rules",
    figures: { lengthIn: 49.5, trimIn: 1.5, "butt-trim.trimIn": 1.5 },
  },
]);
