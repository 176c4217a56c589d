import { ozInFromGIn } from "../../units.ts";

/** The scale's convention: moments about a fulcrum 14 in from the grip end, A0 at 161.0 oz·in, one point every 1.75 oz·in. */
export const swingWeightFulcrumIn = 14;
const atA0OzIn = 161.0;
const perPointOzIn = 1.75;
const pointsPerLetter = 10;
const letters = ["A", "B", "C", "D", "E", "F", "G"] as const;

export interface SwingWeight {
  readonly momentOzIn: number;
  /** Counted from A0, so that D0 is 30. */
  readonly points: number;
  /** To a tenth of a point: "D2.3"; off the scale "4.0 below A0" or "1.2 above G10". */
  readonly label: string;
  readonly range: "on-scale" | "below-scale" | "above-scale";
}

/** First moment in g·in about a fulcrum so far from the grip end; what a swing-weight scale balances. */
export function momentAboutFulcrum(club: {
  readonly massG: number;
  readonly balanceFromButtIn: number;
  readonly fulcrumIn: number;
}): number {
  return club.massG * (club.balanceFromButtIn - club.fulcrumIn);
}

/**
 * Swing weight of a club from its mass and its balance point from the grip end. The moment about 14 in is the definition on
 * US patent 1,953,916 and in tutelman.com/golf/design/swingwt3.php; the size of a point and of A0 are common practice, no
 * source, and agree with the 50 g·in a point that the latter prints to 0.3 point from A0 to G0.
 */
export function swingWeight(club: {
  readonly massG: number;
  readonly balanceFromButtIn: number;
}): SwingWeight {
  const momentOzIn = ozInFromGIn(momentAboutFulcrum({ ...club, fulcrumIn: swingWeightFulcrumIn }));
  const points = swingWeightPoints(momentOzIn);
  return {
    momentOzIn,
    points,
    label: swingWeightLabel(points),
    range: rangeOf(tenths(points)),
  };
}

/** Points from A0 of a moment in oz·in about 14 in. */
export function swingWeightPoints(momentOzIn: number): number {
  return (momentOzIn - atA0OzIn) / perPointOzIn;
}

/** The moment in oz·in about 14 in at so many points from A0. */
export function momentAtPoints(points: number): number {
  return atA0OzIn + points * perPointOzIn;
}

/** The letter and number of so many points, to a tenth. G10 is the top of the scale. */
export function swingWeightLabel(points: number): string {
  const rounded = tenths(points);
  const range = rangeOf(rounded);
  const top = letters.length * pointsPerLetter;
  if (range === "below-scale") return `${(-rounded / 10).toFixed(1)} below A0`;
  if (range === "above-scale") return `${(rounded / 10 - top).toFixed(1)} above G10`;
  const letter = Math.min(Math.floor(rounded / (10 * pointsPerLetter)), letters.length - 1);
  return `${letters[letter]}${(rounded / 10 - letter * pointsPerLetter).toFixed(1)}`;
}

// Rounded before it is split into a letter and a number: 29.96 is D0.0, never C10.0. Whole tenths have no rounding slips.
function tenths(points: number): number {
  return Math.round(points * 10);
}

function rangeOf(roundedTenths: number): SwingWeight["range"] {
  if (roundedTenths < 0) return "below-scale";
  return roundedTenths > 10 * letters.length * pointsPerLetter ? "above-scale" : "on-scale";
}
