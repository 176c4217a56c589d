import type { ClubType, Head } from "@ferrule/core";
import { writtenValue } from "./written-value.ts";

/**
 * Seen from before the face: `toeIn` along the ground towards the toe and `upIn` above it, from where the shaft axis meets the
 * ground. A curve each: two points that bend it, and its end.
 */
interface Outline {
  readonly start: Point;
  readonly curves: readonly (readonly [Point, Point, Point])[];
  /** Heel to toe and sole to crown of the outline as it stands here. */
  readonly heelToToeIn: number;
  readonly soleToCrownIn: number;
  /** Lines in the face: from and to along the ground, and how far up. */
  readonly scores: readonly (readonly [fromIn: number, toIn: number, upIn: number])[];
}

type Point = readonly [toeIn: number, upIn: number];

const wood: Outline = {
  start: [-0.94, 0.94],
  curves: [
    [
      [-0.85, 0.3],
      [0.1, 0],
      [1.5, 0],
    ],
    [
      [2.9, 0],
      [3.85, 0.3],
      [4, 1],
    ],
    [
      [4.1, 1.75],
      [3.1, 2.4],
      [1.75, 2.4],
    ],
    [
      [0.6, 2.4],
      [0.1, 1.75],
      [-0.5, 1.4],
    ],
  ],
  scores: [0.5, 0.8, 1.1, 1.4, 1.7].map((upIn) => [0.9, 2.3, upIn] as const),
  heelToToeIn: 4.75,
  soleToCrownIn: 2.4,
};

const blade: Outline = {
  start: [-0.76, 0.84],
  curves: [
    [
      [-0.6, 0.25],
      [0.1, 0],
      [1, 0],
    ],
    [
      [1.9, 0],
      [2.55, 0.1],
      [2.75, 0.55],
    ],
    [
      [2.98, 1.2],
      [3, 2.1],
      [2.6, 2.25],
    ],
    [
      [2.1, 2.3],
      [0.6, 1.4],
      [-0.385, 1.27],
    ],
  ],
  scores: [0.3, 0.5, 0.7, 0.9, 1.1].map((upIn) => [0.3, 2.2, upIn] as const),
  heelToToeIn: 3.4,
  soleToCrownIn: 2.25,
};

const bar: Outline = {
  start: [-0.575, 0.85],
  curves: [
    [
      [-0.6, 0],
      [-0.4, 0],
      [0, 0],
    ],
    [
      [1.5, 0],
      [3, 0],
      [3.9, 0.05],
    ],
    [
      [4.1, 0.4],
      [4.05, 0.9],
      [3.8, 1],
    ],
    [
      [2.5, 1],
      [1, 1],
      [-0.12, 1.07],
    ],
  ],
  scores: [],
  heelToToeIn: 4.5,
  soleToCrownIn: 1,
};

/** Which outline, and how large heads of the kind usually are: from memory; only shapes rest on it, never a length that is shown. */
const usual: Readonly<Record<ClubType, readonly [Outline, heelToToeIn: number, soleToCrownIn: number]>> = {
  driver: [wood, 4.75, 2.4],
  fairway: [wood, 3.9, 1.5],
  hybrid: [wood, 3.4, 1.5],
  iron: [blade, 3.2, 2.2],
  wedge: [blade, 3.2, 2.5],
  putter: [bar, 4.5, 1],
};

/** A point of the head in inches along the axis towards the ground and off it towards the toe, from where the axis meets the ground. */
export interface AxisPoint {
  readonly alongIn: number;
  readonly offIn: number;
}

/** Turns a point before the face into the shaft's own frame, in which the ground lies at the lie angle. */
export function inAxisFrame([toeIn, upIn]: Point, lieDeg: number): AxisPoint {
  const lieRad = (lieDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(lieRad), Math.sin(lieRad)];
  return { alongIn: toeIn * cos - upIn * sin, offIn: toeIn * sin + upIn * cos };
}

/** A head's outline and the lines in its face, in the shaft's frame. */
export interface HeadShape {
  readonly start: AxisPoint;
  readonly curves: readonly (readonly AxisPoint[])[];
  readonly scores: readonly (readonly AxisPoint[])[];
}

/** The outline of a head in the shaft's frame: its first point and its curves. Sized by its readings where it has them. */
export function headOutline(
  head: Pick<Head, "clubType" | "heelToToeIn" | "soleToCrownIn">,
  lieDeg: number,
): HeadShape {
  const [outline, heelToToeIn, soleToCrownIn] = usual[head.clubType ?? "driver"];
  const wide = (writtenValue(head.heelToToeIn) ?? heelToToeIn) / outline.heelToToeIn;
  const high = (writtenValue(head.soleToCrownIn) ?? soleToCrownIn) / outline.soleToCrownIn;
  const placed = ([toeIn, upIn]: Point) => inAxisFrame([toeIn * wide, upIn * high], lieDeg);
  return {
    start: placed(outline.start),
    curves: outline.curves.map((curve) => curve.map(placed)),
    scores: outline.scores.map(([fromIn, toIn, upIn]) => [placed([fromIn, upIn]), placed([toIn, upIn])]),
  };
}

/** The paths of a head, once a point of the axis frame can be brought to the picture. */
export function headPaths(
  { start, curves, scores }: HeadShape,
  toPx: (point: AxisPoint) => readonly [number, number],
): { readonly outline: string; readonly scores: string } {
  const text = (point: AxisPoint) =>
    toPx(point)
      .map((value) => value.toFixed(1))
      .join(" ");
  return {
    outline: `M${text(start)}${curves.map((curve) => `C${curve.map(text).join(" ")}`).join("")}Z`,
    scores: scores.map((line) => `M${line.map(text).join("L")}`).join(""),
  };
}
