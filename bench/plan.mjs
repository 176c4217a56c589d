import { cpus } from "node:os";
import { solvePlan } from "../packages/core/dist/index.js";
import { greedyDraft } from "../packages/core/dist/plan/greedy-plan.js";
import { planProgramme } from "../packages/core/dist/plan/plan-programme.js";
import { readyPacking } from "../packages/core/dist/plan/ready-packing.js";
import { loadHighsSolver } from "../packages/server/dist/plan/highs-solver.js";
import { plainModel } from "./plain-plan.mjs";
import { seededPlan } from "./seeded-plan.mjs";

const cases = [
  {
    name: "300 heads, 300 shafts, 100 adapters, 50 listings",
    sizes: [300, 300, 100, 50],
    seconds: 5,
    aim: 0.005,
  },
  {
    name: "1,000 heads, 1,000 shafts, 400 adapters, 300 listings",
    sizes: [1000, 1000, 400, 300],
    seconds: 30,
    aim: 0.01,
  },
];
const only = process.argv[2] === "--small" ? cases.slice(0, 1) : cases;
const seeds = (process.env.SEEDS ?? "1 2 3").split(" ").map(Number);

const highs = await loadHighsSolver();

async function solvePlain(model, seconds) {
  const plain = plainModel(model);
  if (plain.model === null) return { columns: plain.columns, net: null, bound: null, seconds: null };
  const packing = readyPacking(plain.model);
  const all = packing.uses.map((_, place) => place);
  const { programme } = planProgramme(packing, all, true);
  const start = performance.now();
  const { objective, bound } = await highs(programme, { seconds, relativeGap: 0.0001 });
  return { columns: plain.columns, net: objective, bound, seconds: (performance.now() - start) / 1000 };
}

async function hindsight(model) {
  const packing = readyPacking(model);
  const all = packing.uses.map((_, place) => place);
  return (await highs(planProgramme(packing, all, false).programme, { seconds: 300, relativeGap: 0 }))
    .objective;
}

const euros = (minor) => (minor === null ? "none" : `${Math.round(minor / 100).toLocaleString("en")}`);
const percent = (part) => `${(100 * part).toFixed(3)} %`;
const secondsText = (seconds) => `${seconds.toFixed(1)} s`;

function plainText({ net, seconds }, share) {
  if (seconds === null) return "too many to build";
  return net === null
    ? `no plan after ${secondsText(seconds)}`
    : `${share(net)} below the bound after ${secondsText(seconds)}`;
}

function cpuSeconds() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

process.stdout.write(`\nPlans over the whole bench, on ${cpus()[0].model}, Node ${process.version}\n`);
for (const { name, sizes, seconds, aim } of only) {
  process.stdout.write(`\n${name}; aim: ${percent(aim)} proven in ${seconds} s\n`);
  for (const seed of seeds) {
    const [heads, shafts, adapters, listings] = sizes;
    const model = seededPlan({ heads, shafts, adapters, listings }, seed);
    const best = await hindsight(model);
    const greedy = greedyDraft(readyPacking(model)).net;
    let near = null;
    const [start, cpuStart] = [performance.now(), cpuSeconds()];
    const solution = await solvePlan(model, highs, {
      seconds,
      relativeGap: 0.0002,
      now: () => performance.now(),
      onProgress: ({ gap }) => {
        if (gap <= aim) near ??= { wall: (performance.now() - start) / 1000, cpu: cpuSeconds() - cpuStart };
      },
    });
    const [wall, cpu] = [(performance.now() - start) / 1000, cpuSeconds() - cpuStart];
    const plain = await solvePlain(model, seconds);
    const share = (net) => percent((best - net) / best);
    process.stdout.write(
      `  seed ${seed}: ${model.uses.length.toLocaleString("en")} uses of ${model.resources.length} sorts of parts; hindsight bound ${euros(best)}\n` +
        `    plan    ${euros(solution.netMinor)}  bound ${euros(solution.boundMinor)}  gap ${percent(solution.gap)}  ${secondsText(wall)} (${secondsText(cpu)} of one core), by ${solution.method}; ` +
        `within the aim ${near === null ? "never" : `after ${secondsText(near.wall)} (${secondsText(near.cpu)})`}\n` +
        `    greedy  ${euros(greedy)}  ${share(greedy)} below the bound\n` +
        `    plain   ${euros(plain.net)}  ${plain.columns.toLocaleString("en")} columns  ${plainText(plain, share)}\n`,
    );
    if (solution.netMinor < greedy) throw new Error("the plan is worse than greedy");
    if (solution.boundMinor < solution.netMinor) throw new Error("the bound is below the plan");
  }
}
