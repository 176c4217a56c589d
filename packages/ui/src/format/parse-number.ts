/** A plain number from what somebody typed, with a point or a comma; `undefined` when it is none. */
export function parseNumber(text: string): number | undefined {
  const tidy = text.trim().replace("−", "-").replace(",", ".");
  return /^[+-]?(\d+(\.\d+)?|\.\d+)$/.test(tidy) ? Number(tidy) : undefined;
}
