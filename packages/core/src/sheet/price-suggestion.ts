import type { Money } from "../parts/part.ts";
import type { Evidence } from "../worth/evidence.ts";
import type { EvidenceWeight, Resale } from "../worth/resale.ts";

/** One noted price that a suggestion rests on. */
export interface PriceBasis {
  readonly evidence: string;
  readonly on: string;
  readonly what: Evidence["what"];
  readonly price: Money;
  readonly closeness: EvidenceWeight["closeness"];
  readonly share: number;
}

/** What to ask, as far as noted prices say it. */
export type PriceSuggestion =
  | {
      readonly known: true;
      readonly suggested: Money;
      readonly lowMinor: number;
      readonly highMinor: number;
      /** How many equally good prices it amounts to. */
      readonly effectiveCount: number;
      /** The prices that weigh most, and how many there are in all. */
      readonly basis: readonly PriceBasis[];
      readonly basisCount: number;
    }
  | { readonly known: false; readonly question: string };

const basisShown = 6;

/** The middle of what such a thing went for; nothing is suggested where no price is known. */
export function priceSuggestion(resale: Resale, evidence: readonly Evidence[]): PriceSuggestion {
  if (!resale.known) return resale;
  const { currency, valueMinor, lowMinor, highMinor, effectiveCount, basis } = resale;
  const rows = new Map(evidence.map((row) => [row.id, row]));
  const weightiest = basis.toSorted((one, other) => other.share - one.share).slice(0, basisShown);
  return {
    known: true,
    suggested: { amountMinor: valueMinor, currency },
    lowMinor,
    highMinor,
    effectiveCount,
    basis: weightiest.flatMap((weight) => basisOf(weight, rows.get(weight.evidence))),
    basisCount: basis.length,
  };
}

function basisOf({ evidence, closeness, share }: EvidenceWeight, row: Evidence | undefined): PriceBasis[] {
  return row ? [{ evidence, on: row.on, what: row.what, price: row.price, closeness, share }] : [];
}
