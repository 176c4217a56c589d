/** Today's date where this program runs, as "2026-11-25": a deal is dated by the user's own day. */
export function localToday(): string {
  const now = new Date();
  const twoDigits = (count: number) => String(count).padStart(2, "0");
  return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
}
