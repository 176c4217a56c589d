import type { Goal, Head, Target } from "@ferrule/core";

/** What is wanted of a club with this head: the target of its club type, else the bench's own. */
export function targetOf(goal: Goal, head: Pick<Head, "clubType"> | undefined): Target {
  const own = head?.clubType ? goal.targets?.[head.clubType] : undefined;
  return own ?? { playingLengthIn: goal.playingLengthIn, swingWeightPoints: goal.swingWeightPoints };
}
