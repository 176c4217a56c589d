import { describe, expect, it } from "vitest";
import type { Outcome } from "../findings/outcome.ts";
import type { Verdict } from "../findings/verdict.ts";
import type { Claim } from "../parts/claim.ts";
import type { FactValue, Role, Rule, Teller } from "./rule.ts";

/** One row of a rule's table: facts by the rule's short names, and what has to come of them. */
export interface Case<Code extends string> {
  readonly title: string;
  /** A number stands for a measured reading, except among wishes and work, where numbers are plain. */
  readonly facts: Readonly<Record<string, unknown>>;
  readonly claims?: readonly Claim[];
  readonly verdict: Verdict;
  readonly code?: Code;
  /** The name of the question that has to be asked. */
  readonly ask?: string;
  /** Has to match the words: the reason, the hint and the question, one after the other. */
  readonly says?: RegExp;
  readonly because?: readonly string[];
  readonly steps?: readonly string[];
  /** Figures of the outcome and of its steps, to a ten-thousandth. */
  readonly figures?: Readonly<Record<string, number>>;
}

const roles: readonly Role[] = ["head", "adapter", "holder", "shaft", "grip"];

/** A teller whose names are the roles and whose numbers are written out to a ten-thousandth. */
export const testTeller: Teller = {
  part: (role) => {
    if (!roles.includes(role)) throw new Error(`no part plays the role "${role}"`);
    return `the ${role}`;
  },
  inches: (valueIn) => `${trimmed(valueIn)} in`,
  grams: (valueG) => `${trimmed(valueG)} g`,
  degrees: (valueDeg) => `${trimmed(valueDeg)} deg`,
  points: (swingWeightPoints) => `${trimmed(swingWeightPoints)} points`,
};

function trimmed(value: number): string {
  return String(Number(value.toFixed(4)));
}

/** Judges facts as the engine does: a missing need asks, and a refusal that rests on a typical reading is unsettled. */
export function judgeCase<Code extends string>(
  rule: Rule<Code>,
  facts: Readonly<Record<string, unknown>>,
  claims: readonly Claim[] = [],
): Outcome<Code> {
  const missing = Object.keys(rule.needs).find((name) => facts[name] === undefined);
  if (missing !== undefined) return { verdict: "unsettled", ask: missing };
  const read: Record<string, FactValue> = {};
  for (const [name, value] of Object.entries(facts)) read[name] = asFact(rule, name, value);
  const outcome = rule.check(read, claims);
  const typical = outcome.because?.find((name) => read[name]?.source === "typical");
  if (outcome.verdict !== "does-not-fit" || typical === undefined) return outcome;
  return { ...outcome, verdict: "unsettled", ask: typical };
}

/** The words of an outcome: reason, hint and question. */
export function wordsOf<Code extends string>(rule: Rule<Code>, outcome: Outcome<Code>): string {
  const { code, data = {}, ask } = outcome;
  const said =
    code === undefined ? [] : [rule.say[code](data, testTeller), rule.hint?.[code]?.(data, testTeller)];
  return [...said, ask && rule.ask[ask]].filter(Boolean).join(" / ");
}

/** Runs a rule's table, and checks what holds for every rule: words, questions, proofs, and that each code is reached. */
export function cases<Code extends string>(rule: Rule<Code>, rows: readonly Case<Code>[]): void {
  describe(rule.id, () => {
    it.each(rows)("$title", (row) => {
      const outcome = judgeCase(rule, row.facts, row.claims);
      expect(outcome.verdict).toBe(row.verdict);
      if (row.code !== undefined || row.verdict !== "unsettled") expect(outcome.code).toBe(row.code);
      if (row.ask !== undefined) expect(outcome.ask).toBe(row.ask);
      if (row.because) expect([...(outcome.because ?? [])].sort()).toEqual([...row.because].sort());
      if (row.steps) expect((outcome.steps ?? []).map(({ step }) => step)).toEqual(row.steps);
      expect(figuresOf(outcome)).toMatchObject(rounded(row.figures ?? {}));
      if (row.says) expect(wordsOf(rule, outcome)).toMatch(row.says);
      expectHonest(rule, outcome);
      if (outcome.verdict === "does-not-fit") expectSmallestProof(rule, row, outcome.because ?? []);
    });

    it("has a row for every way it comes out", () => {
      const reached = rows.map((row) => judgeCase(rule, row.facts, row.claims).code);
      expect(Object.keys(rule.say).filter((code) => !reached.includes(code as Code))).toEqual([]);
    });

    it("has a question for every need, and knows every fact it calls typical", () => {
      expect(Object.keys(rule.needs).filter((name) => !rule.ask[name])).toEqual([]);
      expect((rule.typical ?? []).filter((name) => !(name in { ...rule.needs, ...rule.uses }))).toEqual([]);
    });
  });
}

/** The figures of an outcome and of its steps; a step's own stand under its code and their name. */
function figuresOf(outcome: Outcome): Readonly<Record<string, unknown>> {
  const ofSteps = (outcome.steps ?? []).map(({ step, data = {} }) =>
    Object.fromEntries(Object.entries(data).map(([name, value]) => [`${step}.${name}`, value])),
  );
  return rounded(Object.assign({}, outcome.data, ...ofSteps));
}

function rounded(figures: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(figures).map(([name, value]) => [
      name,
      typeof value === "number" ? Number(value.toFixed(4)) : value,
    ]),
  );
}

function asFact<Code extends string>(rule: Rule<Code>, name: string, value: unknown): unknown {
  const path = { ...rule.needs, ...rule.uses }[name];
  if (path === undefined) throw new Error(`${rule.id} reads no fact called ${name}`);
  const isPlain = path.startsWith("goal.") || path.startsWith("work.");
  return typeof value === "number" && !isPlain ? { value, plusMinus: 0.0005, source: "measured" } : value;
}

function expectHonest<Code extends string>(rule: Rule<Code>, outcome: Outcome<Code>): void {
  const words = wordsOf(rule, outcome);
  expect(words).not.toMatch(/undefined|NaN|\[object/);
  const { code, data = {} } = outcome;
  if (code !== undefined) expect(rule.say[code](data, testTeller)).toMatch(/\w+ \w+ \w+/);
  const hint = code === undefined ? undefined : rule.hint?.[code];
  if (hint) expect(hint(data, testTeller)).toMatch(/\w+ \w+/);
  if (outcome.verdict === "unsettled") expect(rule.ask[outcome.ask ?? ""]).toBeTruthy();
  if (outcome.verdict === "fits-with-work") expect(outcome.steps?.length).toBeGreaterThan(0);
}

/** The named facts alone still refuse, and without any one of them nothing is refused. */
function expectSmallestProof<Code extends string>(
  rule: Rule<Code>,
  row: Case<Code>,
  because: readonly string[],
): void {
  const only = (names: readonly string[]) =>
    judgeCase(rule, Object.fromEntries(names.map((name) => [name, row.facts[name]])), row.claims).verdict;
  expect(because.length).toBeGreaterThan(0);
  expect(only(because)).toBe("does-not-fit");
  for (const left of because) expect(only(because.filter((name) => name !== left))).not.toBe("does-not-fit");
}
