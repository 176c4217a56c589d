import type { ClubType, Plan, Skill } from "@ferrule/core";
import { ApiError, call } from "./api.ts";

/** What a plan is asked within; null is no limit. */
export interface PlanWishes {
  readonly budgetMinor: number | null;
  readonly minutes: number | null;
  readonly mostOfType: Readonly<Partial<Record<ClubType, number>>>;
  readonly hours: "at-own-rate" | "for-nothing";
  readonly leastPerHourMinor: number | null;
  readonly skill: Skill;
}

/** A plan that is being searched for, or was. */
export interface PlanJob {
  readonly state: "running" | "done" | "stopped" | "failed";
  readonly netMinor: number | null;
  readonly boundMinor: number | null;
  readonly plan: Plan | null;
  readonly message?: string;
}

const jobPath = (id: string) => `/api/plan/jobs/${encodeURIComponent(id)}`;

/** Every call about plans. */
export const planApi = {
  plan: (wishes: PlanWishes, seconds: number, signal: AbortSignal, nextBest = true) =>
    call<Plan>("POST", "/api/plan", { ...wishes, seconds, nextBest }, { signal }),
  startJob: (wishes: PlanWishes, seconds: number) =>
    call<{ readonly job: string }>("POST", "/api/plan/jobs", { ...wishes, seconds }),
  job: (id: string) => call<PlanJob>("GET", jobPath(id)),
  stopJob: (id: string) => call<PlanJob>("DELETE", jobPath(id)),
};

const pollMs = 400;

/** Searches for longer than a request should last, and tells how far it is; a stopped search brings the best so far. */
export async function searchForPlan(
  wishes: PlanWishes,
  seconds: number,
  signal: AbortSignal,
  onProgress: (id: string, sofar: PlanJob) => void,
): Promise<Plan> {
  const { job } = await planApi.startJob(wishes, seconds);
  for (;;) {
    const now = signal.aborted ? await planApi.stopJob(job) : await planApi.job(job);
    if (now.state !== "running" && now.plan) return now.plan;
    if (now.state !== "running") throw new ApiError(now.state, now.message ?? "The search brought no plan");
    onProgress(job, now);
    await new Promise((resolve) => setTimeout(resolve, pollMs));
  }
}
