import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { createContext, runInContext } from "node:vm";
import {
  type Bench,
  type Deal,
  judgeDeal,
  type Listing,
  type Resolution,
  readListing,
  resolveBench,
  rules,
} from "@ferrule/core";
import { build, type Rolldown } from "vite";
import { beforeAll, expect, it } from "vitest";
import { reference } from "../reference-tables.ts";

const entry = fileURLToPath(new URL("../../packages/core/src/index.ts", import.meta.url));
const data = (path: string) => readFileSync(new URL(`../../data/${path}`, import.meta.url), "utf8");
const bench: Bench = JSON.parse(data("demo/bench.json"));

/** Core and its packages as a single script, as a page would load it. */
async function bundledCore(): Promise<string> {
  const built = (await build({
    configFile: false,
    logLevel: "error",
    build: { write: false, minify: false, lib: { entry, name: "ferrule", formats: ["iife"] } },
  })) as Rolldown.RolldownOutput[];
  return built[0]?.output[0].code ?? "";
}

let core = "";
beforeAll(async () => {
  core = await bundledCore();
});

/** Runs a script behind core in a bare context: it has the language and nothing else, no process, no require, no console, no timers. */
function runBare(given: object, script: string) {
  const bare = createContext({ given: JSON.stringify(given) });
  return JSON.parse(runInContext(`${core}\n${script}`, bare));
}

it("resolves the demo bench without anything of Node's, to the answer it gives under Node", () => {
  const { surroundings, found } = runBare(
    { bench, reference },
    `const { bench, reference } = JSON.parse(given);
    const found = ferrule.resolveBench(bench, ferrule.rules, reference);
    JSON.stringify({ surroundings: typeof process + typeof require, found });`,
  );
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

it("reads and judges a listing there as it does under Node, a slip of spelling among its words", () => {
  const text =
    "Northmor Ombrel driver head only, RH 10,5°, small sky mark, no cracks. 45 € VB, shipping 4,50";
  const known = {
    catalogue: JSON.parse(data("demo/catalogue.json")),
    evidence: JSON.parse(data("demo/evidence.json")),
    sightings: JSON.parse(data("demo/sightings.json")),
    costs: JSON.parse(data("reference/first-costs.json")),
    today: "2026-11-25",
    bench,
    reference,
  };
  const there: { listing: Listing; deal: Deal } = runBare(
    { text, known },
    `const { text, known } = JSON.parse(given);
    const listing = ferrule.readListing(text, known.catalogue);
    const deal = ferrule.judgeDeal({ ...known, listing, rules: ferrule.rules });
    JSON.stringify({ listing, deal });`,
  );
  const listing = readListing(text, known.catalogue);
  expect(listing.items[0]?.maker).toBe("Northmoor");
  expect(there.listing).toEqual(listing);
  expect(there.deal.mostToPay?.amountMinor).toBeGreaterThan(0);
  expect(there.deal).toEqual(JSON.parse(JSON.stringify(judgeDeal({ ...known, listing, rules }))));
});
