const letters = "ABCDEFG";

/** The label of a swing weight counted in points from A0: 32.3 is "D2.3", 32 is "D2.0". */
export function swingWeightText(points: number, decimals = 1): string {
  const scale = 10 ** decimals;
  const rounded = Math.round(points * scale) / scale;
  const step = Math.floor(rounded / 10);
  const letter = letters[step];
  if (letter === undefined) return `${rounded.toFixed(decimals)} points`.replace("-", "−");
  return `${letter}${(rounded - step * 10).toFixed(decimals)}`;
}

/** Points from a label somebody typed, such as "D2" or "c9.5"; `undefined` when it is none. */
export function parseSwingWeight(text: string): number | undefined {
  const match = /^([A-Ga-g])\s*(\d(?:[.,]\d+)?)$/.exec(text.trim());
  if (!match) return undefined;
  const [, letter = "A", rest = "0"] = match;
  return letters.indexOf(letter.toUpperCase()) * 10 + Number(rest.replace(",", "."));
}
