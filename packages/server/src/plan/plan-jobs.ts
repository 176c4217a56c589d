import type { Plan } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { PlanRequest, Plans, RunningPlan } from "./plans.ts";

/** A plan that somebody comes back for. */
export interface PlanJob {
  readonly state: "running" | "done" | "stopped" | "failed";
  /** How good it is, and no plan is better than the bound; nothing before the first choice was found. */
  readonly netMinor: number | null;
  readonly boundMinor: number | null;
  readonly plan: Plan | null;
  readonly message?: string;
}

/** Plans made while nobody waits for them; the last ones are kept in memory. */
export interface PlanJobs {
  start(request: PlanRequest): Outcome<string>;
  get(id: string): Outcome<PlanJob>;
  /** Stops a job; what it is by then, with the best plan so far once that is there. */
  stop(id: string): Promise<Outcome<PlanJob>>;
}

interface Held {
  job: PlanJob;
  readonly running: RunningPlan;
  readonly settled: Promise<void>;
  isStopped: boolean;
}

const jobsKept = 20;

export function openPlanJobs(plans: Plans, onFailure: (error: unknown) => void): PlanJobs {
  const jobs = new Map<string, Held>();
  let count = 0;
  const found = (id: string): Outcome<Held> => {
    const held = jobs.get(id);
    return held ? done(held) : problem("not-found", `There is no plan "${id}", or it is too long ago`);
  };
  return {
    start: (request) => {
      const held: Partial<Held> = { job: nothingYet, isStopped: false };
      const running = plans.start(request, ({ netMinor, boundMinor }) => {
        held.job = { ...nothingYet, netMinor, boundMinor };
      });
      if (!running.ok) return running;
      count += 1;
      const id = `plan-${count}`;
      const kept = Object.assign(held, {
        running: running.value,
        settled: settle(held as Held, running.value, onFailure),
      }) as Held;
      jobs.set(id, kept);
      dropOldest(jobs);
      return done(id);
    },
    get: (id) => {
      const held = found(id);
      return held.ok ? done(held.value.job) : held;
    },
    stop: async (id) => {
      const held = found(id);
      if (!held.ok) return held;
      const { value } = held;
      value.isStopped = value.isStopped || value.job.state === "running";
      value.running.stop();
      await value.settled;
      return done(value.job);
    },
  };
}

const nothingYet: PlanJob = { state: "running", netMinor: null, boundMinor: null, plan: null };

async function settle(held: Held, running: RunningPlan, onFailure: (error: unknown) => void): Promise<void> {
  try {
    const made = await running.plan;
    const sums = made ? { netMinor: made.netMinor, boundMinor: made.boundMinor } : {};
    // A plan that is stopped was made while the ones beside it were not all looked at: none of them is the next best.
    const plan = made && held.isStopped ? { ...made, nextBest: null } : made;
    held.job = { ...held.job, ...sums, plan, state: held.isStopped || !made ? "stopped" : "done" };
  } catch (error) {
    onFailure(error);
    held.job = {
      ...held.job,
      state: "failed",
      message: "the plan could not be made: this is a fault of ours",
    };
  }
}

function dropOldest(jobs: Map<string, Held>): void {
  for (const [id, { job }] of jobs) {
    if (jobs.size <= jobsKept) return;
    if (job.state !== "running") jobs.delete(id);
  }
}
