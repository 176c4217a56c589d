/**
 * Pairs rows with columns, each at most once, so that the weights of the pairs add up to the most; the Hungarian method,
 * one row at a time along the cheapest augmenting path (Kuhn, "The Hungarian method for the assignment problem", Naval
 * Research Logistics Quarterly 2, 1955; in the form with potentials of Jonker and Volgenant, Computing 38, 1987).
 * Gives the column of each row, or null.
 */
export function bestPairs(weights: readonly (readonly number[])[]): (number | null)[] {
  const rows = weights.length;
  const columns = weights[0]?.length ?? 0;
  const size = Math.max(rows, columns);
  const cost = (row: number, column: number) => -(weights[row - 1]?.[column - 1] ?? 0);
  const rowOf = columnByColumn(size, cost);
  const columnOf: (number | null)[] = Array(rows).fill(null);
  for (let column = 1; column <= columns; column += 1) {
    const row = rowOf[column]!;
    if (row <= rows) columnOf[row - 1] = column - 1;
  }
  return columnOf;
}

/** The row paired with each column of a square table; counted from 1, index 0 is scratch. */
function columnByColumn(size: number, cost: (row: number, column: number) => number): number[] {
  const rowPotential = Array(size + 1).fill(0);
  const columnPotential = Array(size + 1).fill(0);
  const rowOf: number[] = Array(size + 1).fill(0);
  for (let row = 1; row <= size; row += 1) {
    const previous: number[] = Array(size + 1).fill(0);
    const slack: number[] = Array(size + 1).fill(Number.POSITIVE_INFINITY);
    const used: boolean[] = Array(size + 1).fill(false);
    rowOf[0] = row;
    let at = 0;
    while (rowOf[at] !== 0) {
      used[at] = true;
      let step = Number.POSITIVE_INFINITY;
      let next = 0;
      for (let column = 1; column <= size; column += 1) {
        if (used[column]) continue;
        const spare = cost(rowOf[at]!, column) - rowPotential[rowOf[at]!] - columnPotential[column];
        if (spare < slack[column]!) {
          slack[column] = spare;
          previous[column] = at;
        }
        if (slack[column]! < step) {
          step = slack[column]!;
          next = column;
        }
      }
      for (let column = 0; column <= size; column += 1) {
        if (used[column]) {
          rowPotential[rowOf[column]!] += step;
          columnPotential[column] -= step;
        } else slack[column]! -= step;
      }
      at = next;
    }
    while (at !== 0) {
      rowOf[at] = rowOf[previous[at]!]!;
      at = previous[at]!;
    }
  }
  return rowOf;
}
