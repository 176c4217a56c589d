import { readFileSync } from "node:fs";
import { judgeRoute } from "../packages/core/dist/graph/judge-route.js";
import { contextOf, routeOf } from "../packages/core/dist/graph/route.js";
import { clubsForHead, readyBench, rules } from "../packages/core/dist/index.js";
import { openOptions } from "../packages/core/dist/resolve/pair-options.js";
import { listedHead, seededBench } from "./seeded-bench.mjs";
import { sqlJoin } from "./sql-join.mjs";

const table = (name) =>
  JSON.parse(readFileSync(new URL(`../data/reference/${name}.json`, import.meta.url), "utf8"));
const reference = { typical: table("typical"), work: table("work"), cautions: table("cautions") };
const rounds = 9;

/** Every shaft looked at with every rule, one after the other: what one writes before thinking of an index. */
function nestedLoop({ graph }, head) {
  const musts = graph.rules.filter(({ rule }) => rule.strength === "must");
  return graph.at.shaft.filter((shaft) => {
    const options = openOptions(head, shaft, graph);
    const refused = options.every(({ chosen, joined, joinSteps }) =>
      judgeRoute(musts, contextOf(chosen, graph), joined, joinSteps, graph.work).some(
        ({ outcome }) => outcome.verdict === "does-not-fit",
      ),
    );
    if (refused) return false;
    const [adapter, grip] = ["tip", "butt"].map((port) =>
      graph.parts.get(graph.occupancy.at(shaft.id, port)?.other),
    );
    if (!adapter || !grip) return false;
    const { chosen, joined, steps } = routeOf({ head, adapter, shaft, grip }, graph.occupancy);
    return judgeRoute(musts, contextOf(chosen, graph), joined, steps, graph.work).every(
      ({ outcome }) => outcome.verdict !== "does-not-fit",
    );
  });
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}

function timed(run) {
  const start = performance.now();
  const result = run();
  return { ms: performance.now() - start, result };
}

/** Three ways to answer the same question, turn about, so that a busy machine slows all alike. */
function measure(count) {
  const bench = seededBench(count, 20260531);
  const built = timed(() => readyBench(bench, rules, reference));
  if (!built.result.ok) throw new Error(JSON.stringify(built.result.refusals));
  const { ready } = built.result;
  const sql = sqlJoin(ready.graph);
  const ours = [];
  const first = [];
  const loops = [];
  const joins = [];
  let clubs = 0;
  for (let round = 0; round < rounds; round += 1) {
    const head = { ...listedHead(round + 2), id: `listed ${round}` };
    const cold = timed(() => clubsForHead(ready, head));
    const warm = timed(() => clubsForHead(ready, { ...head, id: `listed again ${round}` }));
    const loop = timed(() => nestedLoop(ready, head));
    const joined = timed(() => sql.answer(head));
    const ids = (list) =>
      list
        .map(({ id }) => id)
        .sort()
        .join(" ");
    const found = ids(cold.result.map(({ shaft }) => shaft));
    if (found !== ids(loop.result)) throw new Error(`the nested loop disagrees on ${count} parts`);
    if (found !== ids(joined.result)) throw new Error(`the SQL join disagrees on ${count} parts`);
    first.push(cold.ms);
    ours.push(warm.ms);
    loops.push(loop.ms);
    joins.push(joined.ms);
    clubs += cold.result.length;
  }
  return {
    count,
    buildMs: built.ms,
    clubs: clubs / rounds,
    firstMs: median(first),
    ms: median(ours),
    loopMs: median(loops),
    sqlMs: median(joins),
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
