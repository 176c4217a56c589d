import type { HistoryTable } from "./history.ts";

/** How much history is kept: whichever of the three is least. The newest change is kept whatever its size. */
export const keptChanges = 10_000;
export const keptDays = 365;
const keptThings = 200_000;
/** How often it is looked at: rarely, so that a write does not wait for it. */
const everyChanges = 100;
const manyThings = 1000;
const dayMs = 86_400_000;

/** Forgets what is too old or too much, now and then, after a change has been written. */
export function forgetOld(
  history: HistoryTable,
  number: number,
  things: number,
  nowMs: number,
  thingsMost = keptThings,
): void {
  if (number % everyChanges !== 0 && things < manyThings) return;
  history.forgetTo(
    Math.min(
      number - 1,
      Math.max(number - keptChanges, tooMany(history, thingsMost), tooOld(history, nowMs)),
    ),
  );
}

/** The newest change before which there are too many things. */
function tooMany(history: HistoryTable, most: number): number {
  if (history.things() <= most) return 0;
  let sum = 0;
  for (const { number, things } of history.list({ limit: keptChanges })) {
    sum += things;
    if (sum > most) return number;
  }
  return 0;
}

function tooOld(history: HistoryTable, nowMs: number): number {
  const since = new Date(nowMs - keptDays * dayMs).toISOString();
  const first = history.oldest();
  if (first === undefined || first.at >= since) return 0;
  return history.list({ limit: keptChanges }).find(({ at }) => at < since)?.number ?? 0;
}
