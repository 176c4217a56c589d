import type { Column, PartKindGroup } from "./part-kinds.ts";
import type { Link } from "./together-links.ts";

export interface PlacedGroup {
  readonly group: PartKindGroup;
  readonly row: number;
}

/** From left to right. */
export const columns: readonly Column[] = ["head", "between", "shaft"];

/** The most boxes that a column shows; what has the fewest lines is left to the table. */
export const mostRows = 30;

/** The boxes of each column in an order that keeps lines short: every box near the middle of those it is linked to. */
export function placeGroups(
  groups: readonly PartKindGroup[],
  links: readonly Link[],
): Readonly<Record<Column, readonly PlacedGroup[]>> {
  const rowOf = new Map<string, number>();
  const neighbours = new Map<string, string[]>();
  for (const { from, to } of links) {
    neighbours.set(from, [...(neighbours.get(from) ?? []), to]);
    neighbours.set(to, [...(neighbours.get(to) ?? []), from]);
  }
  const middleOf = ({ key }: PartKindGroup) => {
    const rows = (neighbours.get(key) ?? []).flatMap((other) => rowOf.get(other) ?? []);
    return rows.length === 0
      ? Number.POSITIVE_INFINITY
      : rows.reduce((sum, row) => sum + row, 0) / rows.length;
  };
  const linked = ({ key }: PartKindGroup) => neighbours.get(key)?.length ?? 0;
  const shown = Object.fromEntries(
    columns.map((column) => [
      column,
      groups
        .filter((group) => group.column === column && linked(group) > 0)
        .sort((one, other) => linked(other) - linked(one) || one.title.localeCompare(other.title))
        .slice(0, mostRows),
    ]),
  ) as Record<Column, PartKindGroup[]>;
  shown.head.sort((one, other) => one.title.localeCompare(other.title));
  const number = (column: Column) => shown[column].forEach((group, row) => void rowOf.set(group.key, row));
  number("head");
  // Twice there and back is enough for a few dozen boxes, and always the same.
  for (const column of ["between", "shaft", "between", "head", "between", "shaft"] as const) {
    const middles = new Map(shown[column].map((group) => [group.key, middleOf(group)]));
    shown[column].sort(
      (one, other) =>
        (middles.get(one.key) ?? 0) - (middles.get(other.key) ?? 0) || one.title.localeCompare(other.title),
    );
    number(column);
  }
  const placed = (column: Column) => shown[column].map((group, row) => ({ group, row }));
  return { head: placed("head"), between: placed("between"), shaft: placed("shaft") };
}
