import { doesNotFit, fits } from "../findings/outcome.ts";
import type { Fault } from "../parts/fault.ts";
import { defineRule } from "./rule.ts";

const worn: readonly Fault[] = ["grip-worn", "crack"];

/** A worn grip slips in the hands; it is cheaply changed, so it never stops a club. */
export const gripSound = defineRule({
  id: "grip-sound",
  intent: "The grip should not be worn, because a slick or torn one turns in the hands.",
  strength: "should",
  grain: "interface",
  needs: {},
  uses: { faults: "grip.faults" },
  source: { title: "common practice, no source" },
  check: ({ faults }) => {
    const has = (fault: Fault) => (faults ?? []).includes(fault);
    const fault = worn.find(has);
    if (fault) return doesNotFit("worn", ["faults"], { fault });
    return has("other") ? fits("fault-unnamed") : fits();
  },
  say: {
    worn: ({ fault }, teller) =>
      `${teller.part("grip")} is ${fault === "crack" ? "cracked" : "worn"}, and may slip or turn in the hands`,
    "fault-unnamed": (_data, teller) =>
      `${teller.part("grip")} has a fault that is not named: look at it before use`,
  },
  hint: { worn: () => "replace the grip" },
  ask: {},
});
