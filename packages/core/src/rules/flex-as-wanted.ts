import { doesNotFit, fits, unsettled } from "../findings/outcome.ts";
import { defineRule } from "./rule.ts";

/** The flex on the label should be the one wanted; labels of different makers are not the same stiffness. */
export const flexAsWanted = defineRule({
  id: "flex-as-wanted",
  intent:
    "The shaft's flex should be the one wanted, because that is what the player or the buyer asked for.",
  strength: "should",
  grain: "interface",
  needs: {},
  uses: { goalFlex: "goal.flex", flex: "shaft.flex" },
  source: { title: "common practice, no source" },
  check: ({ goalFlex, flex }) => {
    if (goalFlex === undefined || flex === goalFlex) return fits();
    if (flex === undefined) return unsettled("flex-unknown", "flex", { goalFlex });
    return doesNotFit("other-flex", ["goalFlex", "flex"], { goalFlex, flex });
  },
  say: {
    "flex-unknown": ({ goalFlex }, teller) =>
      `${teller.part("shaft")} has no flex stated, and ${goalFlex} is wanted`,
    "other-flex": ({ goalFlex, flex }, teller) =>
      `${teller.part("shaft")} is ${flex}, and ${goalFlex} is wanted`,
  },
  ask: { flex: "Which flex is printed on the shaft?" },
});
