import { cases } from "./cases.test-kit.ts";
import { workWithinSkill } from "./work-within-skill.ts";

// Derived, no published source: the order of skills is the vocabulary's own.
cases(workWithinSkill, [
  {
    title: "passes work below what is allowed",
    facts: { workSkill: "screw", goalSkill: "bond" },
    verdict: "fits",
  },
  {
    title: "passes work of just what is allowed",
    facts: { workSkill: "bond", goalSkill: "bond" },
    verdict: "fits",
  },
  {
    title: "refuses work one step beyond",
    facts: { workSkill: "regrip", goalSkill: "screw" },
    verdict: "does-not-fit",
    code: "beyond-skill",
    because: ["workSkill", "goalSkill"],
    says: /somebody has to change a grip, and the most you allowed is to turn a screw/,
  },
  {
    title: "refuses reaming to somebody who only bonds",
    facts: { workSkill: "machine", goalSkill: "bond" },
    verdict: "does-not-fit",
    code: "beyond-skill",
    says: /somebody who can ream/,
  },
  { title: "passes any work where nobody set a limit", facts: { workSkill: "machine" }, verdict: "fits" },
  { title: "passes a club that takes no work", facts: { goalSkill: "screw" }, verdict: "fits" },
]);
