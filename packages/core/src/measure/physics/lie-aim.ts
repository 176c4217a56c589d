import { degFromRad, radFromDeg } from "../../units.ts";

/**
 * How far off the target a square leading edge looks when the lie is wrong by `lieErrorDeg`, in degrees: the normal of a face
 * of some loft, rolled about the target line, points atan(tan(loft)·sin(Δlie)) aside. Positive, towards the heel side, when
 * the toe is up. Derived from vectors, no published source.
 */
export function lieAim(given: { readonly loftDeg: number; readonly lieErrorDeg: number }): number {
  return degFromRad(Math.atan(Math.tan(radFromDeg(given.loftDeg)) * Math.sin(radFromDeg(given.lieErrorDeg))));
}
