import { canonicalText } from "@ferrule/core";

/** Two values to be compared: of two lists, only the items that the other does not hold as they are. */
export function unlikeItems(one: unknown, other: unknown): readonly [unknown, unknown] {
  if (!Array.isArray(one) || !Array.isArray(other)) return [one, other];
  return [without(one, other), without(other, one)];
}

function without(items: readonly unknown[], others: readonly unknown[]): readonly unknown[] {
  const known = new Set(others.map((item) => canonicalText([item])));
  return items.filter((item) => !known.has(canonicalText([item])));
}
