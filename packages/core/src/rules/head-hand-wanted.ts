import { doesNotFit, fits, type Outcome, unsettled } from "../findings/outcome.ts";
import { defineRule } from "./rule.ts";

type Code = "head-hand-unknown" | "other-hand-wanted";

interface Facts {
  readonly wantedHand?: "right" | "left";
  readonly headHand?: "right" | "left";
}

/** A head is for the hand that the user asked for, if they asked. */
export const headHandWanted = defineRule<Code>({
  id: "head-hand-wanted",
  intent:
    "The head has to be for the hand that was asked for, because no work at the bench turns a head round.",
  strength: "must",
  grain: "interface",
  needs: {},
  uses: { wantedHand: "goal.hand", headHand: "head.hand" },
  source: { title: "common practice, no source" },
  check: judge,
  say: {
    "head-hand-unknown": ({ wantedHand }, t) =>
      `a ${wantedHand}-handed club was asked for and nobody has said which hand ${t.part("head")} is for`,
    "other-hand-wanted": ({ wantedHand, headHand }, t) =>
      `a ${wantedHand}-handed club was asked for and ${t.part("head")} is ${headHand}-handed`,
  },
  hint: { "other-hand-wanted": ({ wantedHand }) => `a ${wantedHand}-handed head, or a wish without a hand` },
  ask: { headHand: "Is the head right-handed or left-handed?" },
});

function judge({ wantedHand, headHand }: Facts): Outcome<Code> {
  if (wantedHand === undefined) return fits();
  if (headHand === undefined) return unsettled("head-hand-unknown", "headHand", { wantedHand });
  if (headHand === wantedHand) return fits();
  return doesNotFit("other-hand-wanted", ["wantedHand", "headHand"], { wantedHand, headHand });
}
