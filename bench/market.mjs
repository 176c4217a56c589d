import { appendFileSync, existsSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { loadHighsSolver } from "../packages/server/dist/plan/highs-solver.js";
import { ceilingOf, ceilingWithoutLuck } from "./market/ceiling.mjs";
import { toolPolicy } from "./market/policies/tool.mjs";
import { meanOf, ratioOf } from "./market/statistics.mjs";
import { simplePolicy, tunedRules } from "./market/tune.mjs";
import { catalogue, costs, reference, yearOf } from "./market/world.mjs";
import { livedYear } from "./market/year.mjs";

const seeds = (process.env.SEEDS ?? Array.from({ length: 20 }, (_, at) => at + 1).join(" "))
  .split(" ")
  .map(Number);
/** Years that have been lived are kept, one a line, so that a run that was broken off goes on where it was. */
const file = process.env.STATE ?? join(tmpdir(), "ferrule-market.jsonl");
const kept = new Map();
if (existsSync(file))
  for (const line of readFileSync(file, "utf8").split("\n").filter(Boolean)) {
    const { key, value } = JSON.parse(line);
    kept.set(key, value);
  }

async function remembered(key, make) {
  if (!kept.has(key)) {
    const value = await make();
    kept.set(key, value);
    appendFileSync(file, `${JSON.stringify({ key, value })}\n`);
  }
  process.stderr.write(`${key}: ${JSON.stringify(kept.get(key))}\n`);
  return kept.get(key);
}

const solver = await loadHighsSolver();
const tuned = await remembered("tuned", () => tunedRules());
const names = [...Object.keys(tuned), "tool"];
const policyOf = (name, seed) =>
  name === "tool"
    ? toolPolicy({ seed, catalogue, reference, costs, solver })
    : simplePolicy(name, tuned[name]);

const lived = Object.fromEntries(names.map((name) => [name, []]));
const ceilings = [];
const withoutLuck = [];
for (const seed of seeds) {
  const year = yearOf(seed);
  ceilings.push((await remembered(`ceiling ${seed}`, () => ceilingOf(year, solver))).boundMinor);
  const plain = await remembered(`ceiling without luck ${seed}`, () => ceilingWithoutLuck(year, solver));
  withoutLuck.push(plain.netMinor);
  for (const name of names)
    lived[name].push(await remembered(`${name} ${seed}`, () => livedYear(policyOf(name, seed), year)));
}

const net = (name) => lived[name].map(({ netMinor }) => netMinor);
const total = (name) => net(name).reduce((sum, each) => sum + each, 0);
const best = Object.keys(tuned).reduce((one, other) => (total(other) > total(one) ? other : one));
const shown = ({ mean, low, high }, digits = 0) =>
  `${mean.toFixed(digits)} (${low.toFixed(digits)} to ${high.toFixed(digits)})`;
const euros = (values) => shown(meanOf(values.map((each) => each / 100)));

process.stdout.write(
  `A year of ${seeds.length} made-up markets; means with 95 % intervals; money in euros after own hours at ${costs.hourValueMinor / 100} an hour\n` +
    `ceiling by hindsight ${euros(ceilings)}; with all listings known beforehand but not the luck of sales ${euros(withoutLuck)}\n`,
);
for (const name of names) {
  const field = (key) => lived[name].map((each) => each[key]);
  const hours = field("hours");
  process.stdout.write(
    `${name}${name === best ? " (the best simple rule)" : ""}\n` +
      `  net ${euros(net(name))}; before own hours ${euros(field("cashNetMinor"))}; hours ${shown(meanOf(hours), 1)}; ` +
      `an hour brings ${shown(
        ratioOf(
          field("cashNetMinor").map((each) => each / 100),
          hours,
        ),
        1,
      )}\n` +
      `  stock left at cost ${euros(field("stockMinor"))}; bought ${shown(meanOf(field("bought")), 1)}, built ${shown(meanOf(field("built")), 1)}, sold as they were ${shown(meanOf(field("soldLoose")), 1)}\n` +
      `  of the ceiling ${shown(ratioOf(net(name), ceilings), 3)}; of that without luck ${shown(ratioOf(net(name), withoutLuck), 3)}; of the best simple rule ${shown(ratioOf(net(name), net(best)), 2)}\n`,
  );
}
