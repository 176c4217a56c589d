import { doesNotFit, fits, unsettled } from "../findings/outcome.ts";
import type { Fault } from "../parts/fault.ts";
import { defineRule } from "./rule.ts";

/** Faults that end a shaft whatever it is made of. */
const breaking: readonly Fault[] = ["crack", "crease-shaft", "dent-shaft", "exposed-fibre"];

/** What has to be denied before nothing is left to look for. */
const lookFor = {
  composite: ["dent-shaft", "crease-shaft", "crack", "exposed-fibre"],
  steel: ["dent-shaft", "crease-shaft", "crack", "bent-shaft", "rust"],
  unknown: ["dent-shaft", "crease-shaft", "crack"],
} as const satisfies Record<string, readonly Fault[]>;

const names: Partial<Record<string, string>> = {
  crack: "a crack",
  "crease-shaft": "a crease",
  "dent-shaft": "a dent",
  "exposed-fibre": "fibres showing",
  rust: "rust",
};

/** A shaft must be whole: one that breaks in a swing can hurt whoever holds it. */
export const shaftSound = defineRule({
  id: "shaft-sound",
  intent: "The shaft has to be whole, because one that breaks in a swing can hurt whoever holds it.",
  strength: "must",
  grain: "interface",
  needs: {},
  uses: { faults: "shaft.faults", deniedFaults: "shaft.deniedFaults", material: "shaft.material" },
  source: {
    title:
      'Aircraft structural repair manual 51-10 "Assessing composite damage" (dents, creases, broken fibres); golf.com, "Damage control" (bag wear); golfcourseinsider.com, bent shafts; sgbgolf.co.uk, component bonding 2009 (rust)',
  },
  check: ({ faults, deniedFaults, material }) => {
    const has = (fault: Fault) => (faults ?? []).includes(fault);
    const made = material === undefined ? "unknown" : material === "steel" ? "steel" : "composite";
    const broken = breaking.find((fault) => has(fault) && !(fault === "exposed-fibre" && made === "steel"));
    if (broken) return doesNotFit("damaged", ["faults"], { fault: broken });
    if (has("loose-joint")) return doesNotFit("joint-loose", ["faults"]);
    if (has("bent-shaft") && made === "steel") return doesNotFit("steel-bent", ["faults", "material"]);
    if (has("exposed-fibre"))
      return unsettled("fault-and-material-disagree", "material", { fault: "exposed-fibre" });
    if (has("rust") && made === "composite")
      return unsettled("fault-and-material-disagree", "material", { fault: "rust" });
    if (has("rust")) return unsettled("rusty", "faults:rust");
    if (has("bent-shaft")) return unsettled("bend-unexplained", "faults:bend");
    if (has("other")) return unsettled("fault-unnamed", "faults:other");
    const looked = lookFor[made].every((fault) => (deniedFaults ?? []).includes(fault));
    if (has("paint-wear-shaft")) return fits(looked ? "paint-wear" : "paint-wear-not-inspected");
    return looked ? fits() : fits("not-inspected");
  },
  say: {
    damaged: ({ fault }, teller) =>
      `${teller.part("shaft")} has ${names[String(fault)]}: do not use it, nobody can see how deep the damage goes and it may break in a swing`,
    "joint-loose": (_data, teller) =>
      `${teller.part("shaft")} moves or creaks where it is joined: do not use it, the head may come off in a swing`,
    "steel-bent": (_data, teller) =>
      `${teller.part("shaft")} is steel and bent: do not use it, steel that has been bent is weaker there`,
    "fault-and-material-disagree": ({ fault }, teller) =>
      `${teller.part("shaft")} is said to have ${names[String(fault)]}, which its material cannot have`,
    rusty: (_data, teller) => `${teller.part("shaft")} has rust, and only rust on the surface is harmless`,
    "bend-unexplained": (_data, teller) =>
      `${teller.part("shaft")} is said to be bent, which graphite cannot be without broken fibres`,
    "fault-unnamed": (_data, teller) => `${teller.part("shaft")} has a fault that is not named`,
    "paint-wear": (_data, teller) =>
      `${teller.part("shaft")} has worn paint, which is cosmetic as long as it is smooth under a fingernail and shows no crack`,
    "paint-wear-not-inspected": (_data, teller) =>
      `${teller.part("shaft")} has worn paint, which is cosmetic only if it is smooth under a fingernail, and nobody has said whether the shaft is free of dents, creases and cracks: look along all of it, most of all at the worn paint, by the hosel and under the grip, before use`,
    "not-inspected": (_data, teller) =>
      `nobody has said whether ${teller.part("shaft")} is free of dents, creases and cracks: look along all of it, most of all by the hosel and under the grip, before use`,
  },
  hint: {
    damaged: () => "another shaft; do not sell this one as playable",
    "joint-loose": () => "taking it apart and bonding it anew, then clearing the fault with a note",
    "steel-bent": () => "another shaft, or a professional who straightens smooth bends",
  },
  ask: {
    material: "Is the shaft steel or graphite? A magnet sticks to most steel shafts.",
    "faults:rust": "Is the rust only on the surface, with no pits in the metal and none inside the tube?",
    "faults:bend": "Is the shaft really bent, and is it steel or graphite? Roll it on a flat table and look.",
    "faults:other": "What exactly is wrong with the shaft?",
  },
});
