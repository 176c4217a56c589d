/**
 * How many letters would have to be added, left out, changed or swapped with their neighbour to make one word of another;
 * anything over `most` is `most + 1`. The restricted Damerau–Levenshtein distance.
 */
export function spellingDistance(one: string, other: string, most: number): number {
  if (Math.abs(one.length - other.length) > most) return most + 1;
  let before: number[] = [];
  let above = Array.from({ length: other.length + 1 }, (_, at) => at);
  for (let row = 1; row <= one.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const same = one[row - 1] === other[column - 1];
      let least = Math.min(
        (above[column] as number) + 1,
        (current[column - 1] as number) + 1,
        (above[column - 1] as number) + (same ? 0 : 1),
      );
      const swapped =
        row > 1 && column > 1 && one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      if (swapped) least = Math.min(least, (before[column - 2] as number) + 1);
      current.push(least);
    }
    before = above;
    above = current;
  }
  return Math.min(above[other.length] as number, most + 1);
}
