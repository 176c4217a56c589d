import type { CitedFact } from "../findings/cited-fact.ts";
import type { Target } from "../parts/goal.ts";
import type { FactValue } from "../rules/rule.ts";
import type { Context } from "./context.ts";

const targetFields: readonly string[] = ["playingLengthIn", "swingWeightPoints"] satisfies (keyof Target)[];

/** Whether a wish differs from club type to club type. */
export function isTargetField(path: string): boolean {
  return targetFields.includes(path);
}

/** A wish: a target is looked up for the head's club type first, then for all. */
export function goalFact(path: string, context: Context): { value: FactValue; cites: CitedFact[] } {
  const { goal, head } = context;
  if (isTargetField(path) && head?.kind === "head" && head.clubType) {
    const value = goal.targets?.[head.clubType]?.[path as keyof Target];
    if (value !== undefined) {
      return {
        value,
        cites: [
          { of: "goal", field: `targets.${head.clubType}.${path}`, value },
          { of: "part", part: head.id, field: "clubType", value: head.clubType },
        ],
      };
    }
  }
  const value = (goal as Record<string, FactValue>)[path];
  return { value, cites: value === undefined ? [] : [{ of: "goal", field: path, value }] };
}
