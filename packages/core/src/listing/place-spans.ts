import type { Doubt, Span } from "./listing.ts";
import type { SqueezedWords } from "./words.ts";

/** Turns places in the prepared words into places in the text as it was given. */
export function placing(whole: string, { places }: SqueezedWords) {
  const startOf = (start: number) => places[start] ?? whole.length;
  const endOf = (end: number) => (end === 0 ? 0 : (places[end - 1] ?? whole.length - 1) + 1);
  return {
    span: (field: string, start: number, end: number): Span => ({
      field,
      start: startOf(start),
      end: endOf(end),
      words: whole.slice(startOf(start), endOf(end)),
    }),
    doubt: ({ field, start, end, text }: Doubt, prefix = ""): Doubt => ({
      field: field === null ? null : prefix + field,
      start: start === null ? null : startOf(start),
      end: end === null ? null : endOf(end),
      text,
    }),
  };
}
