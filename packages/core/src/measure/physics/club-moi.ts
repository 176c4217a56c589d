import { kgCm2FromGIn2 } from "../../units.ts";
import { clubFirstMoment } from "./club-balance.ts";
import type { ClubComponent } from "./club-component.ts";
import { clubMass } from "./club-mass.ts";

/**
 * Moment of inertia in kg·cm² about an axis across the shaft, so far from the grip end: the grip end itself (0) is the
 * trade's axis (tutelman.com, "MOImatchAxis"). Own inertias and Steiner's terms, so I(a) = I(0) − 2aM + a²W.
 */
export function clubMoi(components: readonly ClubComponent[], axisFromButtIn = 0): number {
  let aboutButtGIn2 = 0;
  for (const { massG, cgFromButtIn, ownMoiGIn2 } of components)
    aboutButtGIn2 += ownMoiGIn2 + massG * cgFromButtIn ** 2;
  const shiftGIn2 =
    axisFromButtIn ** 2 * clubMass(components) - 2 * axisFromButtIn * clubFirstMoment(components);
  return kgCm2FromGIn2(aboutButtGIn2 + shiftGIn2);
}

/** Own moment of inertia in g·in² of a uniform thin rod about its middle: m l²/12. */
export function rodOwnMoi(rod: { readonly massG: number; readonly lengthIn: number }): number {
  return (rod.massG * rod.lengthIn ** 2) / 12;
}
