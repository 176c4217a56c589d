import { fixedText } from "./number.ts";

/** "9 weeks", "1 week"; at most one decimal. */
export function weeksText(weeks: number): string {
  const text = String(Number(weeks.toFixed(weeks < 10 ? 1 : 0)));
  return `${text} ${text === "1" ? "week" : "weeks"}`;
}

/** "20 days (6–60)". */
export function daysText({ value, low, high }: { value: number; low: number; high: number }): string {
  const [lowText, highText] = [fixedText(low, 0), fixedText(high, 0)];
  const text = `${fixedText(value, 0)} ${fixedText(value, 0) === "1" ? "day" : "days"}`;
  return lowText === highText ? text : `${text} (${lowText}–${highText})`;
}
