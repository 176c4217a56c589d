import type { Verdict } from "./verdict.ts";

/** Figures and names that a sentence about a finding needs; suffixed like every other field. */
export type FindingData = Readonly<Record<string, number | string | boolean>>;

/**
 * A step of work by its code (a row of the work table gives its minutes, skill, cost and cautions), with the figures that
 * belong to this one, such as `{ trimIn: 1.5 }`.
 */
export interface StepNeeded {
  readonly step: string;
  readonly data?: FindingData;
}

/** What a rule says of the facts it was given. */
export interface Outcome<Code extends string = string> {
  readonly verdict: Verdict;
  /** Names the way it comes out; absent where there is nothing to say. */
  readonly code?: Code;
  readonly data?: FindingData;
  readonly steps?: readonly StepNeeded[];
  /** Only for `unsettled` that no single missing field explains: the code of the question that would settle it. */
  readonly ask?: string;
  /**
   * Names of the needs and uses that this outcome rests on, when it does not rest on all of them. A refusal must name
   * exactly the smallest set that still refuses: it becomes the proof.
   */
  readonly because?: readonly string[];
}

export function fits<Code extends string>(code?: Code, data?: FindingData): Outcome<Code> {
  return code === undefined ? { verdict: "fits" } : { verdict: "fits", code, data };
}

export function fitsWithWork<Code extends string>(
  code: Code,
  steps: readonly StepNeeded[],
  data?: FindingData,
): Outcome<Code> {
  return { verdict: "fits-with-work", code, steps, data };
}

export function doesNotFit<Code extends string>(
  code: Code,
  because: readonly string[],
  data?: FindingData,
): Outcome<Code> {
  return { verdict: "does-not-fit", code, because, data };
}

export function unsettled<Code extends string>(code: Code, ask: string, data?: FindingData): Outcome<Code> {
  return { verdict: "unsettled", code, ask, data };
}
