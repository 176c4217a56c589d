import { cases } from "./cases.test-kit.ts";
import { parallelSectionLongEnough } from "./parallel-section-long-enough.ts";

const typical = (value: number) => ({ value, plusMinus: 1, source: "typical" });

// That a taper shaft is never tip-trimmed: golfclubshaftreview.com, parallel and taper tip shafts. The section against the
// depth: derived, no published source.
cases(parallelSectionLongEnough, [
  {
    title: "a long parallel section reaches the bottom",
    facts: { tipForm: "parallel", parallelSectionIn: 4, depthIn: 1.25 },
    verdict: "fits",
  },
  {
    title: "a section as long as the bore is deep just reaches",
    facts: { tipForm: "parallel", parallelSectionIn: 1.25, depthIn: 1.25 },
    verdict: "fits",
  },
  {
    title: "a section just shorter than the bore is refused",
    facts: { tipForm: "parallel", tipDiameterIn: 0.37, parallelSectionIn: 1.24, depthIn: 1.25, trimmedIn: 3 },
    verdict: "does-not-fit",
    code: "section-too-short",
    because: ["tipDiameterIn", "parallelSectionIn", "depthIn"],
    says: /^1\.24 in of the tip of the shaft is still parallel, and the bore of the holder is 1\.25 in deep \/ a shaft with more/,
  },
  {
    title: "a stated section shorter than the bore by less than it can be off is measured first",
    facts: {
      tipForm: "parallel",
      parallelSectionIn: { value: 1.1, plusMinus: 0.25, source: "stated" },
      depthIn: 1.25,
    },
    verdict: "unsettled",
    code: "section-near-depth",
    ask: "parallelSectionIn",
    says: /^about 1\.1 in of the tip .* may or may not be enough.*Slide callipers up/,
  },
  {
    title: "and the depth is where that is the vaguer one",
    facts: {
      tipForm: "parallel",
      parallelSectionIn: 1.2,
      depthIn: { value: 1.25, plusMinus: 0.06, source: "stated" },
    },
    verdict: "unsettled",
    code: "section-near-depth",
    ask: "depthIn",
  },
  {
    title: "a stated section clearly too short is refused",
    facts: {
      tipForm: "parallel",
      parallelSectionIn: { value: 0.5, plusMinus: 0.25, source: "stated" },
      depthIn: { value: 1.25, plusMinus: 0.06, source: "stated" },
    },
    verdict: "does-not-fit",
    code: "section-too-short",
    because: ["tipForm", "parallelSectionIn", "depthIn"],
  },
  {
    title: "the form is taken from the size where nobody has said it",
    facts: { tipDiameterIn: 0.335, parallelSectionIn: 3, depthIn: 1.25 },
    verdict: "fits",
  },
  {
    title: "a stated section is as the shaft is now, whatever was trimmed",
    facts: { tipForm: "parallel", parallelSectionIn: 2, trimmedIn: 3, depthIn: 1.25 },
    verdict: "fits",
  },
  {
    title: "a typical section less what was trimmed confirms",
    facts: { tipForm: "parallel", parallelSectionIn: typical(4), trimmedIn: 1, depthIn: 1.25 },
    verdict: "fits",
  },
  {
    title: "a typical section never refuses, however much was trimmed",
    facts: { tipForm: "parallel", parallelSectionIn: typical(4), trimmedIn: 3, depthIn: 1.25 },
    verdict: "unsettled",
    ask: "parallelSectionIn",
    says: /1 in of the tip of the shaft is still parallel/,
  },
  {
    title: "a taper tip that was never cut needs no section",
    facts: { tipForm: "taper", trimmedIn: 0 },
    verdict: "fits",
  },
  {
    title: "a taper tip of which nobody says that it was cut is taken as whole",
    facts: { tipDiameterIn: 0.355 },
    verdict: "fits",
  },
  {
    title: "a taper tip that was cut is refused",
    facts: { tipForm: "taper", tipDiameterIn: 0.355, trimmedIn: 0.5 },
    verdict: "does-not-fit",
    code: "taper-tip-trimmed",
    because: ["tipDiameterIn", "trimmedIn"],
    says: /taper tip that 0\.5 in has been cut from.* \/ a taper shaft whose tip was never cut/,
  },
  {
    title: "an unknown form is asked for",
    facts: { parallelSectionIn: 4, depthIn: 1.25 },
    verdict: "unsettled",
    code: "tip-form-unknown",
    ask: "tipForm",
    says: /taper or parallel\?/,
  },
  {
    title: "an unknown section is asked for",
    facts: { tipForm: "parallel", depthIn: 1.25 },
    verdict: "unsettled",
    code: "section-unknown",
    ask: "parallelSectionIn",
    says: /Slide callipers up/,
  },
  {
    title: "an unknown depth is asked for",
    facts: { tipForm: "parallel", parallelSectionIn: 4 },
    verdict: "unsettled",
    code: "depth-unknown",
    ask: "depthIn",
    says: /how deep the bore of the holder is/,
  },
  {
    title: "of a section and a depth that are equally vague the section is asked for",
    facts: { tipForm: "parallel", parallelSectionIn: 1.2495, depthIn: 1.25 },
    verdict: "unsettled",
    code: "section-near-depth",
    ask: "parallelSectionIn",
  },
]);
