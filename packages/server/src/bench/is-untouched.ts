import { isDeepStrictEqual } from "node:util";
import type { Deletion } from "../store/deletions.ts";
import type { Placed } from "../store/document-table.ts";
import type { BenchContents } from "./bench-contents.ts";

/** Whether a cleared bench held nothing but the example as it comes, or nothing at all: then there is nothing to bring back. */
export function isUntouched(cleared: Deletion, example: BenchContents): boolean {
  const { parts, joints, claims, bench } = cleared;
  const isBare = [parts, joints, claims].every(({ length }) => length === 0);
  if (isBare && Object.keys(bench?.goal ?? {}).length === 0) return true;
  const asStored = JSON.parse(JSON.stringify(example)) as BenchContents;
  return (
    isDeepStrictEqual(bench?.goal, asStored.goal) &&
    areAsGiven(parts, asStored.parts) &&
    areAsGiven(joints, asStored.joints) &&
    areAsGiven(claims, asStored.claims)
  );
}

/** A joint or a claim that the example leaves unnamed is given an id when it is put on the bench. */
function areAsGiven<T extends { id?: string }>(placed: readonly Placed<T>[], given: readonly T[]): boolean {
  const named = given.map((value, at) => ({ ...value, id: value.id ?? placed[at]?.value.id }));
  return isDeepStrictEqual(
    placed.map(({ value }) => value),
    named,
  );
}
