import { letterPx, middleWithin } from "./letter-px.ts";

export interface LabelWanted {
  readonly atPx: number;
  readonly label: string;
}

export interface LabelPlace {
  /** Of its middle. */
  readonly xPx: number;
  readonly row: number;
}

const gapPx = 12;

/** Labels as near as can be above what they name, on as many rows as it takes for none to meet another or leave the picture. */
export function placeLabels(wanted: readonly LabelWanted[], widthPx: number): readonly LabelPlace[] {
  const rows: (readonly [number, number])[][] = [];
  return wanted.map(({ atPx, label }) => {
    const half = (label.length * letterPx) / 2;
    const xPx = middleWithin(label, atPx, widthPx);
    const isFree = (row: readonly (readonly [number, number])[]) =>
      row.every(([from, to]) => xPx + half + gapPx <= from || to + gapPx <= xPx - half);
    const found = rows.findIndex(isFree);
    const row = found === -1 ? rows.push([]) - 1 : found;
    rows[row]?.push([xPx - half, xPx + half]);
    return { xPx, row };
  });
}
