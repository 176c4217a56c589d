import { doesNotFit, fits, unsettled } from "../findings/outcome.ts";
import type { Fault } from "../parts/fault.ts";
import { defineRule } from "./rule.ts";

const breaking: readonly Fault[] = ["crack", "adapter-damaged"];

/** An adapter must be whole: it alone holds the head to the shaft. */
export const adapterSound = defineRule({
  id: "adapter-sound",
  intent: "The adapter has to be whole, because it alone holds the head to the shaft.",
  strength: "must",
  grain: "interface",
  needs: {},
  uses: { faults: "adapter.faults", deniedFaults: "adapter.deniedFaults" },
  source: { title: "common practice, no source" },
  check: ({ faults, deniedFaults }) => {
    const has = (fault: Fault) => (faults ?? []).includes(fault);
    const broken = breaking.find(has);
    if (broken) return doesNotFit("damaged", ["faults"], { fault: broken });
    if (has("loose-joint")) return doesNotFit("joint-loose", ["faults"]);
    if (has("rust")) return unsettled("rusty", "faults:rust");
    if (has("other")) return unsettled("fault-unnamed", "faults:other");
    return breaking.every((fault) => (deniedFaults ?? []).includes(fault)) ? fits() : fits("not-inspected");
  },
  say: {
    damaged: ({ fault }, teller) =>
      `${teller.part("adapter")} is ${fault === "crack" ? "cracked" : "damaged"}: do not use it, the head may come off in a swing`,
    "joint-loose": (_data, teller) =>
      `${teller.part("adapter")} moves or creaks where it is joined: do not use it, the head may come off in a swing`,
    rusty: (_data, teller) =>
      `${teller.part("adapter")} has rust, which is harmless only where it has not eaten the thread or the seat`,
    "fault-unnamed": (_data, teller) => `${teller.part("adapter")} has a fault that is not named`,
    "not-inspected": (_data, teller) =>
      `nobody has said whether ${teller.part("adapter")} is whole: look at its thread, its teeth and the bond to the shaft before use`,
  },
  hint: {
    damaged: () => "another adapter of the same family",
    "joint-loose": () => "taking it apart and bonding it anew, then clearing the fault with a note",
  },
  ask: {
    "faults:rust":
      "Is the rust only on the surface, with the thread clean and the seat flat and smooth? Turn the screw in by hand to feel it.",
    "faults:other": "What exactly is wrong with the adapter?",
  },
});
