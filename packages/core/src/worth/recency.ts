/** A price counts half as much for every year of its age: from memory; second-hand prices drift by about their own spread in a year. */
export const halfLifeDays = 365;

const msPerDay = 86_400_000;

/** Whole days from one calendar date to another, such as 2026-05-31; negative where the second is earlier. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / msPerDay);
}

/** How much a price of that day counts today, from 1 down. A day that is still to come counts as today. */
export function recencyWeight(on: string, today: string): number {
  return 0.5 ** (Math.max(0, daysBetween(on, today)) / halfLifeDays);
}
