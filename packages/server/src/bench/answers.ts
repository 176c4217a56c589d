import type { Goal, Reference, Resolution } from "@ferrule/core";
import type { Outcome } from "../errors.ts";
import type { Bench } from "./bench.ts";
import { resolveContents } from "./resolve-contents.ts";
import { unsold } from "./unsold.ts";

/** What the stored bench comes to without what has been sold; worked out once for each goal until the bench changes. */
export interface Answers {
  resolve(goal: Goal, about?: string): Outcome<Resolution>;
}

/** A page asks under one goal or two at a time; answers to a large bench are large. */
const answersKept = 4;

export function openAnswers(bench: Bench, reference: Reference): Answers {
  const kept = new Map<string, Outcome<Resolution>>();
  let stamp = bench.stamp();
  return {
    resolve: (goal, about) => {
      if (stamp !== bench.stamp()) kept.clear();
      stamp = bench.stamp();
      const key = JSON.stringify([goal, about]);
      const known = kept.get(key);
      if (known) return known;
      if (kept.size >= answersKept) kept.clear();
      const { parts, joints, claims } = unsold(bench.view());
      const answer = resolveContents({ parts, joints, claims, goal }, reference, about);
      kept.set(key, answer);
      return answer;
    },
  };
}
