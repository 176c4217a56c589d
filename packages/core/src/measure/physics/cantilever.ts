import { cpmFromRadPerS } from "../../units.ts";

/** A uniform beam clamped at one end with a point mass at the other. */
export interface Cantilever {
  readonly rigidityNM2: number;
  readonly beamLengthM: number;
  readonly beamMassKg: number;
  readonly tipMassKg: number;
  /** 1, the default, is the lowest way of swinging. */
  readonly mode?: number;
}

/**
 * The root βL of 1 + cosβ coshβ + μβ(cosβ sinhβ − sinβ coshβ) = 0, the frequency equation of a uniform cantilever with a tip
 * mass μ times its own (derived from the beam equation; μ = 0 gives the roots printed in the Vishay 2310 manual, p. 104).
 * `massRatio` is 0 or more. Good to rounding for the first ten modes.
 */
export function cantileverRoot({
  massRatio,
  mode = 1,
}: {
  readonly massRatio: number;
  readonly mode?: number;
}): number {
  // Exactly one root lies between these two for every mass ratio: it falls from the free end's towards the pinned end's.
  let below = (mode - 1) * Math.PI;
  let above = (mode - 0.5) * Math.PI + 0.4;
  const signBelow = mode % 2 === 1 ? 1 : -1;
  // Rayleigh's quotient is within 1.5 % of the first root, so Newton's rule needs three or four steps from it.
  let beta = mode === 1 ? (3 / (massRatio + 33 / 140)) ** 0.25 : (below + above) / 2;
  for (let step = 0; step < 60; step++) {
    const { value, slope } = frequencyEquation(beta, massRatio);
    if (value === 0) return beta;
    if (value * signBelow > 0) below = beta;
    else above = beta;
    const newton = beta - value / slope;
    // Newton's rule squares the error: after a step this small the next would only be rounding.
    if (Math.abs(newton - beta) <= 1e-10 * beta) return newton;
    beta = newton > below && newton < above ? newton : (below + above) / 2;
  }
  return beta;
}

/** The natural frequency of a cantilever: ω = β²√(EI/(m L³)), or √(3EI/(M L³)) where the beam itself weighs nothing. */
export function cantileverFrequency(beam: Cantilever): {
  readonly angularRadPerS: number;
  readonly cpm: number;
} {
  const angularRadPerS = Math.sqrt((beam.rigidityNM2 * stiffnessFactor(beam)) / beam.beamLengthM ** 3);
  return { angularRadPerS, cpm: cpmFromRadPerS(angularRadPerS) };
}

/** The flexural rigidity EI in N·m² of a cantilever that swings at a known angular frequency: the inverse of the above. */
export function cantileverRigidity(
  beam: Omit<Cantilever, "rigidityNM2"> & { readonly angularRadPerS: number },
): number {
  return (beam.angularRadPerS ** 2 * beam.beamLengthM ** 3) / stiffnessFactor(beam);
}

/** ω² L³ / EI: β⁴/m of the beam, which tends to 3/M as the beam's mass goes to nothing. */
function stiffnessFactor({
  beamMassKg,
  tipMassKg,
  mode = 1,
}: Omit<Cantilever, "rigidityNM2" | "beamLengthM">): number {
  if (beamMassKg === 0) return 3 / tipMassKg;
  return cantileverRoot({ massRatio: tipMassKg / beamMassKg, mode }) ** 4 / beamMassKg;
}

// Divided by coshβ, which keeps the high modes from overflowing and moves no root.
function frequencyEquation(beta: number, massRatio: number): { value: number; slope: number } {
  const sin = Math.sin(beta);
  const cos = Math.cos(beta);
  const sech = 1 / Math.cosh(beta);
  const tanh = Math.tanh(beta);
  const tip = cos * tanh - sin;
  const value = sech + cos + massRatio * beta * tip;
  const tipSlope = -sin * tanh + cos * sech * sech - cos;
  const slope = -sech * tanh - sin + massRatio * (tip + beta * tipSlope);
  return { value, slope };
}
