import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";
import { readListing, readyCatalogue } from "../packages/core/dist/index.js";
import { fuzzyModels } from "./fuzzy-models.mjs";
import { median, timedCpu as timed } from "./measure.mjs";
import { regexReader } from "./regex-reader.mjs";
import { swappedCorpus } from "./swapped-corpus.mjs";

const rounds = 7;
/** Rounds before those that count, so that the compiler has seen both readers. */
const warmUps = 2;
/** Plain fuzzy search takes so long that it is asked about fewer listings. */
const fuzzyListings = 30;

const typed = async (path) =>
  (await runnerImport(fileURLToPath(new URL(`../test/listings/${path}.ts`, import.meta.url)))).module;
const { readCatalogue, readCorpus } = await typed("corpus");
const { scoreReadings } = await typed("score");

const { models, listings } = swappedCorpus({
  catalogue: readCatalogue(),
  corpus: readCorpus("tuning"),
  count: 5000,
  seed: 20261125,
});
const ready = timed(() => readyCatalogue(models));
const readers = {
  readListing: (text) => readListing(text, ready.result),
  "a pattern a field": regexReader(models),
};

/** All readers over all listings, turn about, so that a busy machine slows all alike. */
function round(at) {
  // Another blank at the end, so that nothing that was kept from the round before can answer.
  const texts = listings.map(({ text }) => text + " ".repeat(at));
  return Object.fromEntries(
    Object.entries(readers).map(([name, read]) => [name, timed(() => texts.map(read))]),
  );
}

const taken = Array.from({ length: warmUps + rounds }, (_, at) => round(at)).slice(warmUps);
const f1 = (readings) =>
  scoreReadings(readings.map((got, index) => ({ expected: listings[index].expected, got }))).overall.f1;
const rows = Object.keys(readers).map((name) => ({
  name,
  ms: median(taken.map((each) => each[name].ms)),
  f1: f1(taken[0][name].result),
}));
const baseline = rows.at(-1);
console.log(
  `${listings.length} listings against ${models.length} models, processor time, median of ${rounds} rounds; catalogue made ready in ${ready.ms.toFixed(0)} ms`,
);
console.table(
  rows.map(({ name, ms, f1: score }) => ({
    reader: name,
    "listings a second of one core": Math.round((listings.length * 1000) / ms),
    "times as fast as patterns": (baseline.ms / ms).toFixed(2),
    "F1 of all facts": score.toFixed(3),
  })),
);

const fuzzyModel = fuzzyModels(models);
// Listings of one thing whose model is known, so that there is one right answer.
const asked = listings
  .filter(({ expected: { items } }) => items.length === 1 && items[0].modelId !== null)
  .slice(0, fuzzyListings);
const right = (found) => found.filter((id, at) => id === asked[at].expected.items[0].modelId).length;
const ours = timed(() => asked.map(({ text }) => readers.readListing(text).items[0]?.modelId ?? null));
const fuzzy = timed(() => asked.map(({ text }) => fuzzyModel(text)));
console.log(`finding the model in ${asked.length} of them that offer one known thing`);
console.table(
  [
    ["readListing, all facts with it", ours],
    ["Fuse.js over the whole catalogue", fuzzy],
  ].map(([name, { ms, result }]) => ({
    by: name,
    "ms a listing": (ms / asked.length).toFixed(2),
    "times as fast as Fuse.js": (fuzzy.ms / ms).toFixed(1),
    "right models": `${right(result)} of ${asked.length}`,
  })),
);
console.log(
  `the two agree on ${ours.result.filter((id, at) => id === fuzzy.result[at]).length} of ${asked.length}`,
);
