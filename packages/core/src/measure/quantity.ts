import type { BuiltClub } from "./built-club.ts";
import type { NumberKey } from "./club-numbers.ts";
import type { Estimates } from "./estimate.ts";

/** One thing to estimate of a club: its public name, its figure, and what it cannot do without. */
export interface Quantity {
  readonly name: Exclude<keyof Estimates, "settings" | "bond" | "missing">;
  /** Figures that have to be known; the first that is not is named as missing. */
  readonly needs: readonly NumberKey[];
  /** The figure in the unit of the name; NaN where something it rests on is missing. */
  readonly of: (club: BuiltClub) => number;
  /** Figures that never move it, for a quantity too dear to work out again for nothing. */
  readonly still?: ReadonlySet<NumberKey>;
}

/** What every length of a club rests on. */
export const lengthNeeds = [
  "statedLengthIn",
  "bbgmIn",
  "seatToGroundIn",
  "tipStopFromSeatIn",
  "capThicknessIn",
] as const satisfies readonly NumberKey[];

/** What the mass of a club rests on. */
export const massNeeds = [
  "headMassG",
  "shaftMassG",
  "gripMassG",
  "adapterMassG",
  "tapeMassG",
  "epoxyMassG",
  "ferruleMassG",
] as const satisfies readonly NumberKey[];

/** What the place of every mass rests on. */
export const momentNeeds = [
  ...massNeeds,
  ...lengthNeeds,
  "balanceFraction",
  "balanceFromTipIn",
  "cgAlongAxisIn",
  "gripCgFromCapIn",
  "gripLengthIn",
  "holderDepthIn",
  "adapterCgAboveTipStopIn",
] as const satisfies readonly NumberKey[];
