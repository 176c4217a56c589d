/** A day as it is kept, "2026-05-31", by the clock on the wall. */
export function dayText(day: Date): string {
  const two = (count: number) => String(count).padStart(2, "0");
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
}
