import { describe, expect, it } from "vitest";
import type { FactReader } from "./mention.ts";
import { prepareWords } from "./words.ts";

/** A row of a reader's table: words of a seller, and what is read of them as "the words = the value". */
export type Row = readonly [text: string, ...reads: string[]];

function shown(value: unknown): string {
  return typeof value === "string" ? value : JSON.stringify(value);
}

/** What a reader reads of a text, one line a mention. A denied fault has a minus before its name. */
export function readsOf(reader: FactReader, text: string): string[] {
  return reader(prepareWords(text)).map((mention) => {
    const minus = mention.field === "fault" && mention.denied ? "-" : "";
    return `${text.slice(mention.start, mention.end)} = ${minus}${shown(mention.value)}`;
  });
}

/** Runs a table of a reader, and the same table in capitals: shouting changes nothing. */
export function checkReader(reader: FactReader, rows: readonly Row[]): void {
  describe(reader.name, () => {
    it.each(rows.map(([text, ...reads]) => ({ text, reads })))("$text", ({ text, reads }) =>
      expect(readsOf(reader, text)).toEqual(reads),
    );

    it.each(rows.map(([text, ...reads]) => ({ text, reads })))("shouted: $text", ({ text, reads }) => {
      const values = reads.map((read) => read.slice(read.indexOf(" = ")));
      const shouted = readsOf(reader, text.toUpperCase().padStart(text.length + 2));
      expect(shouted.map((read) => read.slice(read.indexOf(" = ")))).toEqual(values);
    });
  });
}
