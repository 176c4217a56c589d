import { type Plan, planBench, rules } from "@ferrule/core";
import { solverWithin } from "./solver-within.ts";
import type { ThreadPort } from "./thread-port.ts";
import type { PlanTask } from "./thread-task.ts";

/** What is heard of a plan that is being made: how good it is so far, and in the end the plan. */
export type PlanMessage =
  | { readonly plan: null; readonly netMinor: number; readonly boundMinor: number }
  | { readonly plan: Plan };

/** The share of the time that goes into the plan itself; the rest is for the plans that are next best. */
const mainShare = 0.7;
/** Plans that core compares to find the one that is next best in kind. */
const others = 4;

/** Makes the plan of a bench and sends it; on the way every better choice. */
export async function makePlan({ world, seconds }: PlanTask, port: ThreadPort): Promise<void> {
  const solve = solverWithin(await port.solver(), seconds, port.shouldStop);
  let turn = 0;
  const plan = await planBench({ ...world, rules }, (model) => {
    turn += 1;
    if (turn > 1) return solve(model, { share: 1 / Math.max(1, others + 2 - turn), relativeGap: 1e-3 });
    return solve(model, {
      share: mainShare,
      relativeGap: 1e-4,
      onProgress: ({ netMinor, boundMinor }) => port.say({ plan: null, netMinor, boundMinor }),
    });
  });
  // Of plans that nobody had the time to look for, none is the next best.
  port.say({ plan: port.shouldStop() ? { ...plan, nextBest: null } : plan });
}
