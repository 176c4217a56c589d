import { doesNotFit, fits, unsettled } from "../findings/outcome.ts";
import { readingInterval } from "../measure/reading-interval.ts";
import { defineRule } from "./rule.ts";

export const woodVolumeMaxCm3 = 460;
/** The ruling bodies' own tolerance on the limit. */
export const woodVolumeToleranceCm3 = 10;

const rejectAboveCm3 = woodVolumeMaxCm3 + woodVolumeToleranceCm3;
const woods: readonly unknown[] = ["driver", "fairway"];

/** A wood's head may hold 460 cm³, and is rejected above 470. */
export const headVolumeWithinRules = defineRule({
  id: "head-volume-within-rules",
  intent: "A wood's head may have 460 cm³ and is rejected above 470, because the Rules of Golf say so.",
  strength: "must",
  grain: "part",
  needs: {},
  uses: { clubType: "head.clubType", volumeCm3: "head.volumeCm3" },
  source: {
    title:
      "R&A Guide to the Rules on Clubs and Balls, ch. 7 s. 1; ralphmaltby.com on driver inertia (tolerance)",
  },
  check: ({ clubType, volumeCm3 }) => {
    if (volumeCm3 === undefined || volumeCm3.value <= woodVolumeMaxCm3) return fits();
    if (clubType !== undefined && !woods.includes(clubType)) return fits();
    const data = { volumeCm3: volumeCm3.value, limitCm3: woodVolumeMaxCm3, rejectAboveCm3 };
    if (volumeCm3.value <= rejectAboveCm3) return fits("volume-inside-tolerance", data);
    if (readingInterval(volumeCm3).low <= rejectAboveCm3)
      return unsettled("volume-near-limit", "volumeCm3", data);
    if (clubType === undefined) return unsettled("club-type-unknown", "clubType", data);
    return doesNotFit("volume-too-big", ["clubType", "volumeCm3"], data);
  },
  say: {
    "volume-inside-tolerance": ({ volumeCm3, limitCm3, rejectAboveCm3 }, teller) =>
      `${teller.part("head")} has ${volumeCm3} cm³, over the ${limitCm3} of the Rules but inside the tolerance up to ${rejectAboveCm3}`,
    "volume-near-limit": ({ volumeCm3, rejectAboveCm3 }, teller) =>
      `${teller.part("head")} may have more than the ${rejectAboveCm3} cm³ above which a wood is rejected, at about ${volumeCm3}`,
    "club-type-unknown": ({ volumeCm3 }, teller) =>
      `${teller.part("head")} has ${volumeCm3} cm³, too much for a wood, and nobody has said what it is`,
    "volume-too-big": ({ volumeCm3, rejectAboveCm3 }, teller) =>
      `${teller.part("head")} has ${volumeCm3} cm³, and a wood above ${rejectAboveCm3} is rejected`,
  },
  ask: {
    volumeCm3: "What volume does the maker state for the head, or how much water does it displace?",
    clubType: "What kind of club is the head?",
  },
});
