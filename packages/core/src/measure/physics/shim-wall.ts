/** Wall of the shim that centres a tip in a wider bore, both diameters nominal: negative where the tip is the wider. */
export function shimWall(given: { readonly boreDiameterIn: number; readonly tipDiameterIn: number }): number {
  return (given.boreDiameterIn - given.tipDiameterIn) / 2;
}
