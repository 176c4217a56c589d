import { readFileSync } from "node:fs";
import { clubsForHead, readyBench, rules } from "../packages/core/dist/index.js";
import { median, timed } from "./measure.mjs";
import { nestedLoop } from "./nested-loop.mjs";
import { listedHead, seededBench } from "./seeded-bench.mjs";
import { sqlJoin } from "./sql-join.mjs";

const table = (name) =>
  JSON.parse(readFileSync(new URL(`../data/reference/${name}.json`, import.meta.url), "utf8"));
const reference = { typical: table("typical"), work: table("work"), cautions: table("cautions") };
const rounds = 9;
/** Rounds before those that count, so that the compiler has seen all three ways. */
const warmUps = 5;

function readyOf(count, seed) {
  const built = timed(() => readyBench(seededBench(count, seed), rules, reference));
  if (!built.result.ok) throw new Error(JSON.stringify(built.result.refusals));
  const { ready } = built.result;
  return { ready, sql: sqlJoin(ready.graph), ms: built.ms };
}

const ids = (list) =>
  list
    .map(({ id }) => id)
    .sort()
    .join(" ");

/** One head asked about in three ways, turn about, so that a busy machine slows all alike. */
function round({ ready, sql }, seed) {
  const head = { ...listedHead(seed), id: `listed ${seed}` };
  const first = timed(() => clubsForHead(ready, head));
  const again = timed(() => clubsForHead(ready, { ...head, id: `listed again ${seed}` }));
  const loop = timed(() => nestedLoop(ready, head));
  const join = timed(() => sql.answer(head));
  const found = ids(first.result.map(({ shaft }) => shaft));
  if (found !== ids(loop.result)) throw new Error(`the nested loop disagrees on head ${seed}`);
  if (found !== ids(join.result)) throw new Error(`the SQL join disagrees on head ${seed}`);
  return { clubs: first.result.length, first: first.ms, again: again.ms, loop: loop.ms, join: join.ms };
}

/** The median of the rounds; the compiler is warmed on another bench, so that no answer is known beforehand. */
function measure(count) {
  const other = readyOf(count, 7);
  for (let seed = 100; seed < 100 + warmUps; seed += 1) round(other, seed);
  const own = readyOf(count, 20260531);
  const taken = Array.from({ length: rounds }, (_, index) => round(own, index + 2));
  const of = (name) => median(taken.map((each) => each[name]));
  const clubs = taken.reduce((sum, each) => sum + each.clubs, 0) / rounds;
  return {
    count,
    buildMs: own.ms,
    clubs,
    firstMs: of("first"),
    ms: of("again"),
    loopMs: of("loop"),
    sqlMs: of("join"),
  };
}

const rows = [100, 1000, 10000].map(measure);
console.log(
  `one listed head against a seeded bench, skill "screw", median of ${rounds} heads; the three answers are compared and equal`,
);
console.table(
  rows.map((row) => ({
    parts: row.count,
    "clubs found": row.clubs.toFixed(1),
    "index built, ms": row.buildMs.toFixed(1),
    "head of a new class, ms": row.firstMs.toFixed(3),
    "head of a known class, ms": row.ms.toFixed(3),
    "nested loop, ms": row.loopMs.toFixed(2),
    "times faster than the loop": (row.loopMs / row.firstMs).toFixed(1),
    "SQL join, ms": row.sqlMs.toFixed(3),
    "times faster than SQL": (row.sqlMs / row.firstMs).toFixed(2),
  })),
);
