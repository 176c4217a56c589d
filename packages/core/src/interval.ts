/** A closed range of values; the unit is in the name of the field that holds it. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** An interval from its two ends. Throws when they are out of order or not numbers, which is our bug. */
export function makeInterval(low: number, high: number): Interval {
  if (!(low <= high)) throw new RangeError(`an interval needs low <= high, got ${low} and ${high}`);
  return { low, high };
}

export function intervalWidth(interval: Interval): number {
  return interval.high - interval.low;
}

/** Whether the two share at least one point: touching ends do. */
export function intervalsOverlap(one: Interval, other: Interval): boolean {
  return one.low <= other.high && other.low <= one.high;
}

/** Whether the value lies in the interval, ends included. */
export function intervalContains(interval: Interval, value: number): boolean {
  return interval.low <= value && value <= interval.high;
}

/** Whether the whole of `inner` lies in `outer`, ends included. */
export function intervalEncloses(outer: Interval, inner: Interval): boolean {
  return outer.low <= inner.low && inner.high <= outer.high;
}
