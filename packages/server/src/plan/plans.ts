import { createHash } from "node:crypto";
import type { Plan, PlanWishes, Skill } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { ThreadPool } from "../threads/thread-pool.ts";
import type { PlanWorld } from "../threads/thread-task.ts";
import { type WorldRequest, type WorldTools, worldOf } from "../trade/world.ts";
import type { OrderEvents, SeatOrder } from "./plan-seat.ts";
import { openPlanSeats, type PlanSeats } from "./plan-seats.ts";

export interface PlanRequest extends WorldRequest, Partial<PlanWishes> {
  readonly skill?: Skill;
  readonly seconds?: number;
  /** False leaves out the plan that is next best. */
  readonly nextBest?: boolean;
}

/** A plan that is being made in a thread. */
export interface RunningPlan {
  /** The plan; nothing where it was ended before there was one. Rejected where the thread fails. */
  readonly plan: Promise<Plan | null>;
  /** Asks for the best so far. */
  stop(): void;
  /** Ends it without a plan. */
  end(): void;
}

export type PlanProgress = (sofar: { readonly netMinor: number; readonly boundMinor: number }) => void;

/** Makes plans of the stored bench, or of one that comes with the request. */
export interface Plans {
  start(request: PlanRequest, onProgress?: PlanProgress): Outcome<RunningPlan>;
}

export interface PlanTools extends WorldTools {
  /** Differs after every change of anything stored that a plan rests on, but the goal, the costs and the day. */
  readonly stamp: () => string;
}

/** Plans that are made at once: each keeps a core busy. */
const mostAtOnce = 3;

export function openPlans(tools: PlanTools, pool: ThreadPool): Plans {
  const seats = openPlanSeats(pool);
  let running = 0;
  return {
    start: (request, onProgress) => {
      const order = orderOf(tools, request, seats, onProgress !== undefined);
      if (!order.ok) return order;
      if (running >= mostAtOnce)
        return problem("too-many", `${mostAtOnce} plans are being made already; stop one, or wait for it`);
      running += 1;
      const plan = startPlan(seats, order.value, onProgress);
      let isFreed = false;
      const free = () => {
        if (!isFreed) running -= 1;
        isFreed = true;
      };
      plan.plan.then(free, free);
      const end = () => {
        free();
        plan.end();
      };
      return done({ ...plan, end });
    },
  };
}

/** Of a bench that is stored and known to a seat nothing is read: the order names it. */
function orderOf(
  tools: PlanTools,
  request: PlanRequest,
  seats: PlanSeats,
  withProgress: boolean,
): Outcome<SeatOrder> {
  const wishes = wishesOf(request);
  const make = () => planWorld(tools, request);
  const stored = storedGround(tools, request, wishes);
  const isKnown = stored !== undefined && seats.knows(stored);
  const world = isKnown ? undefined : make();
  if (world && !world.ok) return world;
  return done({
    ground: stored ?? groundOf(world?.value, wishes),
    world: () => {
      const now = world ?? make();
      if (!now.ok) throw new Error("what a plan rested on a moment ago is refused now");
      return now.value;
    },
    wishes,
    seconds: request.seconds ?? 5,
    withNextBest: request.nextBest ?? true,
    withProgress,
    flag: new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT),
  });
}

/** The name of what a plan of all that is stored rests on; nothing where something comes with the request. */
function storedGround(tools: PlanTools, request: PlanRequest, { hours }: PlanWishes): string | undefined {
  const { parts, joints, claims, goal, catalogue, evidence, sightings, costs, today, skill } = request;
  const given = [parts, joints, claims, goal, catalogue, evidence, sightings, costs, today];
  if (given.some((each) => each !== undefined)) return undefined;
  const stored = [tools.stamp(), tools.bench.goal(), tools.costs.read(), tools.today()];
  return JSON.stringify([...stored, skill ?? null, hours]);
}

/** The name of what came with a request: the same for the same. */
function groundOf(world: PlanWorld | undefined, { hours }: PlanWishes): string {
  return createHash("sha256")
    .update(JSON.stringify([world, hours]))
    .digest("hex");
}

function planWorld(tools: WorldTools, request: PlanRequest): Outcome<PlanWorld> {
  const world = worldOf(tools, request, "The plan cannot be made from this");
  if (!world.ok) return world;
  const { bench } = world.value;
  const goal = request.skill ? { ...bench.goal, skill: request.skill } : bench.goal;
  return done({ ...world.value, bench: { ...bench, goal } as PlanWorld["bench"] });
}

export function wishesOf({
  budgetMinor = null,
  minutes = null,
  mostOfType = {},
  hours = "at-own-rate",
  leastPerHourMinor = null,
}: Partial<PlanWishes>): PlanWishes {
  return { budgetMinor, minutes, mostOfType, hours, leastPerHourMinor };
}

function startPlan(seats: PlanSeats, order: SeatOrder, onProgress: PlanProgress | undefined): RunningPlan {
  let end: () => void = () => undefined;
  let stop = end;
  const plan = new Promise<Plan | null>((resolve, reject) => {
    const events: OrderEvents = {
      progress: (sofar) => onProgress?.(sofar),
      done: resolve,
      failed: reject,
    };
    const taken = seats.take(order, events);
    stop = taken.stop;
    end = () => {
      taken.end();
      resolve(null);
    };
  });
  return { plan, stop: () => stop(), end: () => end() };
}
