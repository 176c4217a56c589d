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

/** More blanks than this in a row are not read across: a bound keeps every pattern's time in step with the text's length. */
const blanksMost = 8;

/**
 * Builds a pattern from pieces written as regular expressions. A group named `at` marks the words that carry the fact when
 * they are fewer than the words that had to be seen.
 */
export function pattern(parts: TemplateStringsArray, ...pieces: readonly string[]): RegExp {
  const source = String.raw(parts, ...pieces);
  const bounded = source
    .replaceAll("\\s*", `\\s{0,${blanksMost}}`)
    .replaceAll("\\s+", `\\s{1,${blanksMost}}`);
  return new RegExp(bounded, "g");
}

/** The first match of a global pattern, wherever it was last asked about; only this one is looked for. */
export function firstMatch(plain: string, searched: RegExp): RegExpExecArray | null {
  searched.lastIndex = 0;
  return searched.exec(plain);
}

/** Every match of a pattern, from left to right. */
export function matchesOf(plain: string, searched: RegExp): RegExpExecArray[] {
  return Array.from(plain.matchAll(searched));
}

/**
 * The place of a group's words in a match: at its end, else at its start, else where they stand last. (The indices that
 * the language can give cost several times the match.)
 */
export function placeOfGroup(match: RegExpExecArray, group: string): readonly [number, number] | null {
  const said = match.groups?.[group];
  if (said === undefined) return null;
  const whole = match[0];
  const from = whole.startsWith(said) && !whole.endsWith(said) ? 0 : whole.lastIndexOf(said);
  return [match.index + from, match.index + from + said.length];
}

function placeOf(match: RegExpExecArray): readonly [number, number] {
  return placeOfGroup(match, "at") ?? [match.index, match.index + match[0].length];
}

function isClaimed(claimed: Uint8Array, start: number, end: number): boolean {
  for (let place = start; place < end; place += 1) if (claimed[place] === 1) return true;
  return false;
}

/**
 * Finds what the phrases say. Earlier phrases claim their words first, and a claimed word says nothing else, so traps and
 * longer ways of saying a thing stand before shorter ones.
 */
export function findPhrases<Value>(plain: string, phrases: readonly Phrase<Value>[]): Found<Value>[] {
  const claimed = new Uint8Array(plain.length);
  const found: Found<Value>[] = [];
  for (const { pattern: searched, value } of phrases) {
    // A pattern looked for in place: `matchAll` makes a copy of it each time, which costs more than most searches.
    searched.lastIndex = 0;
    for (let match = searched.exec(plain); match; match = searched.exec(plain)) {
      if (match[0] === "") searched.lastIndex += 1;
      const [start, end] = placeOf(match);
      if (isClaimed(claimed, start, end)) continue;
      claimed.fill(1, start, end);
      const said = value instanceof Function ? value(match) : value;
      if (said !== null) found.push({ value: said, start, end });
    }
  }
  return found.sort((one, other) => one.start - other.start);
}
