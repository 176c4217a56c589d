import { kgFromG, mFromIn, psiFromPa } from "../../units.ts";

/** The glued cylinder between a tip and its bore. */
export interface Bond {
  readonly tipDiameterIn: number;
  readonly insertionIn: number;
}

/** Glued area in m²: π d ℓ. */
export function bondArea(bond: Bond): number {
  return Math.PI * mFromIn(bond.tipDiameterIn) * mFromIn(bond.insertionIn);
}

/**
 * Mean shear in the bond under an axial pull: τ = F/(π d ℓ). Information and never permission: peel, twist at impact and a
 * badly prepared joint govern in practice, and the mean says nothing of them. Derived, no published source.
 */
export function bondShear(given: Bond & { readonly pullN: number }): {
  readonly shearPa: number;
  readonly shearPsi: number;
} {
  const shearPa = given.pullN / bondArea(given);
  return { shearPa, shearPsi: psiFromPa(shearPa) };
}

/** The pull in newtons that holds a mass on a circle: m v²/r. */
export function swingPull(given: {
  readonly massG: number;
  readonly speedMps: number;
  readonly radiusM: number;
}): number {
  return (kgFromG(given.massG) * given.speedMps ** 2) / given.radiusM;
}

/** The pull in newtons at which the mean shear would reach the epoxy's strength: an upper bound no joint attains. */
export function bondCapacity(given: Bond & { readonly strengthPa: number }): number {
  return given.strengthPa * bondArea(given);
}
