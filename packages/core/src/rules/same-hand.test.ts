import { cases } from "./cases.test-kit.ts";
import { sameHand } from "./same-hand.ts";

// Hands have to match: common practice, no source. What a wrong hand does: derived, no published source.
cases(sameHand, [
  {
    title: "a right-handed adapter fits a right-handed head",
    facts: { adapterHand: "right", headHand: "right", tiltDeg: 1.5 },
    verdict: "fits",
  },
  {
    title: "a left-handed adapter fits a left-handed head",
    facts: { adapterHand: "left", headHand: "left" },
    verdict: "fits",
  },
  {
    title:
      "a right-handed adapter is refused in a left-handed head, and its mirrored settings are the reason",
    facts: { adapterHand: "right", headHand: "left", tiltDeg: 1.5 },
    verdict: "does-not-fit",
    code: "adapter-other-hand",
    because: ["adapterHand", "headHand"],
    says: /^the adapter is for a right-handed head and the head is left-handed: it may screw in, but its tilt is mirrored.* \/ the same adapter for a left-handed head$/,
  },
  {
    title: "a left-handed adapter of unknown tilt is refused in a right-handed head",
    facts: { adapterHand: "left", headHand: "right" },
    verdict: "does-not-fit",
    code: "adapter-other-hand",
  },
  {
    title: "an adapter for either hand fits whatever the head's",
    facts: { adapterHand: "either", headHand: "left" },
    verdict: "fits",
  },
  {
    title: "an adapter for either hand fits a head of unknown hand",
    facts: { adapterHand: "either" },
    verdict: "fits",
  },
  {
    title: "a wrong-handed adapter without tilt is harmless",
    facts: { adapterHand: "right", headHand: "left", tiltDeg: 0 },
    verdict: "fits",
  },
  {
    title: "the least tilt that is marked already makes a wrong hand matter",
    facts: { adapterHand: "right", headHand: "left", tiltDeg: 0.1 },
    verdict: "does-not-fit",
    code: "adapter-other-hand",
  },
  {
    title: "an unknown adapter hand is asked for",
    facts: { headHand: "left" },
    verdict: "unsettled",
    code: "adapter-hand-unknown",
    ask: "adapterHand",
    says: /nobody has said which hand the adapter is for.*right-handed heads, left-handed heads, or either\?/,
  },
  {
    title: "an unknown head hand is asked for",
    facts: { adapterHand: "left" },
    verdict: "unsettled",
    code: "head-hand-unknown",
    ask: "headHand",
    says: /which hand the head is for.*right-handed or left-handed\?/,
  },
]);
