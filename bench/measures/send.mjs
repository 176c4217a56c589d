import { openBench } from "../../packages/server/dist/bench/bench.js";
import { openDatabase } from "../../packages/server/dist/store/database.js";
import { openTables } from "../../packages/server/dist/store/tables.js";
import { benchViewSchema } from "../../packages/server/dist/wire/replies.js";
import { median, timed } from "../measure.mjs";
import { seededBench } from "../seeded-bench.mjs";

export const sizes = [100, 1000, 10_000];
export const sizeText = (count) => `${count} parts`;
export const about =
  "The bytes of GET /api/bench after a change, against reading every thing, holding all to the schema and writing it again.";
const [rounds, warmUps] = [9, 3];

export function ready() {
  return (count) => {
    const tables = openTables(openDatabase(undefined));
    const bench = openBench(tables, () => ({}), seededBench(count, 1));
    const taken = Array.from({ length: warmUps + rounds }, (_, at) => {
      bench.setGoal({ skill: at % 2 ? "bond" : "screw" });
      const ours = timed(() => bench.text().bytes);
      const usual = timed(() => Buffer.from(JSON.stringify(benchViewSchema.parse(bench.view()))));
      if (ours.result.length !== usual.result.length) throw new Error("the two are not the same");
      return { ours: ours.ms, usual: usual.ms };
    }).slice(warmUps);
    const of = (name) => median(taken.map((each) => each[name]));
    return [
      {
        ...{ what: "the whole bench as it is sent", unit: "ms", against: "parse, schema, stringify" },
        ...{ ours: of("ours"), baseline: of("usual") },
      },
    ];
  };
}
