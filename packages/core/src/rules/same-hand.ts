import { doesNotFit, fits, type Outcome, unsettled } from "../findings/outcome.ts";
import type { Reading } from "../parts/reading.ts";
import { defineRule } from "./rule.ts";

type Code = "adapter-hand-unknown" | "head-hand-unknown" | "adapter-other-hand";

interface Facts {
  readonly adapterHand?: "right" | "left" | "either";
  readonly headHand?: "right" | "left";
  readonly tiltDeg?: Reading;
}

/** An adapter is for the same hand as its head. An adapter that is not tilted has no hand, whatever is written on it. */
export const sameHand = defineRule<Code>({
  id: "same-hand",
  intent:
    "An adapter has to be for the hand of its head, because its tilt and the settings marked on it are handed.",
  strength: "must",
  grain: "interface",
  needs: {},
  uses: { adapterHand: "adapter.hand", headHand: "head.hand", tiltDeg: "adapter.tiltDeg" },
  source: {
    title: "common practice, no source; what a wrong hand does is derived from the tilt, no published source",
  },
  check: judge,
  say: {
    "adapter-hand-unknown": (_, t) => `nobody has said which hand ${t.part("adapter")} is for`,
    "head-hand-unknown": (_, t) => `nobody has said which hand ${t.part("head")} is for`,
    "adapter-other-hand": ({ adapterHand, headHand }, t) =>
      `${t.part("adapter")} is for a ${adapterHand}-handed head and ${t.part("head")} is ${headHand}-handed: it may screw in, ` +
      "but its tilt is mirrored, so a setting marked to close the face opens it and the loft marks run the other way round",
  },
  hint: { "adapter-other-hand": ({ headHand }) => `the same adapter for a ${headHand}-handed head` },
  ask: {
    adapterHand: "Is the adapter for right-handed heads, left-handed heads, or either?",
    headHand: "Is the head right-handed or left-handed?",
  },
});

function judge({ adapterHand, headHand, tiltDeg }: Facts): Outcome<Code> {
  if (adapterHand === "either" || tiltDeg?.value === 0) return fits();
  if (adapterHand === undefined) return unsettled("adapter-hand-unknown", "adapterHand");
  if (headHand === undefined) return unsettled("head-hand-unknown", "headHand");
  if (adapterHand === headHand) return fits();
  return doesNotFit("adapter-other-hand", ["adapterHand", "headHand"], { adapterHand, headHand });
}
