import { minorDigits } from "../money.ts";
import type { Fault } from "../parts/fault.ts";
import type { Money } from "../parts/part.ts";
import type { ReadingSource } from "../parts/reading.ts";
import { cmFromIn } from "../units.ts";

/** What a buyer calls each fault. */
export const saleFaultWords: Readonly<Record<Fault, string>> = {
  "sky-mark": "a mark on the crown from a high ball",
  "crown-scratch": "scratches on the crown",
  "face-wear": "a worn face",
  "dent-head": "a dent in the head",
  crack: "a crack",
  rattle: "a rattle in the head",
  "caved-face": "a caved face",
  "paint-wear-shaft": "worn paint on the shaft (bag wear)",
  "dent-shaft": "a dent in the shaft",
  "crease-shaft": "a crease in the shaft",
  "exposed-fibre": "fibres showing on the shaft",
  "bent-shaft": "a bent shaft",
  rust: "rust",
  "grip-worn": "a worn grip",
  "adapter-damaged": "a damaged adapter",
  "loose-joint": "a joint that moves or creaks",
  other: "another fault, which is not described here",
};

/** How far a reading is to be believed, in a few words. */
export const saleSourceWords: Readonly<Record<ReadingSource, string>> = {
  measured: "measured",
  stated: "as stated to us",
  catalogue: "by the catalogue",
  typical: "a typical figure",
};

/** A number with at most so many decimals, without idle noughts. */
export function plainNumber(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}

/** "44.5 in (113 cm)". */
export function lengthWords(valueIn: number): string {
  return `${plainNumber(valueIn, 2)} in (${plainNumber(cmFromIn(valueIn), 1)} cm)`;
}

/** "75 EUR", "75.50 EUR". */
export function priceWords({ amountMinor, currency }: Money): string {
  const digits = minorDigits(currency);
  const amount = amountMinor / 10 ** digits;
  return `${Number.isInteger(amount) ? amount : amount.toFixed(digits)} ${currency}`;
}

/** "a", "a and b", "a, b and c". */
export function listWords(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
}
