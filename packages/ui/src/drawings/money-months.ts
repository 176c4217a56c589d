import type { Entry } from "@ferrule/core";
import { convertedEntries } from "@ferrule/core";

/** What had come in and gone out by the end of a month, and what the things still here had cost, in whole minor units. */
export interface MoneyMonth {
  /** As "2026-11". */
  readonly month: string;
  readonly inMinor: number;
  /** Negative, as in the books. */
  readonly outMinor: number;
  readonly netMinor: number;
  readonly stockMinor: number;
}

interface Settings {
  readonly currency: string;
  readonly rates: Readonly<Record<string, number>>;
}

/**
 * The books added up month by month, every month from the first to the last. Stock is at cost: what was paid for a line of parts,
 * shared equally among them, until each is sold. A line in a currency that has no rate is left out, as in the summary.
 */
export function moneyMonths(entries: readonly Entry[], settings: Settings): readonly MoneyMonth[] {
  const lines = convertedEntries(entries, settings)
    .converted.map((line) => ({ ...line, month: line.entry.on.slice(0, 7) }))
    .toSorted((one, other) => one.entry.on.localeCompare(other.entry.on));
  const [first, last] = [lines[0]?.month, lines.at(-1)?.month];
  if (first === undefined || last === undefined) return [];
  const costs = new Map<string, number>();
  let [inMinor, outMinor] = [0, 0];
  return monthsBetween(first, last).map((month) => {
    for (const { entry, amountMinor } of lines.filter((line) => line.month === month)) {
      inMinor += Math.max(0, amountMinor);
      outMinor += Math.min(0, amountMinor);
      noteStock(costs, entry, amountMinor);
    }
    const stockMinor = Math.round([...costs.values()].reduce((sum, cost) => sum + cost, 0));
    return { month, inMinor, outMinor, netMinor: inMinor + outMinor, stockMinor };
  });
}

/** A purchase adds its parts at cost; a sale takes its parts away. Shares stay unrounded until they are added up. */
function noteStock(costs: Map<string, number>, { type, parts = [] }: Entry, amountMinor: number): void {
  for (const part of parts) {
    if (type === "buy") costs.set(part, (costs.get(part) ?? 0) - amountMinor / parts.length);
    if (type === "sale") costs.delete(part);
  }
}

function monthsBetween(first: string, last: string): readonly string[] {
  const index = (month: string) => Number(month.slice(0, 4)) * 12 + Number(month.slice(5)) - 1;
  return Array.from({ length: index(last) - index(first) + 1 }, (_, at) => {
    const each = index(first) + at;
    return `${Math.floor(each / 12)}-${String((each % 12) + 1).padStart(2, "0")}`;
  });
}
