import { degFromRad, radFromDeg } from "../../units.ts";

/** Where the grip end is when the club is soled: its height above the ground and its distance along it from the heel. */
export function addressTriangle(club: { readonly lengthIn: number; readonly lieDeg: number }): {
  readonly heightIn: number;
  readonly reachIn: number;
} {
  const lieRad = radFromDeg(club.lieDeg);
  return {
    heightIn: club.lengthIn * Math.sin(lieRad),
    reachIn: club.lengthIn * Math.cos(lieRad),
  };
}

/**
 * The lie in degrees that keeps the hands of a player as high on a club of another length. Not a number where the club is too
 * short to reach them.
 */
export function lieKeepingHandHeight(given: {
  readonly lengthIn: number;
  readonly lieDeg: number;
  readonly newLengthIn: number;
}): number {
  return degFromRad(Math.asin(addressTriangle(given).heightIn / given.newLengthIn));
}
