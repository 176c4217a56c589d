import { letterPx } from "./letter-px.ts";

export interface PointLabel {
  readonly xPx: number;
  readonly yPx: number;
  readonly label: string;
  /** Where from the point its label would rather be, such as away from a line that ends there. */
  readonly away?: readonly [dx: number, dy: number];
}

export interface PlacedLabel {
  readonly xPx: number;
  readonly yPx: number;
  readonly anchor: "start" | "middle" | "end";
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const offPx = 9;
const highPx = 13;

const sides = [
  ["start", 1, 0],
  ["end", -1, 0],
  ["middle", 0, -1],
  ["middle", 0, 1],
  ["start", 1, -1],
  ["start", 1, 1],
  ["end", -1, -1],
  ["end", -1, 1],
] as const;

/**
 * A place beside each point for its label, where it meets no other label, no point and no edge of the picture; `undefined` for
 * one that has no such place, which then has to be said beneath. Those that come first choose first.
 */
export function placeAround(
  points: readonly PointLabel[],
  { left, right, top, bottom }: Box,
): readonly (PlacedLabel | undefined)[] {
  const taken: Box[] = points.map(({ xPx, yPx }) => ({
    left: xPx - 5,
    right: xPx + 5,
    top: yPx - 5,
    bottom: yPx + 5,
  }));
  return points.map(({ xPx, yPx, label, away }, own) => {
    for (const [anchor, dx, dy] of away ? sidesTowards(away) : sides) {
      const box = boxOf(label, anchor, xPx + dx * offPx, yPx + dy * (dx === 0 ? 14 : 11));
      const isInside = box.left >= left && box.right <= right && box.top >= top && box.bottom <= bottom;
      if (!isInside || taken.some((other, at) => at !== own && meet(box, other))) continue;
      taken.push(box);
      return { xPx: xPx + dx * offPx, yPx: yPx + dy * (dx === 0 ? 14 : 11) + 4, anchor };
    }
    return undefined;
  });
}

function sidesTowards([awayX, awayY]: readonly [number, number]) {
  const along = ([, dx, dy]: (typeof sides)[number]) => (dx * awayX + dy * awayY) / Math.hypot(dx, dy);
  return sides.toSorted((one, other) => along(other) - along(one));
}

function boxOf(label: string, anchor: PlacedLabel["anchor"], xPx: number, yPx: number): Box {
  const long = label.length * letterPx;
  const left = anchor === "start" ? xPx : anchor === "end" ? xPx - long : xPx - long / 2;
  return { left, right: left + long, top: yPx - highPx / 2, bottom: yPx + highPx / 2 };
}

function meet(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}
