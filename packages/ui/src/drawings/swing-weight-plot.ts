import type { Estimates } from "@ferrule/core";

/** A club's length and swing weight, each between the ends of its 95 % interval. */
export interface SwingPoint {
  readonly lengthIn: number;
  readonly lowIn: number;
  readonly highIn: number;
  readonly points: number;
  readonly lowPoints: number;
  readonly highPoints: number;
}

export interface SwingTarget {
  readonly playingLengthIn?: number;
  readonly swingWeightPoints?: number;
}

/** What one change by itself would make of the club. */
export interface SwingTune {
  readonly label: string;
  readonly to: SwingPoint;
}

/** `undefined` where either is not known. */
export function swingPoint({ playingLengthIn, swingWeight }: Estimates): SwingPoint | undefined {
  if (!playingLengthIn || !swingWeight) return undefined;
  return {
    lengthIn: playingLengthIn.value,
    lowIn: playingLengthIn.low,
    highIn: playingLengthIn.high,
    points: swingWeight.points,
    lowPoints: swingWeight.low,
    highPoints: swingWeight.high,
  };
}

/** What the picture has to hold: the intervals of the club as it is and as it is tried, the target, and where every change leads. */
export function swingDomains(
  clubs: readonly SwingPoint[],
  target: SwingTarget,
  tunes: readonly SwingTune[],
): { readonly lengthIn: readonly [number, number]; readonly points: readonly [number, number] } {
  const lengths = [
    ...clubs.flatMap(({ lowIn, highIn }) => [lowIn, highIn]),
    ...tunes.map(({ to }) => to.lengthIn),
    ...(target.playingLengthIn === undefined ? [] : [target.playingLengthIn]),
  ];
  const points = [
    ...clubs.flatMap(({ lowPoints, highPoints }) => [lowPoints, highPoints]),
    ...tunes.map(({ to }) => to.points),
    ...(target.swingWeightPoints === undefined ? [] : [target.swingWeightPoints]),
  ];
  return { lengthIn: padded(lengths, 0.25), points: padded(points, 1) };
}

function padded(values: readonly number[], least: number): readonly [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const pad = Math.max(least, (high - low) * 0.12);
  return [low - pad, high + pad];
}

const inchSteps = [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 5, 10];

/** Ticks where a rule has them: halves, quarters, eighths, at most about so many. */
export function inchTicks(lowIn: number, highIn: number, most: number): readonly number[] {
  const step = inchSteps.find((one) => (highIn - lowIn) / one <= most) ?? 20;
  const first = Math.ceil(lowIn / step);
  const count = Math.floor(highIn / step) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, at) => (first + at) * step);
}
