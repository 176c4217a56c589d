import { availableParallelism, cpus } from "node:os";
import { fileURLToPath } from "node:url";
import { dealJudge, judgeDeal, readListing, readyCatalogue, rules } from "../packages/core/dist/index.js";
import { buildApp } from "../packages/server/dist/app.js";
import { readDemo, readReference } from "../packages/server/dist/reference-files.js";
import { grownBench, seededListings } from "./seeded-batch.mjs";

const seed = 20261125;
const listingCount = Number(process.env.LISTINGS ?? 1000);
const partCount = 500;
const watchCount = 100;
/** Judged alone a listing takes so long that fewer are asked about. */
const aloneCount = Math.min(60, listingCount);
const pollMs = 200;

const dataFolder = fileURLToPath(new URL("../data", import.meta.url));
const reference = readReference(dataFolder);
const demo = readDemo(dataFolder);
const bench = grownBench(demo, partCount, seed);
const texts = seededListings(demo.models, listingCount, seed);

async function timed(run) {
  const [start, cpuStart] = [performance.now(), process.cpuUsage()];
  const result = await run();
  const { user, system } = process.cpuUsage(cpuStart);
  return { result, ms: performance.now() - start, cpuMs: (user + system) / 1000 };
}

/** The browser's way: the words are handed to the server, whose threads judge them; asked after until all are judged. */
async function throughTheServer() {
  const app = await buildApp({ reference, demo: { ...demo, ...bench } });
  try {
    for (const watch of watchesOf(watchCount)) await sent(app, "/api/watch", watch);
    return await timed(async () => {
      const { batch } = await sent(app, "/api/batches", { text: texts.join("\n"), format: "lines" });
      for (;;) {
        const { state, done } = (await app.inject(`/api/batches/${batch}?limit=1`)).json();
        if (state !== "running") return done;
        await new Promise((resolve) => setTimeout(resolve, pollMs));
      }
    });
  } finally {
    await app.close();
  }
}

async function sent(app, url, payload) {
  const reply = await app.inject({ method: "POST", url, payload });
  if (reply.statusCode >= 300) throw new Error(`${url}: ${reply.body}`);
  return reply.json();
}

function watchesOf(count) {
  const families = ["Quillon 1", "Quillon 2", "Tarnlock", "Brackwater"];
  return Array.from({ length: count }, (_, at) => ({
    kind: at % 2 ? "head" : "shaft",
    needs:
      at % 2 ? { "socket.family": families[at % 4] } : { "adapter.family": families[at % 4], suits: "wood" },
    text: `wanted part ${at + 1}`,
  }));
}

const through = await throughTheServer();
if (through.result !== listingCount) throw new Error(`only ${through.result} listings were judged`);

const world = {
  ...{ bench, rules, reference, catalogue: demo.models, evidence: demo.evidence, sightings: demo.sightings },
  ...{ costs: reference.firstCosts, today: new Date().toISOString().slice(0, 10) },
};
const ready = readyCatalogue(demo.models);
const read = await timed(() => texts.map((text) => readListing(text, ready)));
const one = await timed(() => {
  const judge = dealJudge(world);
  return read.result.map((listing) => judge({ listing }));
});
const alone = await timed(() =>
  read.result.slice(0, aloneCount).map((listing) => judgeDeal({ ...world, listing })),
);

const said = ({ verdict, mostToPay }) => `${verdict} ${mostToPay?.amountMinor ?? null}`;
alone.result.forEach((deal, at) => {
  if (said(deal) !== said(one.result[at])) throw new Error(`listing ${at + 1} is judged otherwise alone`);
});

/** Processor time of all threads a listing, so that other work on the machine does not count. */
const cost = (taken, count) => taken.cpuMs / count;
const reading = cost(read, listingCount);
const baseline = cost(alone, aloneCount) + reading;
const rows = [
  ["a batch through the server", cost(through, listingCount)],
  ["one after another for one bench", cost(one, listingCount) + reading],
  ["each judged alone (baseline)", baseline],
];
console.log(
  `${listingCount} listings against ${partCount} parts and ${watchCount} watched for, on ${cpus()[0].model}, ${availableParallelism()} at once, Node ${process.version}`,
);
console.log(
  `the batch took ${(through.ms / 1000).toFixed(1)} s by the clock, ${Math.round((listingCount * 1000) / through.ms)} listings a second; reading alone takes ${reading.toFixed(2)} ms of processor time a listing`,
);
console.table(
  rows.map(([way, ms]) => ({
    way,
    "ms of processor time a listing": ms.toFixed(2),
    "times as cheap as alone": (baseline / ms).toFixed(2),
  })),
);
