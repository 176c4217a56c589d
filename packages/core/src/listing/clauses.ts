/** A stretch of the words. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** What ends a clause: a line break, a full stop that is not inside a number or an abbreviation, a semicolon, a comma, a dash with blanks. */
const clauseEnd =
  /\n|[;,!?](?!\d)|:(?=[ \n])|(?<![\d ]\p{L})[.](?=[ \n]|$)|(?<=\p{L})[.](?=\p{L}{3})| [-|•*] |[|•()]/gu;

/** The clauses of prepared words, in order. */
export function clausesOf(plain: string): Stretch[] {
  const clauses: Stretch[] = [];
  let start = 0;
  for (const { 0: mark, index } of plain.matchAll(clauseEnd)) {
    if (index > start) clauses.push({ start, end: index });
    start = index + mark.length;
  }
  if (start < plain.length) clauses.push({ start, end: plain.length });
  return clauses;
}

/** Whether one stretch has a character of another. */
export const overlaps = (one: Stretch, other: Stretch): boolean =>
  one.start < other.end && other.start < one.end;
