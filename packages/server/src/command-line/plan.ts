import { clubTypes, type Plan, skills } from "@ferrule/core";
import { ProblemError, valueOrThrow } from "../errors.ts";
import { openPlans, type PlanRequest } from "../plan/plans.ts";
import { openThreadPool } from "../threads/thread-pool.ts";
import type { Answer, Command, Given, Surroundings } from "./command.ts";
import { exitCodes } from "./exit-code.ts";
import { givenWorld } from "./given-world.ts";
import { moneyOption } from "./money-option.ts";
import { benchToRead, type OpenedBench } from "./open-bench.ts";
import { numberOption, wordOption } from "./option-value.ts";
import { planText } from "./plan-text.ts";
import { marketOptions } from "./world-options.ts";
import { WrongUse } from "./wrong-use.ts";

export const planCommand: Command = {
  name: "plan",
  summary: "what to do with the whole bench and every open listing of the log",
  takes: "",
  words: { least: 0, most: 0 },
  options: {
    budget: { takes: "AMOUNT", text: "the most to spend, such as 50; without it, as much as pays" },
    hours: { takes: "N", text: "the most time at the bench and on the way" },
    unpaid: { text: "own hours cost nothing" },
    "per-hour": { takes: "AMOUNT", text: "leaves out what brings less than this for an hour" },
    most: {
      takes: "TYPE=N",
      many: true,
      text: `at most so many clubs of a type: ${clubTypes.join(", ")}; may be repeated`,
    },
    skill: {
      takes: "SKILL",
      text: `the most that you will do: ${skills.join(", ")}; without it, as the bench says`,
    },
    seconds: { takes: "N", text: "how long to look for a better one, 1 to 60; without it, 5" },
    ...marketOptions,
  },
  more: [
    "Ctrl-C ends the search with the best plan so far. A plan is made of estimates; look at every part before you act on it.",
  ],
  exits: [
    [exitCodes.done, "there is something to do that pays"],
    [exitCodes.no, "nothing pays better than leaving everything as it is"],
  ],
  examples: [
    {
      text: "Your own bench with 50 to spend and four hours",
      line: "ferrule plan --budget 50 --hours 4",
      exit: exitCodes.done,
    },
    {
      text: "No more than two drivers, as data",
      line: "ferrule plan --most driver=2 --json > plan.json",
      exit: exitCodes.done,
    },
    {
      text: "An exported bench with its prices",
      line: "ferrule plan --bench bench.json --catalogue models.csv --evidence prices.csv --sightings log.json",
      exit: exitCodes.done,
    },
  ],
  run: runPlan,
};

async function runPlan(given: Given, around: Surroundings): Promise<Answer> {
  const world = await givenWorld(given, around);
  const opened = benchToRead(given, around);
  const pool = openThreadPool();
  try {
    const request = { ...world, ...wishes(given, world, opened) };
    const parts = world.parts ?? opened.tools.bench.parts.all();
    const plan = await planned(opened, request, pool, around);
    return {
      exit: plan.actions.some((action) => action.do !== "wait") ? exitCodes.done : exitCodes.no,
      json: plan,
      text: (width) => planText(plan, parts, width),
    };
  } finally {
    await pool.close();
  }
}

/** Once it has begun the plan needs the bench no more, which is let go so that nothing waits for it. */
async function planned(
  { tables, tools, close }: OpenedBench,
  request: PlanRequest,
  pool: ReturnType<typeof openThreadPool>,
  { onInterrupt }: Surroundings,
): Promise<Plan> {
  const stamp = () => tables.stampOf(tables.parts);
  let running: ReturnType<ReturnType<typeof openPlans>["start"]>;
  try {
    running = openPlans({ ...tools, stamp }, pool).start(request);
  } finally {
    close();
  }
  const { plan, stop } = valueOrThrow(running);
  const letGo = onInterrupt(stop);
  try {
    const made = await plan;
    if (made) return made;
    throw new ProblemError({ code: "our-bug", message: "The plan was ended before it was there" });
  } finally {
    letGo();
  }
}

function wishes(given: Given, world: PlanRequest, { tools }: OpenedBench): Partial<PlanRequest> {
  const currency = world.costs?.currency ?? tools.costs.read().currency;
  const hours = numberOption(given, "hours", 0, 10_000);
  const skill = wordOption(given, "skill", skills);
  return {
    budgetMinor: moneyOption(given, "budget", currency) ?? null,
    minutes: hours === undefined ? null : hours * 60,
    leastPerHourMinor: moneyOption(given, "per-hour", currency) ?? null,
    mostOfType: mostOfType(given),
    seconds: numberOption(given, "seconds", 1, 60) ?? 5,
    hours: given.isOn("unpaid") ? "for-nothing" : "at-own-rate",
    ...(skill ? { skill } : {}),
  };
}

function mostOfType(given: Given): PlanRequest["mostOfType"] {
  return Object.fromEntries(
    given.values("most").map((text) => {
      const [, type, count] = /^([a-z]+)=(\d{1,4})$/.exec(text) ?? [];
      const known = clubTypes.find((one) => one === type);
      if (known) return [known, Number(count)];
      throw new WrongUse(
        `--most is ${JSON.stringify(text)}, expected a type of club and a number, such as driver=2 (${clubTypes.join(", ")})`,
      );
    }),
  );
}
