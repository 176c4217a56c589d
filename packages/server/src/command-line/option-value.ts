import type { Given } from "./command.ts";
import { WrongUse } from "./wrong-use.ts";

/** A number, such as 4 or 2.5, between two bounds; nothing where the option was not given. */
export function numberOption(given: Given, option: string, low: number, high: number): number | undefined {
  const text = given.value(option);
  if (text === undefined) return undefined;
  const number = /^\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  if (number >= low && number <= high) return number;
  throw new WrongUse(`--${option} is ${JSON.stringify(text)}, expected a number from ${low} to ${high}`);
}

/** One of some words; nothing where the option was not given. */
export function wordOption<Word extends string>(
  given: Given,
  option: string,
  words: readonly Word[],
): Word | undefined {
  const text = given.value(option);
  if (text === undefined) return undefined;
  const word = words.find((known) => known === text);
  if (word !== undefined) return word;
  throw new WrongUse(`--${option} is ${JSON.stringify(text)}, expected one of ${words.join(", ")}`);
}

/** A date such as 2026-11-25; nothing where the option was not given. */
export function dateOption(given: Given, option: string): string | undefined {
  const text = given.value(option);
  if (text === undefined || isDate(text)) return text;
  throw new WrongUse(`--${option} is ${JSON.stringify(text)}, expected a date such as 2026-11-25`);
}

function isDate(text: string): boolean {
  const date = new Date(`${text}T00:00:00Z`);
  return (
    /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text)
  );
}
