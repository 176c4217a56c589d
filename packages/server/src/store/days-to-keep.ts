const keptDays = 7;
const keptWeeks = 4;
const keptMonths = 12;
const dayMs = 86_400_000;

/**
 * Which of the days of backups are kept: the latest 7; the last of each of the latest 4 weeks, Monday to Sunday; the last of each of
 * the latest 12 months. Only days with a backup count, so that none is lost for a bench that rests.
 */
export function daysToKeep(days: readonly string[]): string[] {
  const latestFirst = [...new Set(days)].sort().reverse();
  return [
    ...new Set([
      ...latestFirst.slice(0, keptDays),
      ...lastOfEach(latestFirst, mondayOf).slice(0, keptWeeks),
      ...lastOfEach(latestFirst, monthOf).slice(0, keptMonths),
    ]),
  ];
}

function lastOfEach(latestFirst: readonly string[], spanOf: (day: string) => string): string[] {
  return latestFirst.filter((day, at) => at === 0 || spanOf(day) !== spanOf(latestFirst[at - 1] as string));
}

const monthOf = (day: string) => day.slice(0, 7);

function mondayOf(day: string): string {
  const noonMs = Date.parse(`${day}T12:00:00Z`);
  const sinceMonday = (new Date(noonMs).getUTCDay() + 6) % 7;
  return new Date(noonMs - sinceMonday * dayMs).toISOString().slice(0, 10);
}
