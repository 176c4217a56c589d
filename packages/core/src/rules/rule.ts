import type { FindingData, Outcome } from "../findings/outcome.ts";
import type { Claim } from "../parts/claim.ts";

/**
 * A place in a club that facts are read from. `holder` is whatever holds the shaft's tip, the adapter where there is one,
 * else the head; its bore is read as `holder.bore.…` in both cases. `goal` is what the user wants;
 * `work` is what the other findings came to (`work.skill` is the highest skill that any step of the club asks for).
 */
export type Role = "head" | "adapter" | "holder" | "shaft" | "grip" | "goal" | "work";

/** A fact by role and path, such as `shaft.tip.diameterIn` or `goal.skill`. */
export type FactPath = `${Role}.${string}`;

/** What a rule reads: its own short names for facts. A numeric field arrives as its reading, anything else as it is. */
export type FactPaths = Readonly<Record<string, FactPath>>;

/** The value of a fact as a rule sees it. */
// biome-ignore lint/suspicious/noExplicitAny: each rule states the type of its own facts in its `check`
export type FactValue = any;

/** Names and number formats, handed in by whoever speaks, so that core rounds nothing by itself. */
export interface Teller {
  /** The name of the part in a role, such as "the head H3 (Northmoor Tarn driver)". */
  part(role: Role): string;
  inches(valueIn: number): string;
  grams(valueG: number): string;
  degrees(valueDeg: number): string;
  points(swingWeightPoints: number): string;
}

export type Say = (data: FindingData, teller: Teller) => string;

export interface RuleSource {
  /** The published source, or "common practice, no source", or "derived, no published source". */
  readonly title: string;
  readonly at?: string;
}

/**
 * One rule. It is a leaf: it knows facts, not other rules.
 * - `needs`: facts that decide. One missing makes the outcome `unsettled`, with the question in `ask`, before `check` runs.
 * - `uses`: facts that `check` can do without; a missing one arrives as `undefined`.
 * - `typical`: names among needs and uses that may be filled with a typical reading. A typical reading may confirm; a
 *   refusal that rests on one is turned into `unsettled` by the engine.
 * - `check` is pure and total and has no words in it. It returns one outcome, or several where several things are so.
 */
export interface Rule<Code extends string = string> {
  readonly id: string;
  /** One sentence: what has to be so, and why. */
  readonly intent: string;
  readonly strength: "must" | "should" | "note";
  /**
   * `interface`: reads few and repeating facts, and is judged once per pair of interface classes. `part`: reads figures
   * that differ from part to part (lengths, masses), and is judged per club, after the others.
   */
  readonly grain: "interface" | "part";
  readonly needs: FactPaths;
  readonly uses?: FactPaths;
  readonly typical?: readonly string[];
  /** Whether the fit claims are read too. */
  readonly readsClaims?: boolean;
  readonly source: RuleSource;
  readonly check: (facts: FactValue, claims: readonly Claim[]) => Outcome<Code>;
  /** A clause for every code, to be put after "because". */
  readonly say: Readonly<Record<Code, Say>>;
  /** What somebody could do about it; only where somebody could. */
  readonly hint?: Readonly<Partial<Record<Code, Say>>>;
  /** The question that settles a missing need, or an `ask` code, in words a seller understands. */
  readonly ask: Readonly<Record<string, string>>;
}

/** States a rule; the type of its codes is taken from `say`, so a code without words does not compile. */
export function defineRule<Code extends string>(rule: Rule<Code>): Rule<Code> {
  return rule;
}
