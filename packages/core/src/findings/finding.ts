import type { CitedFact } from "./cited-fact.ts";
import type { FindingData } from "./outcome.ts";
import type { Verdict } from "./verdict.ts";

/** One thing a rule found. `text` is the rendering of the rest. */
export interface Finding {
  readonly rule: string;
  readonly strength: "must" | "should" | "note";
  readonly verdict: Verdict;
  readonly code: string;
  readonly data: FindingData;
  readonly parts: readonly string[];
  readonly facts: readonly CitedFact[];
  readonly text: string;
  /** Where the rule comes from: a published source, or the words that say there is none. */
  readonly source: string;
  readonly hint?: string;
}
