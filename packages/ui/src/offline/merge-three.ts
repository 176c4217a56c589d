import { canonicalText } from "@ferrule/core";
import type { Thing } from "./waiting-change.ts";

/** Two changes of one thing, put together. */
export interface Merged {
  /** Every field that only one of them changed, as it was changed; where both did, as it is there now. */
  readonly merged: Thing;
  /** Fields that both changed, and not to the same. */
  readonly clashes: readonly string[];
}

/** Puts a change made here, from `before` to `mine`, on top of what is there now. */
export function mergeThree(before: Thing, mine: Thing, present: Thing): Merged {
  const names = new Set([before, mine, present].flatMap((each) => Object.keys(each)));
  const isSame = (a: unknown, b: unknown) => canonicalText([a]) === canonicalText([b]);
  const merged: Record<string, unknown> = {};
  const clashes: string[] = [];
  for (const name of names) {
    const isMine = !isSame(before[name], mine[name]);
    const isTheirs = !isSame(before[name], present[name]);
    if (isMine && isTheirs && !isSame(mine[name], present[name])) clashes.push(name);
    const value = isMine && !isTheirs ? mine[name] : present[name];
    if (value !== undefined) merged[name] = value;
  }
  return { merged, clashes };
}

/** The same, and where both changed a field, as it was changed here. */
export function mineOnTop(before: Thing, mine: Thing, present: Thing): Thing {
  const { merged, clashes } = mergeThree(before, mine, present);
  const own = Object.fromEntries(clashes.map((name) => [name, mine[name]]));
  return Object.fromEntries(Object.entries({ ...merged, ...own }).filter(([, value]) => value !== undefined));
}
