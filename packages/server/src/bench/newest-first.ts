/** Things given in the order in which they were put down, the newest day first and within a day the last put down first. */
export function newestFirst<T>(things: readonly T[], dayOf: (thing: T) => string): T[] {
  return things
    .map((thing, at) => ({ thing, at, day: dayOf(thing) }))
    .sort((a, b) => (a.day === b.day ? b.at - a.at : a.day < b.day ? 1 : -1))
    .map(({ thing }) => thing);
}
