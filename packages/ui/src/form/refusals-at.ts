import type { Refusal } from "@ferrule/core";

/** The refusals that belong to one field: its own, and those of anything inside it. */
export function refusalsAt(refusals: readonly Refusal[], path: string): readonly Refusal[] {
  return refusals.filter(({ field }) => field === path || field.startsWith(`${path}.`));
}

/** "Got "four", expected …". */
export function refusalText({ got, expected }: Refusal): string {
  return `Got ${got}, expected ${expected}.`;
}
