import type { Skill } from "./goal.ts";
import type { TypicalRow } from "./typical.ts";

/** A kind of bench work; minutes, costs and skills are defaults the user may edit. */
export interface WorkRow {
  readonly step: string;
  /** The order of steps at the bench: undoing first, gripping last. */
  readonly order: number;
  readonly minutes: number;
  /** Curing or drying, in minutes, when nobody has to stand by. */
  readonly waitMinutes: number;
  readonly costMinor: number;
  readonly skill: Skill;
  /** Codes of cautions, each a row of the caution table. */
  readonly cautions: readonly string[];
  /** What to do, in plain English; `{name}` is replaced by the step's own figures. */
  readonly text: string;
}

/**
 * What can hurt in some steps of work, in words for whoever does them, and where it is published. Work rows name it by `code`.
 */
export interface CautionRow {
  readonly code: string;
  readonly text: string;
  readonly source: string;
}

/** The tables of `data/reference` that core works with, handed in by whoever calls. */
export interface Reference {
  readonly typical: readonly TypicalRow[];
  readonly work: readonly WorkRow[];
  readonly cautions: readonly CautionRow[];
}
