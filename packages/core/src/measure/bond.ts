import { mpsFromMph, paFromPsi } from "../units.ts";
import type { ClubParts } from "./build.ts";
import type { ClubNumbers } from "./club-numbers.ts";
import type { BondEstimate } from "./estimate.ts";
import { writtenReading } from "./part-reading.ts";
import { bondShear, swingPull } from "./physics/bond-shear.ts";

/** A hard swing at the head and the radius it turns about at impact: from memory, taken high rather than low. */
const hardSwingMps = mpsFromMph(120);
const impactRadiusM = 1.1;
/** Shear strength of a common shafting epoxy (blog.myostrichgolf.com, 15 October 2006: over 4000 psi). */
const epoxyStrengthPa = paFromPsi(4000);

const caution =
  "A mean over the glued area: peel, twist at impact, heat and poor preparation break joints that this figure calls strong. It never makes a joint safe to swing.";

/** Mean shear between tip and bore in a hard swing; `null` where neither diameter or the depth is known. */
export function bondEstimate(parts: ClubParts, numbers: ClubNumbers): BondEstimate | null {
  const tipDiameterIn = bondDiameter(parts);
  const massG = numbers.headMassG + numbers.adapterMassG + numbers.extraHeadMassG;
  const pullN = swingPull({ massG, speedMps: hardSwingMps, radiusM: impactRadiusM });
  if (tipDiameterIn === undefined || !(numbers.holderDepthIn > 0) || Number.isNaN(pullN)) return null;
  const shear = bondShear({ tipDiameterIn, insertionIn: numbers.holderDepthIn, pullN });
  return { ...shear, strengthPa: epoxyStrengthPa, pullN, caution };
}

/** The tip's own diameter, else that of the bore it is meant for. */
function bondDiameter({ head, adapter, shaft }: ClubParts): number | undefined {
  const bore = adapter
    ? writtenReading(adapter, "bore.diameterIn")
    : writtenReading(head, "socket.diameterIn");
  return (writtenReading(shaft, "tip.diameterIn") ?? bore)?.value;
}
