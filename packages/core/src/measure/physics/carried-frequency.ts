import { kgFromG, mFromIn, radPerSFromCpm } from "../../units.ts";
import { cantileverFrequency, cantileverRigidity } from "./cantilever.ts";
import { type ShaftRefusal, shaftAfterTrim } from "./shaft-after-trim.ts";

/** A shaft in a clamp: the free length from the clamp to the tip mass, the mass of that length, and the mass at its end. */
export interface LoadedShaft {
  readonly beamLengthIn: number;
  readonly beamMassG: number;
  readonly tipMassG: number;
}

/**
 * A frequency read on one beam carried to another: the reading gives the rigidity EI of a uniform cantilever, which is then
 * swung at the other length and masses. Exact for a uniform shaft; one that stiffens towards the butt changes a little more
 * with tip trim and a little less with butt trim. Derived from the beam equation, no published source for shafts.
 */
export function carriedFrequency(given: {
  readonly reading: LoadedShaft & { readonly cpm: number };
  readonly target: LoadedShaft;
}): { readonly cpm: number; readonly rigidityNM2: number } {
  const rigidityNM2 = cantileverRigidity({
    ...siBeam(given.reading),
    angularRadPerS: radPerSFromCpm(given.reading.cpm),
  });
  const { cpm } = cantileverFrequency({ ...siBeam(given.target), rigidityNM2 });
  return { cpm, rigidityNM2 };
}

/**
 * The part of a bare shaft that is free to swing when `clampIn` of its butt is held: its length and, by the straight line of
 * density, its mass. Returns the refusal of `shaftAfterTrim` where that line does not hold.
 */
export function beamBeyondClamp(shaft: {
  readonly massG: number;
  readonly lengthIn: number;
  readonly balanceFromTipIn: number;
  readonly clampIn: number;
}):
  | {
      readonly ok: true;
      readonly beamLengthIn: number;
      readonly beamMassG: number;
    }
  | ShaftRefusal {
  const free = shaftAfterTrim({
    ...shaft,
    tipTrimIn: 0,
    buttTrimIn: shaft.clampIn,
  });
  return free.ok ? { ok: true, beamLengthIn: free.lengthIn, beamMassG: free.massG } : free;
}

function siBeam({ beamLengthIn, beamMassG, tipMassG }: LoadedShaft) {
  return {
    beamLengthM: mFromIn(beamLengthIn),
    beamMassKg: kgFromG(beamMassG),
    tipMassKg: kgFromG(tipMassG),
  };
}
