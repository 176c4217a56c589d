import type { Outcome } from "../findings/outcome.ts";
import type { CompiledRule } from "./compiled-rule.ts";
import { type Context, placeOfRole } from "./context.ts";
import { readFact } from "./fact.ts";

/** What a rule came to, with the names of the facts it rests on and those that were missing or only typical. */
export interface Judged {
  readonly outcome: Outcome;
  readonly missing: readonly string[];
  readonly typical: readonly string[];
}

const missingFact = "missing-fact";
const restsOnTypical = "rests-on-typical";

/** Codes that the engine itself gives, for every rule. */
export const engineCodes = { missingFact, restsOnTypical } as const;

/** Whether the rule has anything to say here: every part it asks for is there. */
export function applies(compiled: CompiledRule, context: Context): boolean {
  return compiled.asksFor.every((role) => placeOfRole(role, context) !== undefined);
}

/** Judges one rule. A missing need is `unsettled` before the check runs; a refusal on a typical reading is `unsettled` after. */
export function judgeRule(compiled: CompiledRule, context: Context): Judged {
  const facts: Record<string, unknown> = {};
  const missing: string[] = [];
  const typical: string[] = [];
  for (const fact of compiled.needs) {
    const read = readFact(fact, context);
    if (!read) missing.push(fact.name);
    else if (read.typical) typical.push(fact.name);
    facts[fact.name] = read?.value;
  }
  if (missing.length > 0) return { outcome: { verdict: "unsettled", code: missingFact }, missing, typical };
  for (const fact of compiled.uses) {
    const read = readFact(fact, context);
    if (read?.typical) typical.push(fact.name);
    facts[fact.name] = read?.value;
  }
  const outcome = compiled.rule.check(facts, context.claims);
  const shaky = typical.filter(
    (name) => outcome.because?.includes(name) ?? outcome.verdict === "does-not-fit",
  );
  if (outcome.verdict === "does-not-fit" && shaky.length > 0) {
    return { outcome: { ...outcome, verdict: "unsettled" }, missing: shaky, typical };
  }
  return { outcome, missing, typical };
}
