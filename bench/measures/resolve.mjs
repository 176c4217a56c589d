import { readFileSync } from "node:fs";
import { clubsForHead, readyBench, rules } from "../../packages/core/dist/index.js";
import { median, timed } from "../measure.mjs";
import { nestedLoop } from "../nested-loop.mjs";
import { listedHead, seededBench } from "../seeded-bench.mjs";
import { sqlJoin } from "../sql-join.mjs";

export const sizes = [100, 1000, 10_000];
export const sizeText = (count) => `${count} parts`;
export const about = "One listed head against the bench, at skill screw; the three answers have to be equal.";
const [rounds, warmUps] = [9, 5];

const table = (name) =>
  JSON.parse(readFileSync(new URL(`../../data/reference/${name}.json`, import.meta.url), "utf8"));

export function ready() {
  const reference = { typical: table("typical"), work: table("work"), cautions: table("cautions") };
  const open = (count, seed) => {
    const built = readyBench(seededBench(count, seed), rules, reference);
    if (!built.ok) throw new Error(JSON.stringify(built.refusals));
    return { ready: built.ready, sql: sqlJoin(built.ready.graph) };
  };
  return (count) => {
    const other = open(count, 7);
    for (let seed = 100; seed < 100 + warmUps; seed += 1) round(other, seed);
    const own = open(count, 20260531);
    const taken = Array.from({ length: rounds }, (_, at) => round(own, at + 2));
    const of = (name) => median(taken.map((each) => each[name]));
    return [
      {
        what: "shafts for a listed head",
        unit: "ms",
        against: "a nested loop",
        ours: of("ours"),
        baseline: of("loop"),
      },
      {
        what: "shafts for a listed head",
        unit: "ms",
        against: "an SQL join",
        ours: of("ours"),
        baseline: of("join"),
      },
    ];
  };
}

const ids = (list) =>
  list
    .map(({ id }) => id)
    .sort()
    .join(" ");

function round({ ready: bench, sql }, seed) {
  const head = { ...listedHead(seed), id: `listed ${seed}` };
  const ours = timed(() => clubsForHead(bench, head));
  const loop = timed(() => nestedLoop(bench, head));
  const join = timed(() => sql.answer(head));
  const found = ids(ours.result.map(({ shaft }) => shaft));
  if (found !== ids(loop.result)) throw new Error(`the nested loop disagrees on head ${seed}`);
  if (found !== ids(join.result)) throw new Error(`the SQL join disagrees on head ${seed}`);
  return { ours: ours.ms, loop: loop.ms, join: join.ms };
}
