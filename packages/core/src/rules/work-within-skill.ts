import { doesNotFit, fits } from "../findings/outcome.ts";
import { type Skill, skills } from "../parts/goal.ts";
import { defineRule } from "./rule.ts";

const names: Readonly<Record<Skill, string>> = {
  screw: "turning a screw",
  regrip: "changing a grip",
  bond: "pulling and bonding a shaft",
  machine: "reaming or turning metal",
};

/** The work a club asks for has to be work the user does. */
export const workWithinSkill = defineRule({
  id: "work-within-skill",
  intent: "The work has to stay within what the user does, because work beyond it ends in a ruined part or an unsafe club.",
  strength: "must",
  grain: "interface",
  needs: {},
  uses: { workSkill: "work.skill", goalSkill: "goal.skill" },
  source: { title: "derived, no published source" },
  check: ({ workSkill, goalSkill }) => {
    if (workSkill === undefined || goalSkill === undefined) return fits();
    if (skills.indexOf(workSkill) <= skills.indexOf(goalSkill)) return fits();
    return doesNotFit("beyond-skill", ["workSkill", "goalSkill"], { workSkill, goalSkill });
  },
  say: {
    "beyond-skill": ({ workSkill, goalSkill }) =>
      `it takes ${names[workSkill as Skill]}, and the most you allowed is ${names[goalSkill as Skill]}`,
  },
  hint: {
    "beyond-skill": ({ workSkill }) => `somebody who does ${names[workSkill as Skill]}, or allow it in the goal if you do`,
  },
  ask: {},
});
