import { buttExtensionMaxIn } from "../measure/uncut-length.ts";
import { cases } from "./cases.test-kit.ts";
import { lengthReachable, lengthToleranceIn } from "./length-reachable.ts";

/** Uncut, this makes a club of 45.125 in. */
const shaft = { aloneLengthIn: 44, bbgmIn: 1, capThicknessIn: 0.125, basis: "shaft-alone" };
const vague = (value: number, plusMinus: number) => ({ value, plusMinus, source: "stated" });
const typical = (value: number, plusMinus: number) => ({ value, plusMinus, source: "typical" });

/** A reading that cannot be off, so that a sum of readings can stand on a bound. */
const exact = (value: number) => ({ value, plusMinus: 0, source: "measured" });

// Cut length = playing length - bottom of bore - cap: tutelman.com/golf/design/flex4.php. The tolerance of 1/16 in is
// common practice and the extension of 2 in at most our own default, both without a source, so these rows hold the rule to its own numbers.
cases(lengthReachable, [
  {
    title: "passes a club of just the wanted length",
    facts: { ...shaft, targetIn: 45.125 },
    verdict: "fits",
  },
  {
    title: "takes a shaft a sixteenth too long as it is",
    facts: { ...shaft, targetIn: 45.0625 },
    verdict: "fits",
  },
  {
    title: "takes a shaft a sixteenth too short as it is",
    facts: { ...shaft, targetIn: 45.1875 },
    verdict: "fits",
  },
  {
    title: "cuts a shaft just more than a sixteenth too long",
    facts: { ...shaft, targetIn: 45.06 },
    verdict: "fits-with-work",
    code: "cut-down",
    steps: ["butt-trim"],
  },
  {
    title: "cuts a long shaft down by what is spare",
    facts: { ...shaft, targetIn: 43 },
    verdict: "fits-with-work",
    code: "cut-down",
    steps: ["butt-trim"],
    says: /lose about 2\.125 in at the butt for a club of 43 in/,
  },
  {
    title: "lengthens a shaft just more than a sixteenth too short",
    facts: { ...shaft, targetIn: 45.19 },
    verdict: "fits-with-work",
    code: "lengthened",
    steps: ["butt-extension"],
  },
  {
    title: "lengthens a short shaft by what is lacking",
    facts: { ...shaft, targetIn: 46.125 },
    verdict: "fits-with-work",
    code: "lengthened",
    steps: ["butt-extension"],
    says: /lengthened by about 1 in/,
  },
  {
    title: "lengthens by 2 in, the most",
    facts: { ...shaft, targetIn: 47.125 },
    verdict: "fits-with-work",
    code: "lengthened",
    steps: ["butt-extension"],
  },
  {
    title: "refuses what 2 in and the tolerance do not reach",
    facts: { ...shaft, targetIn: 47.2 },
    verdict: "does-not-fit",
    code: "too-short",
    because: ["targetIn", "aloneLengthIn", "bbgmIn", "capThicknessIn"],
    says: /too short for a club of 47\.2 in, even lengthened by 2 in.*a longer shaft/,
  },
  {
    title: "leaves the cap out of the proof when no cap would help",
    facts: { ...shaft, targetIn: 48.5 },
    verdict: "does-not-fit",
    code: "too-short",
    because: ["targetIn", "aloneLengthIn", "bbgmIn"],
  },
  {
    title: "needs only the shaft's length to refuse one far too short",
    facts: { ...shaft, aloneLengthIn: 33, targetIn: 45 },
    verdict: "does-not-fit",
    code: "too-short",
    because: ["targetIn", "aloneLengthIn"],
  },
  {
    title: "refuses a short shaft although the bottom of the bore is unknown",
    facts: { aloneLengthIn: 33, targetIn: 45 },
    verdict: "does-not-fit",
    code: "too-short",
    because: ["targetIn", "aloneLengthIn"],
  },
  {
    title: "never refuses on a typical bottom of bore",
    facts: { ...shaft, bbgmIn: typical(1, 0.1), targetIn: 48.5 },
    verdict: "unsettled",
    ask: "bbgmIn",
  },
  {
    title: "cuts on a typical bottom of bore",
    facts: { ...shaft, bbgmIn: typical(1, 0.3), targetIn: 44 },
    verdict: "fits-with-work",
    code: "cut-down",
  },
  {
    title: "asks for the basis when an unstated length may or may not be enough",
    facts: { ...shaft, basis: "unstated", aloneLengthIn: vague(43, 0.7), targetIn: 46 },
    verdict: "unsettled",
    code: "maybe-too-short",
    ask: "basis",
    says: /about 44\.125 in, which may or may not be enough for 46 in.*bare shaft/,
  },
  {
    title: "asks for the vaguest length when the basis is known",
    facts: { ...shaft, bbgmIn: vague(1, 0.6), targetIn: 47 },
    verdict: "unsettled",
    code: "maybe-too-short",
    ask: "bbgmIn",
  },
  {
    title: "asks for the shaft's length",
    facts: { bbgmIn: 1, capThicknessIn: 0.125, targetIn: 45 },
    verdict: "unsettled",
    code: "length-unknown",
    ask: "aloneLengthIn",
    says: /from its tip to its butt/,
  },
  {
    title: "asks for the bottom of the bore",
    facts: { aloneLengthIn: 44, capThicknessIn: 0.125, targetIn: 45 },
    verdict: "unsettled",
    code: "length-unknown",
    ask: "bbgmIn",
  },
  {
    title: "asks for the cap",
    facts: { aloneLengthIn: 44, bbgmIn: 1, targetIn: 45 },
    verdict: "unsettled",
    code: "length-unknown",
    ask: "capThicknessIn",
  },
  { title: "has nothing to say where no length is wanted", facts: {}, verdict: "fits" },
  {
    title: "lengthens by just the most that an extension and the tolerance bridge",
    facts: {
      aloneLengthIn: exact(40),
      bbgmIn: exact(1),
      capThicknessIn: exact(0.125),
      basis: "shaft-alone",
      targetIn: 41.125 + buttExtensionMaxIn + lengthToleranceIn,
    },
    verdict: "fits-with-work",
    code: "lengthened",
    figures: { extensionIn: 2.0625, "butt-extension.extensionIn": 2.0625 },
  },
  {
    title: "asks for the basis that nobody has stated where a vague length may be too short",
    facts: { aloneLengthIn: vague(43, 0.5), bbgmIn: 1, capThicknessIn: 0.125, targetIn: 46 },
    verdict: "unsettled",
    code: "maybe-too-short",
    ask: "basis",
  },
  {
    title: "says by how much the butt is cut",
    facts: { ...shaft, targetIn: 43 },
    verdict: "fits-with-work",
    code: "cut-down",
    figures: { targetIn: 43, trimIn: 2.125, "butt-trim.trimIn": 2.125 },
  },
]);
