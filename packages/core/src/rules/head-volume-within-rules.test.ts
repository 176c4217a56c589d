import { cases } from "./cases.test-kit.ts";
import { headVolumeWithinRules } from "./head-volume-within-rules.ts";

// R&A Guide to the Rules on Clubs and Balls, ch. 7 s. 1: 460 cm³, with a tolerance of 10 cm³.
cases(headVolumeWithinRules, [
  { title: "passes a driver of 440 cm³", facts: { clubType: "driver", volumeCm3: 440 }, verdict: "fits" },
  {
    title: "passes a driver of exactly 460 cm³",
    facts: { clubType: "driver", volumeCm3: 460 },
    verdict: "fits",
  },
  {
    title: "passes a driver stated at 460 cm³, give or take 5",
    facts: { clubType: "driver", volumeCm3: { value: 460, plusMinus: 5, source: "stated" } },
    verdict: "fits",
  },
  {
    title: "notes a driver just over 460 cm³",
    facts: { clubType: "driver", volumeCm3: 460.1 },
    verdict: "fits",
    code: "volume-inside-tolerance",
    says: /over the 460 of the Rules but inside the tolerance up to 470/,
  },
  {
    title: "notes a driver of exactly 470 cm³",
    facts: { clubType: "driver", volumeCm3: 470 },
    verdict: "fits",
    code: "volume-inside-tolerance",
  },
  {
    title: "refuses a driver just over 470 cm³",
    facts: { clubType: "driver", volumeCm3: 470.1 },
    verdict: "does-not-fit",
    code: "volume-too-big",
    because: ["clubType", "volumeCm3"],
    says: /470\.1 cm³, and a wood above 470 is rejected/,
  },
  {
    title: "refuses a fairway of 500 cm³",
    facts: { clubType: "fairway", volumeCm3: 500 },
    verdict: "does-not-fit",
    code: "volume-too-big",
  },
  {
    title: "asks about a volume that may or may not be over",
    facts: { clubType: "driver", volumeCm3: { value: 475, plusMinus: 5, source: "stated" } },
    verdict: "unsettled",
    code: "volume-near-limit",
    ask: "volumeCm3",
    says: /at about 475/,
  },
  {
    title: "asks what a head of 480 cm³ is",
    facts: { volumeCm3: 480 },
    verdict: "unsettled",
    code: "club-type-unknown",
    ask: "clubType",
    says: /What kind of club/,
  },
  { title: "does not limit a putter", facts: { clubType: "putter", volumeCm3: 480 }, verdict: "fits" },
  { title: "has nothing to say where no volume is given", facts: { clubType: "driver" }, verdict: "fits" },
]);
