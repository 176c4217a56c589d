import type { Bench } from "../bench/bench.ts";
import { benchTarget } from "../transfer/bench-target.ts";
import type { ImportTarget } from "../transfer/import-text.ts";
import { entriesSheet, evidenceSheet, modelsSheet, sightingsSheet } from "../transfer/list-files.ts";
import { listTarget } from "../transfer/list-target.ts";
import { writeCsv, writeListCsv } from "../transfer/write-csv.ts";

/** The bench or one of the lists about it, as a file. */
export interface BenchList {
  /** As the export writes it. */
  readonly json: (bench: Bench) => object;
  readonly csv: (bench: Bench) => string;
  /** Nothing where it can only be written. */
  readonly target?: (bench: Bench) => ImportTarget;
}

export const listWords = ["bench", "catalogue", "evidence", "books", "sightings"] as const;
export type ListWord = (typeof listWords)[number];

export const benchLists: Readonly<Record<ListWord, BenchList>> = {
  bench: {
    json: (bench) => {
      const { parts, joints, claims, goal } = bench.view();
      return { parts, joints, claims, goal };
    },
    csv: (bench) => writeCsv(bench.view()),
    target: benchTarget,
  },
  catalogue: {
    json: ({ models }) => ({ models: models.all() }),
    csv: ({ models }) => writeListCsv(models.all(), modelsSheet.columns, modelsSheet.always),
    target: ({ models }) => listTarget(models, modelsSheet),
  },
  evidence: {
    json: ({ evidence }) => ({ evidence: evidence.all() }),
    csv: ({ evidence }) => writeListCsv(evidence.all(), evidenceSheet.columns, evidenceSheet.always),
    target: ({ evidence }) => listTarget(evidence, evidenceSheet),
  },
  books: {
    json: ({ entries }) => ({ entries: entries.all() }),
    csv: ({ entries }) => writeListCsv(entries.all(), entriesSheet.columns, entriesSheet.always),
    target: ({ entries }) => listTarget(entries, entriesSheet),
  },
  sightings: {
    json: ({ sightings }) => ({ sightings: sightings.all() }),
    csv: ({ sightings }) =>
      writeListCsv(sightings.all().map(sightingsSheet.rowOf), sightingsSheet.columns, sightingsSheet.always),
  },
};

const things: Readonly<Record<ListWord, string>> = {
  bench: "the parts, joints, claims and the goal",
  catalogue: "the models that the reader knows",
  evidence: "the prices",
  books: "the lines of the books",
  sightings: "the log of listings",
};

/** For the help: which word stands for what. */
export function listHelp(words: readonly ListWord[]): string {
  return words.map((word) => `${word} (${things[word]})`).join(", ");
}
