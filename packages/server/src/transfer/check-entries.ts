import {
  type Claim,
  claimSchema,
  type Goal,
  goalSchema,
  type Joint,
  jointSchema,
  type Part,
  type Refusal,
} from "@ferrule/core";
import type { BenchContents } from "../bench/bench-contents.ts";
import { droppedFaultRefusals } from "../bench/dropped-faults.ts";
import { openJointBook } from "../bench/joint-book.ts";
import { partInputSchema } from "../wire/part-input.ts";
import { checkList, type Existing, type ItemSchema, parsed } from "./check-list.ts";
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

/** Tells the things that the bench can take from those it cannot, parts first, so that joints may name parts of the same text. */
export function checkEntries(
  bench: BenchContents,
  entries: readonly Entry[],
  existing: Existing,
): CheckedEntries {
  const refused: RowRefusal[] = [];
  const where = "on the bench";
  const parts = checkList<Part>(entries, "parts", partInputSchema as ItemSchema<Part>, {
    where,
    before: bench.parts,
    existing,
    stem: ({ kind }) => kind,
    refused,
    check: keptPart(bench),
  });
  const joints = checkList<Joint>(entries, "joints", jointSchema, {
    where,
    before: bench.joints,
    existing,
    stem: () => "joint",
    refused,
    check: jointCheck(bench, parts),
  });
  const claims = checkList<Claim>(entries, "claims", claimSchema, {
    where,
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

/** What a part with the id of one on the bench may not change in passing. */
function keptPart(bench: BenchContents): (part: Part) => Refusal[] {
  const before = new Map(bench.parts.map((part) => [part.id, part]));
  const kind = keptKind(bench);
  return (part) => [...kind(part), ...droppedFaultRefusals(before.get(part.id), part)];
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
