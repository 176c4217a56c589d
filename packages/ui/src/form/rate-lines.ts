import { parseNumber } from "../format/parse-number.ts";

/** Rates of exchange as lines, "GBP 1.17": what one of that currency is worth in the bench's own. */
export function rateLines(rates: Readonly<Record<string, number>>): string {
  return Object.entries(rates)
    .map(([code, rate]) => `${code} ${rate}`)
    .join("\n");
}

/** The rates that lines describe; `undefined` when one of them cannot be read. */
export function ratesFromLines(text: string): Record<string, number> | undefined {
  const lines = text
    .split("\n")
    .map((line) => line.trim())
    .filter(Boolean);
  const rates = lines.map((line) => {
    const [, code = "", rateText = ""] = /^([A-Za-z]{3})[\s:=]+(\S+)$/.exec(line) ?? [];
    return [code.toUpperCase(), parseNumber(rateText)] as const;
  });
  return rates.every(([, rate]) => rate !== undefined && rate > 0)
    ? (Object.fromEntries(rates) as Record<string, number>)
    : undefined;
}
