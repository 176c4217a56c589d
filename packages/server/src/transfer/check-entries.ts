import {
  type Claim,
  claimSchema,
  type Goal,
  goalSchema,
  type Joint,
  jointSchema,
  type Part,
  parseWith,
  type Refusal,
} from "@ferrule/core";
import type { z } from "zod";
import type { BenchContents } from "../bench/bench-contents.ts";
import { openJointBook } from "../bench/joint-book.ts";
import { newId } from "../bench/new-id.ts";
import { partInputSchema } from "../wire/part-input.ts";
import type { Entry, RowRefusal } from "./entry.ts";

export interface CheckedEntries {
  readonly good: {
    readonly parts: readonly Part[];
    readonly joints: readonly Joint[];
    readonly claims: readonly Claim[];
    readonly goal?: Goal;
  };
  readonly taken: number;
  readonly refused: readonly RowRefusal[];
}

type ItemSchema<T> = z.ZodType<Omit<T, "id"> & { id?: string }>;

/** What to do with a thing whose id is on the bench already. */
export type Existing = "refuse" | "replace";

/** Tells the things that the bench can take from those it cannot, parts first, so that joints may name parts of the same text. */
export function checkEntries(
  bench: BenchContents,
  entries: readonly Entry[],
  existing: Existing,
): CheckedEntries {
  const refused: RowRefusal[] = [];
  const parts = checkList<Part>(entries, "parts", partInputSchema as ItemSchema<Part>, {
    before: bench.parts,
    existing,
    stem: ({ kind }) => kind,
    refused,
    check: keptKind(bench),
  });
  const joints = checkList<Joint>(entries, "joints", jointSchema, {
    before: bench.joints,
    existing,
    stem: () => "joint",
    refused,
    check: jointCheck(bench, parts),
  });
  const claims = checkList<Claim>(entries, "claims", claimSchema, {
    before: bench.claims,
    existing,
    stem: () => "claim",
    refused,
    check: () => [],
  });
  const goals = entries
    .filter(({ list }) => list === "goal")
    .flatMap((entry) => parsed(entry, goalSchema, refused));
  const good = { parts, joints, claims, goal: goals.at(-1) };
  const taken = parts.length + joints.length + claims.length + goals.length;
  return { good, taken, refused: refused.sort((a, b) => a.line - b.line) };
}

interface ListCheck<T> {
  readonly before: readonly T[];
  readonly existing: Existing;
  stem(value: T): string;
  readonly refused: RowRefusal[];
  check(value: T): Refusal[];
}

function checkList<T extends { id?: string }>(
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
        const refusals = isRepeated ? [repeatedId(value.id, inText.has(value.id))] : spec.check(value);
        spec.refused.push(...rowRefusals(entry, refusals));
        if (refusals.length > 0) return [];
        inText.add(value.id);
        return [value];
      }),
    );
}

function repeatedId(id: string, isInText: boolean): Refusal {
  return {
    field: "id",
    got: JSON.stringify(id),
    expected: isInText
      ? "an id that nothing before it in the text has"
      : "an id that is not on the bench yet",
  };
}

function parsed<T>(entry: Entry, schema: z.ZodType<T>, refused: RowRefusal[]): T[] {
  const result = parseWith(schema, entry.value);
  if (result.ok) return [result.value];
  refused.push(...rowRefusals(entry, result.refusals));
  return [];
}

function rowRefusals(entry: Entry, refusals: readonly Refusal[]): RowRefusal[] {
  return refusals.map(({ field, got, expected }) => ({
    line: entry.lineOf(field),
    column: field,
    got,
    expected,
  }));
}

function keptKind(bench: BenchContents): (part: Part) => Refusal[] {
  const kinds = new Map(bench.parts.map(({ id, kind }) => [id, kind]));
  return ({ id, kind }) => {
    const before = kinds.get(id);
    if (before === undefined || before === kind) return [];
    return [
      {
        field: "kind",
        got: JSON.stringify(kind),
        expected: `${JSON.stringify(before)}, the kind of the part with this id on the bench`,
      },
    ];
  };
}

/** A joint of the bench may be stated again, but only between the same parts; it could free a place that others wait for. */
function jointCheck(bench: BenchContents, parts: readonly Part[]): (joint: Joint) => Refusal[] {
  const book = openJointBook([...bench.parts, ...parts]);
  const before = new Map(bench.joints.map((joint) => [joint.id, joint]));
  for (const joint of bench.joints) book.enter(joint);
  return (joint) => {
    const former = before.get(joint.id);
    if (former === undefined) return book.enter(joint);
    if (former.type === joint.type && joint.parts.every((id) => former.parts.includes(id))) return [];
    return [
      {
        field: "parts",
        got: JSON.stringify(joint.parts),
        expected: `${JSON.stringify(former.parts)}, ${former.type}, as this joint is on the bench`,
      },
    ];
  };
}
