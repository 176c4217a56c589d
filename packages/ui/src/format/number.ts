/** A number with at most so many decimals, without idle zeros; the minus is a true minus sign. */
export function numberText(value: number, decimals: number): string {
  const text = String(Number(value.toFixed(decimals)));
  return text.replace(/^-0$/, "0").replace("-", "−");
}

/** A number with exactly so many decimals, for figures that stand under each other. */
export function fixedText(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return (Number(text) === 0 ? text.replace("-", "") : text).replace("-", "−");
}

/** How many decimals an interval deserves: its last digit is at most about half of its half width. */
export function decimalsFor(low: number, high: number, most: number): number {
  const half = (high - low) / 2;
  if (!(half > 0)) return most;
  return Math.min(most, Math.max(0, Math.ceil(-Math.log10(half / 2) - 1e-9)));
}

/** "12 clubs", "1 club". */
export function countText(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString("en-GB")} ${count === 1 ? one : many}`;
}
