import { type Reference, type Resolution, resolveBench, rules } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { BenchContents } from "./bench-contents.ts";
import { checkBench } from "./check-bench.ts";

/** What a bench comes to under the rules; one that does not hold together is refused with every reason. */
export function resolveContents(
  contents: BenchContents,
  reference: Reference,
  about?: string,
): Outcome<Resolution> {
  const refusals = checkBench(contents);
  if (refusals.length > 0) return problem("bad-request", "The bench does not hold together", refusals);
  const result = resolveBench(contents, rules, reference, about);
  return result.ok
    ? done(result.resolution)
    : problem("bad-request", "The bench does not hold together", result.refusals);
}
