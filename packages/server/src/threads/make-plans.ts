import {
  type LinearSolver,
  type Plan,
  type PlanGround,
  type PlanOptions,
  type PlanWishes,
  planGround,
  planOn,
  type SolveModel,
} from "@ferrule/core";
import { LastKept } from "./last-kept.ts";
import { pricedWorld } from "./priced-world.ts";
import { solverWithin } from "./solver-within.ts";
import type { ThreadPort } from "./thread-port.ts";
import type { PlanWorld } from "./thread-task.ts";

/** A plan to make. */
export interface PlanOrder {
  readonly number: number;
  /** The name of what it rests on: the same for orders that differ in nothing but their limits. */
  readonly ground: string;
  /** What it rests on, where the thread has not kept that from an earlier order. */
  readonly world: PlanWorld | null;
  readonly wishes: PlanWishes;
  readonly seconds: number;
  readonly withNextBest: boolean;
  /** Whether somebody wants to hear how good it is so far. */
  readonly withProgress: boolean;
  /** Not zero once the best so far is wanted. */
  readonly flag: SharedArrayBuffer;
}

/** What is posted to a thread that makes plans. */
export type PlanPost = PlanOrder | "no-more";

/** What is heard of an order: how good its plan is so far, and in the end the plan, or why there is none. */
export type PlanMessage = { readonly number: number } & (
  | { readonly is: "under-way"; readonly netMinor: number; readonly boundMinor: number }
  | { readonly is: "done"; readonly plan: Plan }
  | { readonly is: "failed"; readonly error: Error }
);

/** Grounds that a thread keeps: of one bench, one for each skill. Who posts to it counts on that. */
export const groundsKept = 4;

/** The share of the time that goes into the plan itself; the rest is for the plans that are next best. */
const mainShare = 0.7;
/** Plans that core compares to find the one that is next best in kind. */
const others = 4;

/** Makes one plan after another, as they are ordered, and keeps what they rest on for those to come. */
export async function makePlans(port: ThreadPort): Promise<void> {
  const grounds = new LastKept<Promise<PlanGround>>(groundsKept);
  for (;;) {
    const order = (await port.next()) as PlanPost;
    if (order === "no-more" || port.shouldStop()) return;
    try {
      await makePlan(order, grounds, port);
    } catch (error) {
      say(port, { number: order.number, is: "failed", error: error as Error });
    }
  }
}

/** Makes a plan and says it; on the way every better choice. */
async function makePlan(
  order: PlanOrder,
  grounds: LastKept<Promise<PlanGround>>,
  port: ThreadPort,
): Promise<void> {
  const { number, wishes, seconds, withNextBest, withProgress } = order;
  const flag = new Int32Array(order.flag);
  const shouldStop = () => Atomics.load(flag, 0) !== 0 || port.shouldStop();
  const solver = await port.solver();
  const ground = await grounds.ask(order.ground, () => groundOf(order, solver));
  const solve = solverWithin(solver, seconds, shouldStop);
  const onProgress: PlanOptions["onProgress"] = ({ netMinor, boundMinor }) =>
    say(port, { number, is: "under-way", netMinor, boundMinor });
  let turn = 0;
  const solveNext: SolveModel = (model) => {
    turn += 1;
    if (turn > 1) return solve(model, { share: 1 / Math.max(1, others + 2 - turn), relativeGap: 1e-3 });
    const share = withNextBest ? mainShare : 1;
    return solve(model, { share, relativeGap: 1e-4, ...(withProgress ? { onProgress } : {}) });
  };
  const plan = await planOn(ground, wishes, solveNext, withNextBest);
  say(port, { number, is: "done", plan });
}

async function groundOf({ world, wishes, ground }: PlanOrder, solver: LinearSolver): Promise<PlanGround> {
  if (world === null) throw new Error(`a plan was ordered on "${ground}", which is not kept any more`);
  return planGround({ ...(await pricedWorld(world, solver)), wishes });
}

const say = (port: ThreadPort, message: PlanMessage) => port.say(message);
