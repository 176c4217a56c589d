import type { Interval } from "../interval.ts";
import type { Reading } from "../parts/reading.ts";
import { ozInFromGIn } from "../units.ts";
import { clubFirstMoment } from "./physics/club-balance.ts";
import { clubMass } from "./physics/club-mass.ts";
import { shaftAfterTrim } from "./physics/shaft-after-trim.ts";
import { swingWeightFulcrumIn, swingWeightPoints } from "./physics/swing-weight.ts";
import { interval95, type Point, propagate } from "./uncertainty.ts";

/** The readings a swing weight is made of, of a club whose shaft is cut or lengthened to `builtLengthIn` (uncut without it). */
export interface SwingWeightFacts {
  readonly builtLengthIn?: number;
  readonly readings: Readonly<Record<SwingWeightReading, Reading>>;
}

export type SwingWeightReading =
  | "headMassG"
  | "cgAlongAxisIn"
  | "adapterMassG"
  | "shaftMassG"
  | "balanceFromTipIn"
  | "aloneLengthIn"
  | "bbgmIn"
  | "capThicknessIn"
  | "gripMassG"
  | "cgFromCapIn";

export interface SwingWeightReach {
  readonly points: number;
  /** What a gram at the head's centre of mass adds, and what one in the butt takes off (a positive number). */
  readonly headPointsPerG: number;
  readonly buttPointsPerG: number;
}

/** How vague a swing weight is, in points: its 95 % interval, and the reading that explains most of it. */
export interface SwingWeightSpread extends Interval {
  readonly vaguest: SwingWeightReading;
}

/** Where a counterweight sits, from the grip end. Common practice, no source. */
export const counterweightFromButtIn = 1;

/**
 * Swing weight in points from A0, from point masses along the shaft axis (moment about 14 in: US patent 1,953,916). The
 * adapter is taken at the shaft's tip; an extension's own mass is left out. `undefined` where the shaft's balance cannot be.
 */
export function swingWeightReach({
  builtLengthIn,
  readings,
}: SwingWeightFacts): SwingWeightReach | undefined {
  const best = valuesOf(readings);
  const points = pointsOf(best, builtLengthIn);
  if (!Number.isFinite(points)) return undefined;
  const headFromButtIn = lengthOf(best, builtLengthIn) - best.cgAlongAxisIn;
  return {
    points,
    headPointsPerG: pointsPerG(headFromButtIn),
    buttPointsPerG: -pointsPerG(counterweightFromButtIn),
  };
}

/** Apart from the swing weight itself, because it costs twenty times as much. Throws where there is no swing weight. */
export function swingWeightSpread({ builtLengthIn, readings }: SwingWeightFacts): SwingWeightSpread {
  const inputs = (Object.keys(readings) as SwingWeightReading[]).map((name) => {
    const { value, plusMinus } = readings[name];
    return { name, value, standardUncertainty: plusMinus };
  });
  const propagated = propagate((at) => pointsOf(at, builtLengthIn), inputs);
  return { ...interval95(propagated), vaguest: propagated.contributions[0]?.name ?? "headMassG" };
}

function valuesOf(readings: SwingWeightFacts["readings"]): Point<SwingWeightReading> {
  return Object.fromEntries(
    Object.entries(readings).map(([name, { value }]) => [name, value]),
  ) as Point<SwingWeightReading>;
}

function lengthOf(at: Point<SwingWeightReading>, builtLengthIn: number | undefined): number {
  return builtLengthIn ?? at.aloneLengthIn + at.bbgmIn + at.capThicknessIn;
}

function pointsPerG(cgFromButtIn: number): number {
  return swingWeightPoints(ozInFromGIn(cgFromButtIn - swingWeightFulcrumIn)) - swingWeightPoints(0);
}

function pointsOf(at: Point<SwingWeightReading>, builtLengthIn: number | undefined): number {
  const lengthIn = lengthOf(at, builtLengthIn);
  const tipFromButtIn = lengthIn - at.bbgmIn;
  const shaft = shaftAfterTrim({
    massG: at.shaftMassG,
    lengthIn: at.aloneLengthIn,
    balanceFromTipIn: at.balanceFromTipIn,
    tipTrimIn: 0,
    buttTrimIn: Math.max(0, at.aloneLengthIn + at.capThicknessIn - tipFromButtIn),
  });
  if (!shaft.ok) return Number.NaN;
  const club = [
    { massG: at.headMassG, cgFromButtIn: lengthIn - at.cgAlongAxisIn },
    { massG: at.adapterMassG, cgFromButtIn: tipFromButtIn },
    { massG: shaft.massG, cgFromButtIn: tipFromButtIn - shaft.balanceFromTipIn },
    { massG: at.gripMassG, cgFromButtIn: at.cgFromCapIn },
  ];
  return swingWeightPoints(ozInFromGIn(clubFirstMoment(club) - swingWeightFulcrumIn * clubMass(club)));
}
