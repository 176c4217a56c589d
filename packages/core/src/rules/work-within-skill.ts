import { doesNotFit, fits } from "../findings/outcome.ts";
import { type Skill, skills } from "../parts/goal.ts";
import { defineRule } from "./rule.ts";

const names: Readonly<Record<Skill, string>> = {
  screw: "turn a screw",
  regrip: "change a grip",
  bond: "pull and bond a shaft",
  machine: "ream or turn metal",
};

/** The work a club asks for has to be work the user does. */
export const workWithinSkill = defineRule({
  id: "work-within-skill",
  intent:
    "The work has to stay within what the user does, because work beyond it ends in a ruined part or an unsafe club.",
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
      `somebody has to ${names[workSkill as Skill]}, and the most you allowed is to ${names[goalSkill as Skill]}`,
  },
  hint: {
    "beyond-skill": ({ workSkill }) =>
      `somebody who can ${names[workSkill as Skill]}, or a goal that allows it if you can`,
  },
  ask: {},
});
