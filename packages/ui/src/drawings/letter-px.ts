/** The width of a monospaced letter 12 px high: 0.6 em is what such faces share, and a hair more does no harm. */
export const letterPx = 7.3;

/** Where the middle of a label goes: as near to `atPx` as can be without a letter of it beyond a picture that is `widthPx` wide. */
export function middleWithin(label: string, atPx: number, widthPx: number): number {
  const half = (label.length * letterPx) / 2;
  return Math.max(half, Math.min(widthPx - half, atPx));
}
