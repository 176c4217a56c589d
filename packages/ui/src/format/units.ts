/** Exact conversions for what people type and read; inches are the product's own unit. */
const cmPerIn = 2.54;
const mmPerIn = 25.4;

export function cmFromIn(valueIn: number): number {
  return valueIn * cmPerIn;
}

export function inFromCm(valueCm: number): number {
  return valueCm / cmPerIn;
}

export function mmFromIn(valueIn: number): number {
  return valueIn * mmPerIn;
}

export function inFromMm(valueMm: number): number {
  return valueMm / mmPerIn;
}
