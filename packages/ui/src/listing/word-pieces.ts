import type { Span } from "@ferrule/core";

/** A run of the words with the facts that were read from it; none for words that say nothing. */
export interface WordPiece {
  readonly text: string;
  readonly facts: readonly { readonly field: string; readonly number: number }[];
}

/** Facts by field, numbered in the order in which the words say them. Facts read from the same words share nothing but a place. */
export function factNumbers(spans: readonly Span[]): ReadonlyMap<string, number> {
  const fields = inOrder(spans).map(({ field }) => field);
  return new Map([...new Set(fields)].map((field, at) => [field, at + 1]));
}

/** The words cut where facts begin and end. The pieces joined are the words; a span outside them is left out. */
export function wordPieces(text: string, spans: readonly Span[]): WordPiece[] {
  const numbers = factNumbers(spans);
  const inside = spans.filter(({ start, end }) => start < end && end <= text.length);
  const cuts = [...new Set([0, text.length, ...inside.flatMap(({ start, end }) => [start, end])])].sort(
    (one, other) => one - other,
  );
  return cuts.slice(1).map((end, at) => {
    const start = cuts[at] ?? 0;
    const facts = inside
      .filter((span) => span.start <= start && end <= span.end)
      .map(({ field }) => ({ field, number: numbers.get(field) ?? 0 }))
      .sort((one, other) => one.number - other.number);
    return { text: text.slice(start, end), facts: unique(facts) };
  });
}

function unique(facts: WordPiece["facts"]): WordPiece["facts"] {
  return [...new Map(facts.map((fact) => [fact.field, fact])).values()];
}

function inOrder(spans: readonly Span[]): Span[] {
  return [...spans].sort((one, other) => one.start - other.start || one.end - other.end);
}
