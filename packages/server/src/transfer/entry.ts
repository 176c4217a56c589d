/** Why a row was not taken, and where it stands in the text; lines and characters count from 1. */
export interface RowRefusal {
  readonly line: number;
  /** The field path, which in CSV is the column's name. */
  readonly column: string;
  readonly got: string;
  readonly expected: string;
}

/** One thing found in an imported text, not yet checked. */
export interface Entry {
  readonly list: string;
  readonly value: unknown;
  /** The line that a field of it stands in. */
  lineOf(field: string): number;
}

/** The most things that one text may hold: what is told about each of them has to find room too. */
export const thingsMost = 100_000;

export function tooManyThings(): RowRefusal {
  return {
    line: 1,
    column: "(the whole text)",
    got: "more rows or things than that",
    expected: `at most ${thingsMost} at once`,
  };
}

/** What an imported text holds: things to check, or the reason why none could be made out. */
export interface ReadText {
  readonly entries: readonly Entry[];
  readonly refused: readonly RowRefusal[];
}
