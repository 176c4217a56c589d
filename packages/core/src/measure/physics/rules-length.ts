import { radFromDeg } from "../../units.ts";

/** The angle between the two planes of the procedure (R&A and USGA, Club Length, Rev 1.1 of 2 January 2007, s. 5.0.1). */
const planesDeg = 60;

/** What the difference between the trade's length and that of the Rules depends on. */
export interface RuledClub {
  /** Along the shaft axis, from where it meets the ground with the sole flat to the end of the grip. */
  readonly playingLengthIn: number;
  readonly lieDeg: number;
  /** Of the sole from heel to toe. */
  readonly soleRadiusIn: number;
  /** From where the shaft axis meets the ground to where the sole touches it, towards the toe. */
  readonly contactFromAxisIn: number;
}

/**
 * Length in inches by the method of the Rules: the club lies on a horizontal plane with its sole against a plane at 60°, and
 * the length runs from the line where the planes meet to the end of the grip.
 *
 * The plane at 60° is the ground at a lie of 60°, so the club is the trade's club rolled on its sole from its own lie Λ to
 * θ = 60°. In the plane of shaft and sole, put the origin where the axis meets the ground at the true lie, u along the axis
 * towards the grip and v across it towards the toe. The sole is a circle of radius R that touches the ground c from the
 * origin, so its centre has u = R sinΛ − c cosΛ and v = R cosΛ + c sinΛ. A ground at θ to the axis, touching that circle,
 * meets the axis at u₀ with (u − u₀) sinθ + v cosθ = R, hence
 *     length = playing length − u₀ = playing length + [R(1 − cos(Λ − θ)) − c sin(Λ − θ)] / sinθ.
 * The shaft's own thickness shifts both lengths by nearly as much (by 0.01 in more for 2° of lie) and is left out.
 * Derived, no published source. tutelman.com/golf/measure/ruler.php finds less than 1/8 in for typical clubs, barely
 * above 1/16 in for a driver of 58°.
 */
export function rulesLength(club: RuledClub): number {
  const turnRad = radFromDeg(club.lieDeg - planesDeg);
  const rolledIn = club.soleRadiusIn * (1 - Math.cos(turnRad)) - club.contactFromAxisIn * Math.sin(turnRad);
  return club.playingLengthIn + rolledIn / Math.sin(radFromDeg(planesDeg));
}
