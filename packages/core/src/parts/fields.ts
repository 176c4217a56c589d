/** What a numeric field means, which unit it is in, what range is believable and how good a bare number is taken to be. */
export interface FieldMeaning {
  /** The unit as its suffix says it. */
  readonly unit: "in" | "g" | "deg" | "cm3" | "cpm" | "none";
  readonly min: number;
  readonly max: number;
  readonly meaning: string;
  /** Standard uncertainty of a bare number, by where it came from, in the field's own unit. */
  readonly plusMinus: { readonly measured: number; readonly stated: number; readonly catalogue: number };
}

function field(
  unit: FieldMeaning["unit"],
  range: readonly [number, number],
  uncertainty: readonly [measured: number, stated: number, catalogue: number],
  meaning: string,
): FieldMeaning {
  const [measured, stated, catalogue] = uncertainty;
  return { unit, min: range[0], max: range[1], meaning, plusMinus: { measured, stated, catalogue } };
}

/**
 * Every numeric field of a part, by its path from the part. Ranges refuse slips of the keyboard (a length in millimetres,
 * a mass in ounces), not odd clubs. Default uncertainties are common practice, no source: half a division of the usual
 * instrument when measured, a rounding of the words when stated.
 */
export const fields = {
  loftDeg: field(
    "deg",
    [-20, 80],
    [0.25, 0.6, 0.6],
    "angle between the face and the shaft axis' vertical plane",
  ),
  lieDeg: field("deg", [40, 90], [0.3, 0.6, 0.6], "angle between the shaft axis and the ground, sole flat"),
  faceAngleDeg: field(
    "deg",
    [-10, 10],
    [0.3, 0.6, 0.6],
    "where the face looks when the club is soled, closed is positive",
  ),
  massG: field("g", [0.5, 1000], [0.5, 2, 2], "mass"),
  volumeCm3: field("cm3", [10, 1000], [3, 5, 5], "volume of the head"),
  heelToToeIn: field(
    "in",
    [0.5, 10],
    [0.03, 0.06, 0.06],
    "widest measure of the head from heel to toe, at 60 degrees of lie",
  ),
  faceToBackIn: field(
    "in",
    [0.2, 10],
    [0.03, 0.06, 0.06],
    "measure of the head from face to back, at 60 degrees of lie",
  ),
  soleToCrownIn: field(
    "in",
    [0.2, 10],
    [0.03, 0.06, 0.06],
    "measure of the head from sole to crown, at 60 degrees of lie",
  ),
  neckToSoleIn: field(
    "in",
    [0, 10],
    [0.03, 0.06, 0.06],
    "length of the neck from its top to the sole, along its axis",
  ),
  soleRadiusIn: field("in", [0.5, 60], [0.5, 1, 1], "radius of the sole from heel to toe"),
  cgAlongAxisIn: field(
    "in",
    [-1, 4],
    [0.1, 0.2, 0.2],
    "centre of mass of the head projected on the shaft axis, above the ground line",
  ),
  "socket.diameterIn": field("in", [0.2, 0.7], [0.0005, 0.002, 0.002], "inside diameter of the bore"),
  "socket.depthIn": field("in", [0.1, 4], [0.03, 0.06, 0.06], "how deep the bore takes the shaft"),
  "socket.bbgmIn": field(
    "in",
    [-0.5, 4],
    [0.03, 0.06, 0.06],
    "bottom of bore to ground, along the shaft axis",
  ),
  "socket.outsideDiameterIn": field(
    "in",
    [0.3, 1],
    [0.002, 0.005, 0.005],
    "outside diameter of the hosel at its top",
  ),
  "socket.seatToGroundIn": field(
    "in",
    [0.2, 5],
    [0.03, 0.06, 0.06],
    "from the face the adapter's shoulder rests on to the ground, along the shaft axis",
  ),
  "bore.diameterIn": field("in", [0.2, 0.7], [0.0005, 0.002, 0.002], "inside diameter of the adapter's bore"),
  "bore.depthIn": field("in", [0.1, 4], [0.03, 0.06, 0.06], "how deep the adapter's bore takes the shaft"),
  tipStopFromSeatIn: field(
    "in",
    [-2, 3],
    [0.03, 0.06, 0.06],
    "how far below the seat the shaft tip stops, downwards positive",
  ),
  tiltDeg: field("deg", [0, 5], [0.1, 0.25, 0.25], "angle of the adapter's bore to its own axis"),
  rawLengthIn: field("in", [20, 60], [0.06, 0.06, 0.06], "length of the shaft as it left the maker"),
  rawMassG: field("g", [20, 200], [0.5, 2, 2], "mass of the shaft as it left the maker"),
  "length.lengthIn": field("in", [10, 60], [0.06, 0.125, 0.06], "length, on the basis stated beside it"),
  "tip.diameterIn": field("in", [0.2, 0.7], [0.0005, 0.002, 0.002], "diameter of the shaft at its tip"),
  "tip.parallelSectionIn": field(
    "in",
    [0, 40],
    [0.1, 0.25, 0.25],
    "length from the tip over which the diameter stays the same, as it is now",
  ),
  "tip.trimmedIn": field("in", [0, 12], [0.06, 0.125, 0.125], "how much has been cut from the tip already"),
  buttDiameterIn: field("in", [0.3, 0.9], [0.001, 0.005, 0.005], "outside diameter near the butt"),
  balanceFromTipIn: field(
    "in",
    [3, 45],
    [0.06, 0.125, 0.25],
    "balance point of the shaft alone, from its tip",
  ),
  "frequency.cpm": field(
    "cpm",
    [50, 600],
    [1, 3, 3],
    "cycles a minute with the butt clamped and a mass at the tip",
  ),
  "frequency.clampIn": field("in", [0.5, 12], [0.06, 0.06, 0.06], "length of butt held in the clamp"),
  "frequency.tipMassG": field("g", [10, 500], [0.5, 1, 1], "mass at the tip when the frequency was read"),
  "frequency.beamLengthIn": field(
    "in",
    [10, 50],
    [0.06, 0.125, 0.125],
    "free length from the clamp to the tip mass",
  ),
  torqueDeg: field("deg", [0.5, 15], [0.1, 0.2, 0.2], "twist of the shaft as its maker states it"),
  coreDiameterIn: field("in", [0.4, 0.8], [0.003, 0.005, 0.005], "inside diameter of the grip"),
  lengthIn: field("in", [3, 25], [0.06, 0.06, 0.06], "length of the grip"),
  outsideDiameterIn: field("in", [0.5, 3], [0.005, 0.01, 0.01], "widest cross-section of the grip"),
  capThicknessIn: field("in", [0, 1], [0.02, 0.03, 0.03], "how far the grip's cap stands beyond the shaft"),
  cgFromCapIn: field("in", [0.5, 20], [0.1, 0.2, 0.2], "centre of mass of the grip from its cap end"),
} as const satisfies Record<string, FieldMeaning>;

/** The path of a numeric field of a part. */
export type FieldPath = keyof typeof fields;
