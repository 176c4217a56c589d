import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";
import { swappedCorpus } from "./swapped-corpus.mjs";

const typed = async (path) =>
  (await runnerImport(fileURLToPath(new URL(`../test/listings/${path}.ts`, import.meta.url)))).module;

/** The annotated listings for tuning, never those held out, with other names among so many models; and how readings are scored. */
export async function tuningCorpus() {
  const { readCatalogue, readCorpus, tuningNames } = await typed("corpus");
  const { scoreReadings } = await typed("score");
  const catalogue = readCatalogue();
  const corpus = tuningNames.flatMap((name) => readCorpus(name));
  return {
    among: (count) => swappedCorpus({ catalogue, corpus, count, seed: 20261125 }),
    f1: (listings, readings) =>
      scoreReadings(readings.map((got, at) => ({ expected: listings[at].expected, got }))).overall.f1,
  };
}
