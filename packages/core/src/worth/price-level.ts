import { type AdjustmentName, adjustmentOf } from "./adjusted-price.ts";
import { type Closeness, closenessOf, modelWords } from "./closeness.ts";
import type { Adjustments } from "./cost-settings.ts";
import type { Evidence, Subject } from "./evidence.ts";
import type { WeighedRow } from "./predict-level.ts";
import { recencyWeight } from "./recency.ts";
import { levelSpread, unknownTypeSpread } from "./resale-prior.ts";

/** A noted price with its amount in whole minor units of the bench's currency. */
export interface ConvertedPrice {
  readonly row: Evidence;
  readonly amountMinor: number;
}

/** A price that bears on the thing asked about: how close it is, and the logarithm of what it comes to. */
export interface PriceLevel extends WeighedRow {
  readonly row: Evidence;
  readonly closeness: Closeness;
  readonly names: readonly AdjustmentName[];
}

const isOwn = (closeness: Closeness) =>
  closeness === "same-model-and-condition" || closeness === "same-model";

/** Prices of one other model share a level; a price of no known model stands alone. */
function groupOf(row: Evidence, closeness: Closeness): string | null {
  if (isOwn(closeness)) return null;
  const model = row.modelId ?? modelWords(row);
  return model === undefined
    ? `price ${row.id}`
    : JSON.stringify([model, row.hand, row.adapter, row.adapterFamily, row.clubNumber, closeness]);
}

function spreadOf(subject: Subject, row: Evidence, closeness: Closeness): number {
  const typeMatters = subject.kind === "head" || subject.kind === "club";
  const typeUnknown = subject.clubType === undefined || row.clubType === undefined;
  const unknown = !isOwn(closeness) && typeMatters && typeUnknown ? unknownTypeSpread : 0;
  return Math.hypot(levelSpread[closeness], unknown);
}

/** What one noted price says of the thing; null where it says nothing. */
export function priceLevel(
  { row, amountMinor }: ConvertedPrice,
  subject: Subject,
  adjustments: Adjustments,
  today: string,
): PriceLevel | null {
  const closeness = amountMinor > 0 ? closenessOf(subject, row) : null;
  if (closeness === null) return null;
  const { logFactor, weight, names } = adjustmentOf(row, subject, adjustments, today);
  return {
    id: row.id,
    row,
    closeness,
    names,
    value: Math.log(amountMinor) + logFactor,
    weight: weight * recencyWeight(row.on, today),
    group: groupOf(row, closeness),
    levelSpread: spreadOf(subject, row, closeness),
  };
}
