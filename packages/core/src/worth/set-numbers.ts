/** Irons and wedges in the order of a set, longest first. */
const order: readonly string[] = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "PW", "AW", "GW", "SW", "LW"];

/** The club numbers that a set such as `4-PW` holds, both ends included; a single number is a set of itself. */
export function setNumbers(clubNumber: string): string[] {
  const [from, to, ...more] = clubNumber
    .toUpperCase()
    .split("-")
    .map((piece) => piece.trim());
  const first = order.indexOf(from ?? "");
  const last = order.indexOf(to ?? "");
  if (more.length > 0 || first < 0 || last <= first) return [clubNumber];
  // A set that ends beyond the pitching wedge rarely has both an approach and a gap wedge: they are two names of one club.
  return order.slice(first, last + 1).filter((number) => number !== (to === "GW" ? "AW" : "GW"));
}
