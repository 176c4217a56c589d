import type { Claim, Joint, Part, Refusal } from "@ferrule/core";
import type { Deletion } from "../store/deletions.ts";
import type { Tables } from "../store/tables.ts";
import { droppedFaultRefusals } from "./dropped-faults.ts";
import { openJointBook } from "./joint-book.ts";
import { namedParts } from "./named-parts.ts";
import { type BenchThings, openShelf, type Shelf } from "./shelf.ts";

const onBench = {
  where: "on the bench",
  tell: ({ parts = [], joints = [], claims = [] }: Deletion): BenchThings => ({
    parts: parts.map(({ value }) => value),
    joints: joints.map(({ value }) => value),
    claims: claims.map(({ value }) => value),
  }),
};

export function partsShelf(tables: Tables): Shelf<Part> {
  const jointsOf = (id: string) => tables.joints.all().filter(({ value }) => value.parts.includes(id));
  return openShelf<Part, BenchThings>(tables, {
    ...onBench,
    noun: "part",
    table: tables.parts,
    stem: ({ kind }) => kind,
    named: () => namedParts(tables),
    refusals: (part) => [
      ...changedKindRefusals(tables, part, jointsOf(part.id).length),
      ...droppedFaultRefusals(tables.parts.get(part.id)?.value, part),
    ],
    deletion: (placed) => ({
      parts: [placed],
      joints: jointsOf(placed.value.id),
    }),
  });
}

/** A part's kind decides what it can be joined to, so a joined part keeps its kind. */
function changedKindRefusals(tables: Tables, part: Part, joints: number): Refusal[] {
  const before = tables.parts.get(part.id)?.value.kind ?? part.kind;
  if (before === part.kind || joints === 0) return [];
  return [
    {
      field: "kind",
      got: JSON.stringify(part.kind),
      expected: `${JSON.stringify(before)}, as long as the part is joined to another`,
    },
  ];
}

export function jointsShelf(tables: Tables): Shelf<Joint> {
  return openShelf<Joint, BenchThings>(tables, {
    ...onBench,
    noun: "joint",
    table: tables.joints,
    stem: () => "joint",
    refusals: (joint) => jointRefusals(tables, joint),
    deletion: (placed) => ({ joints: [placed] }),
  });
}

/** Why a joint cannot be made on the bench as it is, its own former self left out. */
export function jointRefusals(tables: Tables, joint: Joint): Refusal[] {
  const book = openJointBook(tables.parts.all().map(({ value }) => value));
  for (const { value } of tables.joints.all()) if (value.id !== joint.id) book.enter(value);
  return book.enter(joint);
}

export function claimsShelf(tables: Tables): Shelf<Claim> {
  return openShelf<Claim, BenchThings>(tables, {
    ...onBench,
    noun: "claim",
    table: tables.claims,
    stem: () => "claim",
    refusals: () => [],
    deletion: (placed) => ({ claims: [placed] }),
  });
}
