import { clubTypes, skillSchema } from "@ferrule/core";
import { z } from "zod";
import { problem, valueOrThrow } from "../errors.ts";
import type { PlanRequest } from "../plan/plans.ts";
import { planSchema } from "../wire/plan.ts";
import { acceptedReplies, idParamsSchema, replies } from "../wire/replies.ts";
import { worldShape } from "../wire/world.ts";
import type { App, RouteContext } from "./context.ts";

const amountMinor = z.number().int().max(1_000_000_000);

const bodySchema = z.strictObject({
  budgetMinor: amountMinor.min(0).nullable().optional(),
  minutes: z.number().min(0).max(1_000_000).nullable().optional(),
  mostOfType: z.partialRecord(z.enum(clubTypes), z.number().int().min(0).max(10_000)).optional(),
  hours: z.enum(["at-own-rate", "for-nothing"]).optional(),
  leastPerHourMinor: amountMinor.min(0).nullable().optional(),
  skill: skillSchema.optional(),
  seconds: z.number().min(0.1).max(60).optional(),
  nextBest: z.boolean().optional(),
  ...worldShape,
});

const jobSchema = z.strictObject({
  state: z.enum(["running", "done", "stopped", "failed"]),
  netMinor: z.number().nullable(),
  boundMinor: z.number().nullable(),
  plan: planSchema.nullable(),
  message: z.string().optional(),
});

export function addPlan(app: App, { plans, planJobs }: RouteContext): void {
  const body = bodySchema.nullish().transform((given): PlanRequest => given ?? {});
  app.post("/api/plan", { schema: { body, response: replies(planSchema) } }, async (request, reply) => {
    const running = valueOrThrow(plans.start(request.body));
    // Nobody waits for the answer any more.
    reply.raw.once("close", () => running.end());
    const plan = await running.plan;
    return plan ?? valueOrThrow(problem("our-bug", "The plan was ended before it was there"));
  });
  const url = "/api/plan/jobs";
  const started = acceptedReplies(z.strictObject({ job: z.string() }));
  app.post(url, { schema: { body, response: started } }, async (request, reply) =>
    reply.code(202).send({ job: valueOrThrow(planJobs.start(request.body)) }),
  );
  const one = { schema: { params: idParamsSchema, response: replies(jobSchema) } };
  app.get(`${url}/:id`, one, async ({ params }, reply) => {
    const job = valueOrThrow(planJobs.get(params.id));
    // Held to its schema, a plan of some thousand parts keeps everybody waiting for longer than anything else about it; as it is, core made it.
    if (job.plan) reply.type("application/json; charset=utf-8").serializer(JSON.stringify);
    return job;
  });
  app.delete(`${url}/:id`, one, async ({ params }) => valueOrThrow(await planJobs.stop(params.id)));
}
