import { parseWith, type Refusal } from "@ferrule/core";
import type { z } from "zod";
import { newId } from "../bench/new-id.ts";
import type { Entry, RowRefusal } from "./entry.ts";

export type ItemSchema<T> = z.ZodType<Omit<T, "id"> & { id?: string }>;

/** What to do with a thing whose id is taken already. */
export type Existing = "refuse" | "replace";

export interface ListCheck<T> {
  /** Where the things are that came before, in words. */
  readonly where: string;
  readonly before: readonly T[];
  readonly existing: Existing;
  stem(value: T): string;
  readonly refused: RowRefusal[];
  /** Why a thing that its schema takes cannot stand beside what is there. */
  check(value: T & { id: string }): Refusal[];
}

/** The good things of one list; why the others are not taken goes to `refused`. Those without an id are given one. */
export function checkList<T extends { id?: string }>(
  entries: readonly Entry[],
  list: Entry["list"],
  schema: ItemSchema<T>,
  spec: ListCheck<T>,
): T[] {
  const before = new Set(spec.before.map(({ id }) => id));
  const inText = new Set<string>();
  const isTaken = (id: string) => before.has(id) || inText.has(id);
  return entries
    .filter((entry) => entry.list === list)
    .flatMap((entry) =>
      parsed(entry, schema, spec.refused).flatMap((written) => {
        const value = {
          ...written,
          id: written.id ?? newId(spec.stem(written as unknown as T), isTaken, before.size + inText.size + 1),
        } as T & { id: string };
        const isRepeated = inText.has(value.id) || (before.has(value.id) && spec.existing === "refuse");
        const refusals = isRepeated
          ? [repeatedId(value.id, inText.has(value.id), spec.where)]
          : spec.check(value);
        spec.refused.push(...rowRefusals(entry, refusals));
        if (refusals.length > 0) return [];
        inText.add(value.id);
        return [value];
      }),
    );
}

function repeatedId(id: string, isInText: boolean, where: string): Refusal {
  return {
    field: "id",
    got: JSON.stringify(id),
    expected: isInText ? "an id that nothing before it in the text has" : `an id that is not ${where} yet`,
  };
}

export function parsed<T>(entry: Entry, schema: z.ZodType<T>, refused: RowRefusal[]): T[] {
  const result = parseWith(schema, entry.value);
  if (result.ok) return [result.value];
  refused.push(...rowRefusals(entry, result.refusals));
  return [];
}

/** Of one thing; with more that is wrong, nobody would read on. */
const toldMost = 100;

function rowRefusals(entry: Entry, refusals: readonly Refusal[]): RowRefusal[] {
  return refusals.slice(0, toldMost).map(({ field, got, expected }) => ({
    line: entry.lineOf(field),
    column: field,
    got,
    expected,
  }));
}
