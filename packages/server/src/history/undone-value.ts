import { isDeepStrictEqual } from "node:util";

type Group = Readonly<Record<string, unknown>>;

/** What is there once a change is taken back, or that it cannot be: something that it changed has been changed since. */
export type Undone = { readonly stands: true; readonly value: unknown } | { readonly stands: false };

/**
 * Takes one change back out of what there is now, field by field: what the change left and is still so is again as it was before,
 * what it did not touch stays as it is now. `undefined` is what is not there.
 */
export function undoneValue(before: unknown, after: unknown, present: unknown): Undone {
  if (isDeepStrictEqual(before, after)) return { stands: true, value: present };
  if (isDeepStrictEqual(present, after)) return { stands: true, value: before };
  if (!isGroup(before) || !isGroup(after) || !isGroup(present)) return { stands: false };
  const fields = new Map<string, unknown>();
  for (const name of new Set([present, before, after].flatMap(Object.keys))) {
    const undone = undoneValue(fieldOf(before, name), fieldOf(after, name), fieldOf(present, name));
    if (!undone.stands) return undone;
    if (undone.value !== undefined) fields.set(name, undone.value);
  }
  return { stands: true, value: Object.fromEntries(fields) };
}

function isGroup(value: unknown): value is Group {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

const fieldOf = (group: Group, name: string) => (Object.hasOwn(group, name) ? group[name] : undefined);
