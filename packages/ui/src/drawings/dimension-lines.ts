import { letterPx } from "./letter-px.ts";

/** A measure to be drawn with arrows and a label, in pixels. */
export interface LineWanted {
  readonly fromPx: number;
  readonly toPx: number;
  readonly label: string;
}

/** Where its label goes, and on which row, counted away from what is measured. */
export interface LinePlace {
  readonly row: number;
  readonly labelPx: number;
  readonly anchor: "start" | "middle" | "end";
  /** From the leftmost to the rightmost ink of it. */
  readonly span: readonly [number, number];
}

const padPx = 8;
const gapPx = 10;

/** The label between the arrows where there is room, else on the side that has it: never beyond the picture. */
function placeLabel({ fromPx, toPx, label }: LineWanted, widthPx: number): Omit<LinePlace, "row"> {
  const longPx = label.length * letterPx;
  if (longPx + padPx <= toPx - fromPx)
    return { labelPx: (fromPx + toPx) / 2, anchor: "middle", span: [fromPx, toPx] };
  if (fromPx - padPx - longPx >= 0)
    return { labelPx: fromPx - padPx, anchor: "end", span: [fromPx - padPx - longPx, toPx] };
  if (toPx + padPx + longPx <= widthPx)
    return { labelPx: toPx + padPx, anchor: "start", span: [fromPx, toPx + padPx + longPx] };
  return {
    labelPx: widthPx,
    anchor: "end",
    span: [Math.min(fromPx, widthPx - longPx), Math.max(toPx, widthPx)],
  };
}

/** A row for every measure, the nearest in which neither its arrows nor its label meets another's. */
export function placeLines(lines: readonly LineWanted[], widthPx: number): readonly LinePlace[] {
  const rows: (readonly [number, number])[][] = [];
  return lines.map((line) => {
    const place = placeLabel(line, widthPx);
    const [low, high] = place.span;
    const isFree = (row: readonly (readonly [number, number])[]) =>
      row.every(([from, to]) => high + gapPx <= from || to + gapPx <= low);
    const found = rows.findIndex(isFree);
    const row = found === -1 ? rows.push([]) - 1 : found;
    rows[row]?.push(place.span);
    return { ...place, row };
  });
}
