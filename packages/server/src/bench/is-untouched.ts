import { isDeepStrictEqual } from "node:util";
import type { Placed } from "../store/document-table.ts";
import { listNames } from "../store/lists.ts";
import type { Example } from "./bench-contents.ts";
import type { Cleared } from "./clear-bench.ts";

/** Whether a cleared bench held nothing but the example as it comes, or nothing at all: then there is nothing to bring back. */
export function isUntouched(cleared: Cleared, example: Example): boolean {
  const isBare = listNames.every((name) => cleared[name].length === 0);
  if (isBare && Object.keys(cleared.bench?.goal ?? {}).length === 0) return true;
  const asStored = JSON.parse(JSON.stringify(example)) as Example;
  return (
    isDeepStrictEqual(cleared.bench?.goal, asStored.goal) &&
    listNames.every((name) => areAsGiven<{ id?: string }>(cleared[name], asStored[name] ?? []))
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
