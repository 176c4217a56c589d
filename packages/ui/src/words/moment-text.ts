import { dayText } from "../format/today.ts";

/** A moment by the clock on the wall: the time alone where it is of today, such as "14:05". */
export function momentText(moment: string, now: Date = new Date()): string {
  const at = new Date(moment);
  const time = [at.getHours(), at.getMinutes()].map((each) => String(each).padStart(2, "0")).join(":");
  return dayText(at) === dayText(now) ? time : `${dayText(at)} ${time}`;
}
