// Prints how many bytes stay of a seeded bench of so many parts: `node --expose-gc bench/memory-of.mjs index|parse COUNT`.
import { readFileSync } from "node:fs";
import { clubsForHead, readyBench, rules } from "../packages/core/dist/index.js";
import { listedHead, seededBench } from "./seeded-bench.mjs";

const [way, count] = process.argv.slice(2);
const table = (name) =>
  JSON.parse(readFileSync(new URL(`../data/reference/${name}.json`, import.meta.url), "utf8"));
const reference = { typical: table("typical"), work: table("work"), cautions: table("cautions") };

const ways = {
  parse: (text) => JSON.parse(text),
  index: (text) => {
    const built = readyBench(JSON.parse(text), rules, reference);
    if (!built.ok) throw new Error(JSON.stringify(built.refusals));
    for (let seed = 1; seed <= 20; seed += 1) clubsForHead(built.ready, listedHead(seed));
    return built.ready;
  },
};

// Once on another bench, so that what is compiled and kept for all benches does not count.
ways[way](JSON.stringify(seededBench(100, 7)));
const text = JSON.stringify(seededBench(Number(count), 1));
const used = () => {
  globalThis.gc();
  globalThis.gc();
  return process.memoryUsage().heapUsed;
};
const before = used();
const kept = ways[way](text);
process.stdout.write(`${used() - before}\n`);
if (kept === undefined || text === "") throw new Error("nothing was kept");
