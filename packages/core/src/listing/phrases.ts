/** One way of saying something. A `null` value is a trap: words that look like the fact and are not; they yield nothing. */
export interface Phrase<Value> {
  readonly pattern: RegExp;
  readonly value: Value | null | ((match: RegExpExecArray) => Value | null);
}

/** A value and the place in the prepared text that says it. */
export interface Found<Value> {
  readonly value: Value;
  readonly start: number;
  readonly end: number;
}

/**
 * Builds a pattern from pieces written as regular expressions. A group named `at` marks the words that carry the fact when
 * they are fewer than the words that had to be seen.
 */
export function pattern(parts: TemplateStringsArray, ...pieces: readonly string[]): RegExp {
  const source = String.raw(parts, ...pieces);
  return new RegExp(source, source.includes("(?<at>") ? "gd" : "g");
}

/** Every match of a pattern, from left to right. */
export function matchesOf(plain: string, searched: RegExp): RegExpExecArray[] {
  return Array.from(plain.matchAll(searched));
}

function placeOf(match: RegExpExecArray): readonly [number, number] {
  return match.indices?.groups?.["at"] ?? [match.index, match.index + match[0].length];
}

/**
 * Finds what the phrases say. Earlier phrases claim their words first, and a claimed word says nothing else, so traps and
 * longer ways of saying a thing stand before shorter ones.
 */
export function findPhrases<Value>(plain: string, phrases: readonly Phrase<Value>[]): Found<Value>[] {
  const claimed = new Uint8Array(plain.length);
  const found: Found<Value>[] = [];
  for (const { pattern: searched, value } of phrases) {
    for (const match of plain.matchAll(searched)) {
      const [start, end] = placeOf(match);
      if (claimed.subarray(start, end).includes(1)) continue;
      claimed.fill(1, start, end);
      const said = value instanceof Function ? value(match) : value;
      if (said !== null) found.push({ value: said, start, end });
    }
  }
  return found.sort((one, other) => one.start - other.start);
}
