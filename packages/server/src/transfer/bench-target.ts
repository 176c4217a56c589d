import type { Bench } from "../bench/bench.ts";
import { benchSheet } from "./bench-sheet.ts";
import { checkEntries } from "./check-entries.ts";
import type { ImportTarget } from "./import-text.ts";
import { readCsv } from "./read-csv.ts";
import { benchShape, readJson } from "./read-json.ts";

/** Imports onto the bench. */
export function benchTarget(bench: Bench): ImportTarget {
  return {
    read: (format, text) => (format === "csv" ? readCsv(text, benchSheet) : readJson(text, benchShape)),
    check: (entries, existing) => {
      const { good, taken, refused } = checkEntries(bench.view(), entries, existing);
      return { taken, refused, takeIn: () => bench.takeIn(good) };
    },
  };
}
