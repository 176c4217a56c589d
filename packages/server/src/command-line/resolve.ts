import { type Goal, type Resolution, skills } from "@ferrule/core";
import { type BenchContents, emptyContents } from "../bench/bench-contents.ts";
import { resolveContents } from "../bench/resolve-contents.ts";
import { unsold } from "../bench/unsold.ts";
import { ProblemError, valueOrThrow } from "../errors.ts";
import type { Answer, Command, Given, Surroundings } from "./command.ts";
import { type ExitCode, exitCodes } from "./exit-code.ts";
import { givenWorld } from "./given-world.ts";
import { benchToRead } from "./open-bench.ts";
import { numberOption, wordOption } from "./option-value.ts";
import { resolutionText } from "./resolution-text.ts";
import { benchOption } from "./world-options.ts";
import { WrongUse } from "./wrong-use.ts";

export const resolveCommand: Command = {
  name: "resolve",
  summary: "which parts of the bench go together, and what is missing",
  takes: "[FILE]",
  words: { least: 0, most: 1 },
  options: {
    part: { takes: "ID", text: "only the clubs that have this head or this shaft" },
    skill: {
      takes: "SKILL",
      text: `the most that you will do: ${skills.join(", ")}; without it, as the bench says`,
    },
    limit: { takes: "N", text: "at most so many of each, the best first" },
    ...benchOption,
  },
  more: [
    "A FILE is an exported bench (JSON or CSV), or - for standard input, as after --bench; without one it is the stored bench.",
  ],
  exits: [
    [exitCodes.done, "at least one club fits, as it is or with work"],
    [exitCodes.no, "no club does"],
    [exitCodes.open, "clubs that are unsettled, and no other: an answer to a question decides"],
  ],
  examples: [
    { text: "Your own bench", line: "ferrule resolve", exit: exitCodes.done },
    {
      text: "An exported bench, wrench only",
      line: "ferrule resolve bench.json --skill screw",
      exit: exitCodes.done,
    },
    {
      text: "Everything that goes with one head, as data",
      line: "ferrule resolve bench.json --part H01 --json > clubs.json",
      exit: exitCodes.done,
    },
    { text: "Parts out of another program", line: "cat parts.csv | ferrule resolve -", exit: exitCodes.done },
  ],
  run: runResolve,
};

async function runResolve(given: Given, around: Surroundings): Promise<Answer> {
  const [file] = given.words;
  if (file !== undefined && given.value("bench") !== undefined)
    throw new WrongUse("expected a file or --bench, got both");
  const asked = file === undefined ? given : withBench(given, file);
  const request = await givenWorld(asked, around);
  const opened = benchToRead(asked, around);
  try {
    const isStored = asked.value("bench") === undefined;
    const contents = unsold(isStored ? opened.tools.bench.view() : { ...emptyContents, ...request });
    const part = partOption(given, contents);
    const goal = goalWith(given, contents.goal);
    const resolution = valueOrThrow(
      resolveContents(
        { parts: contents.parts, joints: contents.joints, claims: contents.claims, goal },
        opened.tools.reference,
        part,
      ),
    );
    return {
      exit: exitOf(resolution),
      json: resolution,
      text: (width) => resolutionText(resolution, contents.parts, width),
    };
  } finally {
    opened.close();
  }
}

function withBench(given: Given, file: string): Given {
  return { ...given, words: [], value: (option) => (option === "bench" ? file : given.value(option)) };
}

function goalWith(given: Given, goal: Goal): Goal {
  const skill = wordOption(given, "skill", skills) ?? goal.skill;
  const limit = numberOption(given, "limit", 1, 5000) ?? goal.limit;
  return {
    ...goal,
    ...(skill ? { skill } : {}),
    ...(limit === undefined ? {} : { limit: Math.floor(limit) }),
  };
}

function partOption(given: Given, { parts }: BenchContents): string | undefined {
  const id = given.value("part");
  if (id === undefined) return undefined;
  const part = parts.find((one) => one.id === id);
  if (part?.kind === "head" || part?.kind === "shaft") return id;
  throw new ProblemError({
    code: "not-found",
    message: "Clubs are looked for by their head or their shaft",
    refusals: [
      {
        field: "--part",
        got: part ? `${JSON.stringify(id)}, of the kind ${part.kind}` : JSON.stringify(id),
        expected: "the id of a head or a shaft on the bench that is not sold",
      },
    ],
  });
}

function exitOf({ clubs }: Resolution): ExitCode {
  if (clubs.some(({ verdict }) => verdict === "fits" || verdict === "fits-with-work")) return exitCodes.done;
  return clubs.length > 0 ? exitCodes.open : exitCodes.no;
}
