import type { Skill } from "@ferrule/core";

export const skillOrder: readonly Skill[] = ["screw", "regrip", "bond", "machine"];

/** The most somebody will do, as a choice. */
export const skillWords: Readonly<Record<Skill, string>> = {
  screw: "Wrench only",
  regrip: "Change grips",
  bond: "Glue shafts",
  machine: "Ream and turn",
};

/** What each choice covers. */
export const skillMeanings: Readonly<Record<Skill, string>> = {
  screw: "Screw adapters in and out. Two minutes.",
  regrip: "The wrench, and taking grips off and on.",
  bond: "All that, and pulling, preparing and gluing shafts.",
  machine: "All that, and reaming bores or turning metal.",
};

/** After "more clubs with". */
export const skillGerunds: Readonly<Record<Skill, string>> = {
  screw: "a wrench",
  regrip: "new grips",
  bond: "gluing",
  machine: "a machine",
};
