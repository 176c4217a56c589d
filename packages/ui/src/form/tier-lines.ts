import { moneyInput, parseMoney } from "../format/money.ts";
import { parseNumber } from "../format/parse-number.ts";

interface Tier {
  readonly upToMinor: number | null;
  readonly percent: number;
}

/** Tiers as somebody would read them out: "5 % up to 25.00", then "1 % of the rest". */
export function tierLines(tiers: readonly Tier[], currency: string): string {
  return tiers
    .map(
      ({ upToMinor, percent }) =>
        `${percent} % ${upToMinor === null ? "of the rest" : `up to ${moneyInput(upToMinor, currency)}`}`,
    )
    .join("\n");
}

/** The tiers that lines describe; `undefined` when one of them cannot be read. A line without an end is the rest. */
export function tiersFromLines(text: string, currency: string): Tier[] | undefined {
  const lines = text
    .split("\n")
    .map((line) => line.trim())
    .filter(Boolean);
  const tiers = lines.map((line) => tierFromLine(line, currency));
  return tiers.length > 0 && tiers.every((tier) => tier !== undefined) ? tiers : undefined;
}

function tierFromLine(line: string, currency: string): Tier | undefined {
  const [, percentText = "", upToText] = /^([\d.,]+)\s*%?\s*(?:of the rest|up to\s+(.+))?$/i.exec(line) ?? [];
  const percent = parseNumber(percentText);
  const upToMinor = upToText === undefined ? null : parseMoney(upToText, currency);
  return percent === undefined || percent > 100 || upToMinor === undefined
    ? undefined
    : { upToMinor, percent };
}
