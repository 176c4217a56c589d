import type { Outcome } from "./outcome.ts";

/**
 * Gives a refusal the smallest set of facts that still refuses: names are left out one by one, and stay out where the
 * check refuses without them. Any other outcome passes unchanged. `kept` are names that cannot be left out, such as a
 * rule's needs, without which it is not asked at all.
 */
export function smallestRefusal<Facts extends object, Code extends string>(
  check: (facts: Facts) => Outcome<Code>,
  facts: Facts,
  kept: readonly (keyof Facts & string)[] = [],
): Outcome<Code> {
  const outcome = check(facts);
  if (outcome.verdict !== "does-not-fit") return outcome;
  let left: Facts = facts;
  for (const name of Object.keys(facts) as (keyof Facts & string)[]) {
    if (kept.includes(name)) continue;
    const without = { ...left, [name]: undefined };
    if (check(without).verdict === "does-not-fit") left = without;
  }
  const because = Object.entries(left).flatMap(([name, value]) => (value === undefined ? [] : [name]));
  return { ...outcome, because };
}
