import { isDeepStrictEqual } from "node:util";

type Group = Readonly<Record<string, unknown>>;

/** The merge patch (RFC 7396) that makes what there was before out of what there is now. */
export function formerFields(before: object, now: object): Group {
  const [old, present] = [before as Group, now as Group];
  const names = [...new Set([...Object.keys(old), ...Object.keys(present)])];
  const changed = names.filter((name) => !isDeepStrictEqual(old[name], present[name]));
  return Object.fromEntries(changed.map((name) => [name, formerValue(old[name], present[name])]));
}

function formerValue(old: unknown, present: unknown): unknown {
  if (old === undefined) return null;
  return isGroup(old) && isGroup(present) ? formerFields(old, present) : old;
}

function isGroup(value: unknown): value is Group {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
