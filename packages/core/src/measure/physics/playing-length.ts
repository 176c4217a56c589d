/** What lies between a cut shaft and a club's playing length, all along the shaft axis. */
export interface LengthParts {
  /** Bottom of bore to ground: where the tip stops, above the ground line. */
  readonly bbgmIn: number;
  /** How far the grip's cap stands beyond the butt. */
  readonly capThicknessIn: number;
}

/** Bottom of bore to ground in inches: hosel length less insertion depth (Hireko blog, January 2011). */
export function bottomOfBoreToGround(given: {
  readonly hoselLengthIn: number;
  readonly insertionIn: number;
}): number {
  return given.hoselLengthIn - given.insertionIn;
}

/** The same for a head that takes an adapter: the seat's height less how far below it the tip stops. */
export function bottomOfBoreThroughAdapter(given: {
  readonly seatToGroundIn: number;
  readonly tipStopFromSeatIn: number;
}): number {
  return given.seatToGroundIn - given.tipStopFromSeatIn;
}

/** Playing length in inches of a shaft cut to `cutLengthIn` from tip to butt. */
export function playingLength(given: LengthParts & { readonly cutLengthIn: number }): number {
  return given.cutLengthIn + given.bbgmIn + given.capThicknessIn;
}

/**
 * The length in inches to cut a shaft to, tip to butt, for a playing length (tutelman.com/golf/design/flex4.php, without
 * the cap).
 */
export function cutLength(given: LengthParts & { readonly playingLengthIn: number }): number {
  return given.playingLengthIn - given.bbgmIn - given.capThicknessIn;
}
