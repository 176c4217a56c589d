/** A fact as it stands on the bench: a field of a part, a fit claim (by its place in the list) or a wish. */
export type CitedFact =
  | { readonly of: "part"; readonly part: string; readonly field: string; readonly value: unknown }
  | { readonly of: "claim"; readonly index: number }
  | { readonly of: "goal"; readonly field: string; readonly value: unknown };

/** A name for a fact that is the same whenever it is cited. */
export function factKey(fact: CitedFact): string {
  if (fact.of === "part") return `part ${fact.part} ${fact.field}`;
  return fact.of === "claim" ? `claim ${fact.index}` : `goal ${fact.field}`;
}
