import { parseNumber } from "../format/parse-number.ts";

/** Adapter settings as they are typed: one a line, the label, then the degrees it is turned by ("Upright 180"). */
export function settingsFromText(text: string): { label: string; rotationDeg: number | string }[] {
  const lines = text
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");
  return lines.map((line) => {
    const at = line.lastIndexOf(" ");
    const degrees = line.slice(at + 1);
    return { label: at < 0 ? line : line.slice(0, at).trim(), rotationDeg: parseNumber(degrees) ?? degrees };
  });
}

export function settingsText(settings: unknown): string {
  const rows = settings as readonly { label: string; rotationDeg: number }[];
  return rows.map(({ label, rotationDeg }) => `${label} ${rotationDeg}`).join("\n");
}
