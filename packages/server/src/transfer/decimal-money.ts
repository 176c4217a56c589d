import { minorDigits } from "@ferrule/core";
import type { RowRefusal } from "./entry.ts";

type CellRefusal = Omit<RowRefusal, "line">;

/**
 * Reads money that is written as a decimal (`28.50` in the column `price`, `EUR` in the column `currency`) and puts it in the cells
 * `price.amountMinor` and `price.currency`, exactly: digits are moved, nothing is calculated. Cells that have it in whole minor
 * units already are left alone.
 */
export function decimalMoney(cells: Map<string, string>, field: string): CellRefusal[] {
  const amount = (cells.get(field) ?? "").trim();
  const currency = (cells.get("currency") ?? "").trim();
  const hasMinor = (cells.get(`${field}.amountMinor`) ?? "") !== "";
  if (amount === "" || hasMinor) return [];
  cells.delete(field);
  cells.delete("currency");
  const code = currency === "" ? (cells.get(`${field}.currency`) ?? "").trim() : currency;
  if (!/^[A-Z]{3}$/.test(code))
    return [{ column: "currency", got: shown(code), expected: "an ISO 4217 code such as EUR" }];
  const amountMinor = minorText(amount, minorDigits(code));
  if (amountMinor === undefined) return [{ column: field, got: shown(amount), expected: expectedOf(code) }];
  cells.set(`${field}.amountMinor`, amountMinor);
  cells.set(`${field}.currency`, code);
  return [];
}

/** The amount in whole minor units, or nothing where it has more decimals than the currency. */
export function minorText(amount: string, digits: number): string | undefined {
  const [, sign, whole, decimals = ""] = /^([+-]?)(\d+)(?:\.(\d+))?$/.exec(amount) ?? [];
  if (whole === undefined || decimals.length > digits) return undefined;
  return `${sign === "-" ? "-" : ""}${whole}${decimals.padEnd(digits, "0")}`;
}

function expectedOf(code: string): string {
  const digits = minorDigits(code);
  return digits === 0
    ? `a whole number of ${code}`
    : `an amount with at most ${digits} decimals, such as 28.${"5".padEnd(digits, "0")}`;
}

function shown(text: string): string {
  return text === "" ? "nothing" : JSON.stringify(text);
}
