import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { createContext, runInContext } from "node:vm";
import { type Bench, type Resolution, resolveBench, rules } from "@ferrule/core";
import { build, type Rolldown } from "vite";
import { expect, it } from "vitest";
import { reference } from "../reference-tables.ts";

const entry = fileURLToPath(new URL("../../packages/core/src/index.ts", import.meta.url));
const bench: Bench = JSON.parse(readFileSync(new URL("../../data/demo/bench.json", import.meta.url), "utf8"));

/** Core and its one package as a single script, as a page would load it. */
async function bundledCore(): Promise<string> {
  const built = (await build({
    configFile: false,
    logLevel: "error",
    build: { write: false, minify: false, lib: { entry, name: "ferrule", formats: ["iife"] } },
  })) as Rolldown.RolldownOutput[];
  return built[0]?.output[0].code ?? "";
}

it("resolves the demo bench without anything of Node's, to the answer it gives under Node", async () => {
  const code = await bundledCore();
  // A bare context has the language and nothing else: no process, no require, no console, no timers.
  const bare = createContext({ given: JSON.stringify({ bench, reference }) });
  const answered = runInContext(
    `${code}
    const { bench, reference } = JSON.parse(given);
    const found = ferrule.resolveBench(bench, ferrule.rules, reference);
    JSON.stringify({ surroundings: typeof process + typeof require, found });`,
    bare,
  );
  const { surroundings, found } = JSON.parse(answered);
  expect(surroundings).toBe("undefinedundefined");
  const here = resolveBench(bench, rules, reference);
  if (!here.ok) throw new Error("the demo bench is refused");
  const there: Resolution = found.resolution;
  expect(there.counts).toEqual(here.resolution.counts);
  expect(there.counts.clubs).toBeGreaterThan(0);
  expect(there.clubs.map(({ id, verdict }) => [id, verdict])).toEqual(
    here.resolution.clubs.map(({ id, verdict }) => [id, verdict]),
  );
});
