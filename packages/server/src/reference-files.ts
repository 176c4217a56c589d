import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseWith, type Reference } from "@ferrule/core";
import { type BenchContents, benchContentsSchema, completeContents } from "./bench/bench-contents.ts";

/** The trade tables of a checkout's `data/reference`. */
export function readReference(dataFolder: string): Reference {
  const table = (name: string) => readJson(join(dataFolder, "reference", `${name}.json`));
  return {
    typical: table("typical") as Reference["typical"],
    work: table("work") as Reference["work"],
    cautions: table("cautions") as Reference["cautions"],
  };
}

/** The example bench of a checkout, where there is one. */
export function readDemo(dataFolder: string): BenchContents | undefined {
  const file = join(dataFolder, "demo", "bench.json");
  if (!existsSync(file)) return undefined;
  const parsed = parseWith(benchContentsSchema, readJson(file));
  if (parsed.ok) return completeContents(parsed.value);
  const [first] = parsed.refusals;
  throw new Error(`${file}: ${first?.field} is ${first?.got}, expected ${first?.expected}`);
}

function readJson(file: string): unknown {
  return JSON.parse(readFileSync(file, "utf8"));
}
