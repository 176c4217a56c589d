import { canonicalText } from "@ferrule/core";
import { mineOnTop } from "../offline/merge-three.ts";
import type { Thing } from "../offline/waiting-change.ts";

/** A field that two versions of a thing do not agree on. */
export interface Side {
  readonly field: string;
  readonly mine: unknown;
  readonly theirs: unknown;
  /** Who changed it from what both began with. */
  readonly by: "me" | "them" | "both";
}

export type Choice = "mine" | "theirs";

/** The fields in which two versions differ, those that both changed first. */
export function sidesOf(base: Thing, mine: Thing, present: Thing): readonly Side[] {
  const names = [...new Set([base, mine, present].flatMap((each) => Object.keys(each)))];
  const sides = names
    .filter((name) => !isSame(mine[name], present[name]))
    .map((field) => ({
      field,
      mine: mine[field],
      theirs: present[field],
      by: changer(base, mine, present, field),
    }));
  return [...sides.filter(({ by }) => by === "both"), ...sides.filter(({ by }) => by !== "both")];
}

/** One thing of both: what only one side changed as it was changed, the rest as chosen, and mine where nothing is. */
export function chosenOf(
  base: Thing,
  mine: Thing,
  present: Thing,
  choices: ReadonlyMap<string, Choice>,
): Thing {
  const chosen = { ...mineOnTop(base, mine, present) };
  for (const [field, choice] of choices) {
    const value = (choice === "mine" ? mine : present)[field];
    if (value === undefined) delete chosen[field];
    else chosen[field] = value;
  }
  return chosen;
}

function changer(base: Thing, mine: Thing, present: Thing, field: string): Side["by"] {
  if (isSame(base[field], mine[field])) return "them";
  return isSame(base[field], present[field]) ? "me" : "both";
}

function isSame(one: unknown, other: unknown): boolean {
  return canonicalText([one]) === canonicalText([other]);
}
