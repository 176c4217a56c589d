import { mmFromIn } from "../units.ts";

/** A length as it is set out at the bench: to the nearest 1/32 in on one rule and the nearest 0.5 mm on the other. */
export interface WorkshopLength {
  readonly nearestIn: number;
  readonly nearestMm: number;
}

const partsPerIn = 32;
const partsPerMm = 2;

/** Both are rounded from the length itself, never one from the other; halves go away from nothing. */
export function workshopLength(lengthIn: number): WorkshopLength {
  return {
    nearestIn: nearest(lengthIn, partsPerIn),
    nearestMm: nearest(mmFromIn(lengthIn), partsPerMm),
  };
}

function nearest(value: number, partsPerUnit: number): number {
  const parts = Math.round(Math.abs(value) * partsPerUnit);
  return parts === 0 ? 0 : (Math.sign(value) * parts) / partsPerUnit;
}
