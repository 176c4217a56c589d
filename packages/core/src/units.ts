/**
 * The only place where a number changes its unit. Every constant is exact by definition: the international yard and pound
 * agreement of 1959 (1 in = 25.4 mm, 1 lb = 453.59237 g, both in NIST SP 811 appendix B), the standard acceleration of
 * gravity of the 3rd CGPM (1901), and the degree. Functions are named target-from-source.
 */
export const mmPerIn = 25.4;
export const gPerLb = 453.59237;
export const gPerOz = gPerLb / 16;
export const gravityMps2 = 9.80665;

const nPerLbf = (gPerLb / 1000) * gravityMps2;
const mPerIn = mmPerIn / 1000;
const paPerPsi = nPerLbf / (mPerIn * mPerIn);
const cmPerIn = mmPerIn / 10;
const kgCm2PerGIn2 = (cmPerIn * cmPerIn) / 1000;
const mpsPerMph = 0.44704;
const radPerDeg = Math.PI / 180;

export function mmFromIn(lengthIn: number): number {
  return lengthIn * mmPerIn;
}

export function inFromMm(lengthMm: number): number {
  return lengthMm / mmPerIn;
}

export function cmFromIn(lengthIn: number): number {
  return (lengthIn * mmPerIn) / 10;
}

export function inFromCm(lengthCm: number): number {
  return (lengthCm * 10) / mmPerIn;
}

export function mFromIn(lengthIn: number): number {
  return (lengthIn * mmPerIn) / 1000;
}

export function inFromM(lengthM: number): number {
  return (lengthM * 1000) / mmPerIn;
}

export function gFromOz(massOz: number): number {
  return massOz * gPerOz;
}

export function ozFromG(massG: number): number {
  return massG / gPerOz;
}

export function gFromLb(massLb: number): number {
  return massLb * gPerLb;
}

export function lbFromG(massG: number): number {
  return massG / gPerLb;
}

export function kgFromG(massG: number): number {
  return massG / 1000;
}

export function gFromKg(massKg: number): number {
  return massKg * 1000;
}

export function ozInFromGIn(momentGIn: number): number {
  return momentGIn / gPerOz;
}

export function gInFromOzIn(momentOzIn: number): number {
  return momentOzIn * gPerOz;
}

export function kgCm2FromGIn2(moiGIn2: number): number {
  return moiGIn2 * kgCm2PerGIn2;
}

export function gIn2FromKgCm2(moiKgCm2: number): number {
  return moiKgCm2 / kgCm2PerGIn2;
}

export function nFromLbf(forceLbf: number): number {
  return forceLbf * nPerLbf;
}

export function lbfFromN(forceN: number): number {
  return forceN / nPerLbf;
}

export function paFromPsi(stressPsi: number): number {
  return stressPsi * paPerPsi;
}

export function psiFromPa(stressPa: number): number {
  return stressPa / paPerPsi;
}

export function mpsFromMph(speedMph: number): number {
  return speedMph * mpsPerMph;
}

export function mphFromMps(speedMps: number): number {
  return speedMps / mpsPerMph;
}

export function radFromDeg(angleDeg: number): number {
  return angleDeg * radPerDeg;
}

export function degFromRad(angleRad: number): number {
  return angleRad / radPerDeg;
}

export function hzFromCpm(frequencyCpm: number): number {
  return frequencyCpm / 60;
}

export function cpmFromHz(frequencyHz: number): number {
  return frequencyHz * 60;
}

export function radPerSFromCpm(frequencyCpm: number): number {
  return (frequencyCpm * 2 * Math.PI) / 60;
}

export function cpmFromRadPerS(angularRadPerS: number): number {
  return (angularRadPerS * 60) / (2 * Math.PI);
}
