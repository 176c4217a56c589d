import type { Plan, PlanWishes, Skill } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { PlanMessage } from "../threads/make-plan.ts";
import type { Thread, ThreadPool } from "../threads/thread-pool.ts";
import type { PlanWorld } from "../threads/thread-task.ts";
import { type WorldRequest, type WorldTools, worldOf } from "../trade/world.ts";

export interface PlanRequest extends WorldRequest, Partial<PlanWishes> {
  readonly skill?: Skill;
  readonly seconds?: number;
}

/** A plan that is being made in a thread of its own. */
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

/** Plans that are made at once: each keeps a core busy. */
const mostAtOnce = 3;

export function openPlans(tools: WorldTools, pool: ThreadPool): Plans {
  let running = 0;
  return {
    start: (request, onProgress) => {
      const world = planWorld(tools, request);
      if (!world.ok) return world;
      if (running >= mostAtOnce)
        return problem("too-many", `${mostAtOnce} plans are being made already; stop one, or wait for it`);
      running += 1;
      const plan = startPlan(pool, world.value, request.seconds ?? 5, onProgress);
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

function planWorld(tools: WorldTools, request: PlanRequest): Outcome<PlanWorld> {
  const world = worldOf(tools, request, "The plan cannot be made from this");
  if (!world.ok) return world;
  const { bench } = world.value;
  const goal = request.skill ? { ...bench.goal, skill: request.skill } : bench.goal;
  return done({ ...world.value, bench: { ...bench, goal }, wishes: wishesOf(request) });
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

function startPlan(
  pool: ThreadPool,
  world: PlanWorld,
  seconds: number,
  onProgress: PlanProgress | undefined,
): RunningPlan {
  let thread: Thread | undefined;
  const plan = new Promise<Plan | null>((resolve, reject) => {
    thread = pool.start<PlanMessage>(
      { do: "plan", world, seconds },
      {
        message: (message) => {
          if (message.plan === null) onProgress?.(message);
          else resolve(message.plan);
        },
        ended: (error) => (error ? reject(error) : resolve(null)),
      },
    );
  });
  return { plan, stop: () => thread?.stop(), end: () => thread?.end() };
}
