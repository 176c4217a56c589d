import { doesNotFit, fits, type Outcome, unsettled } from "../findings/outcome.ts";
import { readingInterval } from "../measure/reading-interval.ts";
import type { ClubType } from "../parts/part.ts";
import type { Reading } from "../parts/reading.ts";
import { defineRule } from "./rule.ts";

type Code = "shallower-than-usual" | "maybe-too-shallow" | "too-shallow";

interface Facts {
  readonly depthIn: Reading;
  readonly clubType?: ClubType;
}

/** The practical floor of insertion depth: our own default, no source. */
export const floorIn = 1;

/** What builders like to see at the least: our own default, no source. Putters vary too much to say. */
export const usualIn: Readonly<Record<ClubType, number>> = {
  driver: 1.125,
  fairway: 1.125,
  hybrid: 1.125,
  iron: 1.25,
  wedge: 1.25,
  putter: floorIn,
};

/** A bond needs depth: the shear on it falls with the length of shaft inside the bore. */
export const insertionDeepEnough = defineRule<Code>({
  id: "insertion-deep-enough",
  intent:
    "The bore has to take enough of the shaft, because a short bond carries the pull of the swing on too little glue.",
  strength: "must",
  grain: "interface",
  needs: { depthIn: "holder.bore.depthIn" },
  uses: { clubType: "head.clubType" },
  typical: ["depthIn"],
  source: {
    title:
      "floor and usual depths are our own defaults, no source; that there is no industry standard: Hireko blog, bottom of bore to ground line measurement",
    at: "2011-01",
  },
  check: (facts) => judge(facts as Facts),
  say: {
    "shallower-than-usual": (d, t) =>
      `the bore of ${t.part("holder")} takes ${t.inches(Number(d.depthIn))} of shaft, and ${t.inches(Number(d.usualIn))} is the usual least for this kind of club`,
    "maybe-too-shallow": (d, t) =>
      `the bore of ${t.part("holder")} takes about ${t.inches(Number(d.depthIn))} of shaft, too vague a reading to say whether it is the ${t.inches(floorIn)} that is the least that is bonded`,
    "too-shallow": (d, t) =>
      `the bore of ${t.part("holder")} takes only ${t.inches(Number(d.depthIn))} of shaft, and ${t.inches(floorIn)} is the least that is bonded`,
  },
  hint: {
    "too-shallow": (_, t) =>
      `clean old glue and any plug out of ${t.part("holder")} and measure the depth again`,
  },
  ask: {
    depthIn:
      "How deep does the bore take the shaft? Put a clean rod or a pencil in, mark it at the mouth and measure.",
  },
});

function judge({ depthIn, clubType }: Facts): Outcome<Code> {
  const data = { depthIn: depthIn.value };
  if (readingInterval(depthIn).high < floorIn) return doesNotFit("too-shallow", ["depthIn"], data);
  if (depthIn.value < floorIn) return unsettled("maybe-too-shallow", "depthIn", data);
  const leastIn = clubType === undefined ? floorIn : usualIn[clubType];
  if (depthIn.value < leastIn) return fits("shallower-than-usual", { ...data, usualIn: leastIn });
  return fits();
}
