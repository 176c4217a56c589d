import type { Adjustments } from "./cost-settings.ts";
import type { Condition, Subject } from "./evidence.ts";

export type AdjustmentName = Exclude<keyof Adjustments, "season" | "fit"> | "season";

const gradeNames = { "as-new": "asNew", fair: "fair", poor: "poor" } as const;

/** A condition's factor is against good, which has none. */
export function gradeName(condition: Condition): "asNew" | "fair" | "poor" | null {
  return condition === "good" ? null : gradeNames[condition];
}

/** Month of a date such as 2026-05-31, January 0. */
export function monthOf(date: string): number {
  return Number(date.slice(5, 7)) - 1;
}

/** Only woods, hybrids and putters are sold with a cover; a wrench comes with what an adapter screws into. */
export function extrasMatter(subject: Subject, extra: "cover" | "wrench"): boolean {
  if (subject.kind !== "head" && subject.kind !== "club") return false;
  if (subject.clubType === "iron" || subject.clubType === "wedge") return false;
  return extra === "cover" || subject.clubType !== "putter";
}
