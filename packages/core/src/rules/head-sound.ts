import { doesNotFit, fits, unsettled } from "../findings/outcome.ts";
import type { Fault } from "../parts/fault.ts";
import { defineRule } from "./rule.ts";

const breaking: readonly Fault[] = ["crack", "caved-face"];
const cosmetic: readonly Fault[] = ["sky-mark", "crown-scratch", "face-wear", "rust"];

const names: Partial<Record<string, string>> = {
  crack: "is cracked",
  "caved-face": "has a caved face",
  "sky-mark": "sky marks",
  "crown-scratch": "scratches on the crown",
  "face-wear": "a worn face",
  rust: "rust (clean it out of any bore before bonding)",
};

/** A head must hold together at the ball; marks on it cost money, not safety. */
export const headSound = defineRule({
  id: "head-sound",
  intent: "The head has to hold together at the ball, because pieces of one that breaks fly.",
  strength: "must",
  grain: "interface",
  needs: {},
  uses: { faults: "head.faults", deniedFaults: "head.deniedFaults" },
  source: { title: "common practice, no source" },
  check: ({ faults, deniedFaults }) => {
    const has = (fault: Fault) => (faults ?? []).includes(fault);
    const broken = breaking.find(has);
    if (broken) return doesNotFit("damaged", ["faults"], { fault: broken });
    if (has("loose-joint")) return doesNotFit("joint-loose", ["faults"]);
    if (has("dent-head")) return unsettled("dented", "faults:dent");
    if (has("rattle")) return unsettled("rattles", "faults:rattle");
    if (has("other")) return unsettled("fault-unnamed", "faults:other");
    const marks = cosmetic.filter(has).map((fault) => names[fault]);
    const looked = breaking.every((fault) => (deniedFaults ?? []).includes(fault));
    if (marks.length === 0) return looked ? fits() : fits("not-inspected");
    return fits(looked ? "marked" : "marked-not-inspected", { marks: marks.join(" and ") });
  },
  say: {
    damaged: ({ fault }, teller) =>
      `${teller.part("head")} ${names[String(fault)]}: do not use it, it may break at the ball`,
    "joint-loose": (_data, teller) =>
      `${teller.part("head")} moves or creaks where it is joined: do not use it, the head may come off in a swing`,
    dented: (_data, teller) => `${teller.part("head")} has a dent, which is harmless or not by where it is`,
    rattles: (_data, teller) => `something rattles in ${teller.part("head")}: loose glue or a broken piece`,
    "fault-unnamed": (_data, teller) => `${teller.part("head")} has a fault that is not named`,
    marked: ({ marks }, teller) => `${teller.part("head")} has ${marks}, which cost money, not safety`,
    "marked-not-inspected": ({ marks }, teller) =>
      `${teller.part("head")} has ${marks}, which cost money, not safety, but nobody has said whether it is free of cracks: look at the face, the crown's edge and the hosel before use`,
    "not-inspected": (_data, teller) =>
      `nobody has said whether ${teller.part("head")} is free of cracks: look at the face, the crown's edge and the hosel before use`,
  },
  hint: {
    damaged: () => "another head; do not sell this one as playable",
    "joint-loose": () => "taking it apart and bonding it anew, then clearing the fault with a note",
  },
  ask: {
    "faults:dent":
      "Where is the dent in the head, and is there any crack or loose paint round it? A straight edge shows whether the face is still flat.",
    "faults:rattle":
      "What rattles in the head: a crumb of loose glue, or a weight or broken piece? Look for cracks too.",
    "faults:other": "What exactly is wrong with the head?",
  },
});
