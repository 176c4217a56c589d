/** An effect in the sum that makes a value, and what is taken for granted about it. */
export interface Effect {
  readonly name: string;
  readonly mean: number;
  /** Of the normal law about the mean before there are values; null where nothing is known, 0 where the mean is certain. */
  readonly variance: number | null;
  /** The spread it is one draw of, which is learnt from all its draws together; null where the variance is what it is. */
  readonly spread: string | null;
}

/** How often an effect is in a value. */
export interface Loading {
  readonly effect: Effect;
  readonly times: number;
}

/** Values as sums of effects, each effect a column: without those that are certain, whose means are taken out of the values. */
export interface Design {
  readonly effects: readonly Effect[];
  readonly columns: ReadonlyMap<string, number>;
  readonly rows: readonly DesignRow[];
}

export interface DesignRow {
  readonly columns: readonly number[];
  readonly times: readonly number[];
  /** The value less the means of all its effects. */
  readonly rest: number;
}

export interface Solution {
  /** Of each effect, less its prior mean. */
  readonly means: Float64Array;
  /** Row by row. */
  readonly covariance: Float64Array;
}

/** What effects come to before anything is seen. */
export const priorSum = (loadings: readonly Loading[]) =>
  loadings.reduce((sum, { effect, times }) => sum + effect.mean * times, 0);

interface Counted {
  readonly effect: Effect;
  count: number;
  column: number;
}

/** Effects that few values have come first: then little of what is solved is other than nothing. */
export function designOf(
  values: readonly { readonly value: number; readonly loadings: readonly Loading[] }[],
): Design {
  const byName = new Map<string, Counted>();
  const counted = (effect: Effect) => {
    const known = byName.get(effect.name) ?? { effect, count: 0, column: 0 };
    if (known.count === 0) byName.set(effect.name, known);
    known.count += 1;
    return known;
  };
  const rows = values.map(({ value, loadings }) => {
    const open = loadings.filter(({ effect, times }) => effect.variance !== 0 && times !== 0);
    return {
      effects: open.map(({ effect }) => counted(effect)),
      ...{ times: open.map(({ times }) => times), rest: value - priorSum(loadings) },
    };
  });
  const sorted = [...byName.values()].sort((one, other) => one.count - other.count);
  for (const [column, each] of sorted.entries()) each.column = column;
  return {
    effects: sorted.map(({ effect }) => effect),
    columns: new Map(sorted.map(({ effect, column }) => [effect.name, column])),
    rows: rows.map(({ effects, times, rest }) => ({
      columns: effects.map(({ column }) => column),
      ...{ times, rest },
    })),
  };
}

/** The first column of each row of a lower triangle that is not nothing. */
function firstColumns(lower: Float64Array, size: number): Int32Array {
  return Int32Array.from({ length: size }, (_, row) => {
    let column = 0;
    while (column < row && lower[row * size + column] === 0) column += 1;
    return column;
  });
}

/**
 * Lower triangle L with L Lᵀ = A, in place, of a symmetric positive matrix of that size, row by row; what lies above the
 * diagonal is left as it is. Before the first column of A that is not nothing L is nothing too.
 */
function factorise(matrix: Float64Array, size: number): void {
  const first = firstColumns(matrix, size);
  for (let row = 0; row < size; row += 1) {
    const ofRow = row * size;
    let left = matrix[ofRow + row] as number;
    for (let column = first[row] as number; column < row; column += 1) {
      const ofColumn = column * size;
      let sum = matrix[ofRow + column] as number;
      for (let at = Math.max(first[row] as number, first[column] as number); at < column; at += 1)
        sum -= (matrix[ofRow + at] as number) * (matrix[ofColumn + at] as number);
      const entry = sum / (matrix[ofColumn + column] as number);
      matrix[ofRow + column] = entry;
      left -= entry ** 2;
    }
    matrix[ofRow + row] = Math.sqrt(left);
  }
}

/** The inverse of L in place, by rows, each from those above it, so that memory is walked in order. */
function invertTriangle(lower: Float64Array, size: number): void {
  const row = new Float64Array(size);
  const first = new Int32Array(size);
  for (let at = 0; at < size; at += 1) {
    const start = at * size;
    const diagonal = lower[start + at] as number;
    let from = at;
    row.fill(0, 0, at);
    row[at] = 1 / diagonal;
    for (let above = 0; above < at; above += 1) {
      const factor = (lower[start + above] as number) / diagonal;
      if (factor === 0) continue;
      from = Math.min(from, first[above] as number);
      for (let column = first[above] as number; column <= above; column += 1)
        row[column] = (row[column] as number) - factor * (lower[above * size + column] as number);
    }
    first[at] = from;
    for (let column = 0; column <= at; column += 1) lower[start + column] = row[column] as number;
  }
}

/**
 * The inverse of a symmetric positive matrix, of which the lower triangle is given and spent, by Cholesky's factors (Golub and
 * Van Loan, Matrix Computations, section 4.2).
 */
function invert(matrix: Float64Array, size: number, inverse: Float64Array): void {
  factorise(matrix, size);
  invertTriangle(matrix, size);
  const first = firstColumns(matrix, size);
  inverse.fill(0);
  // (L Lᵀ)⁻¹ = L⁻ᵀ L⁻¹, row of L⁻¹ by row.
  for (let at = 0; at < size; at += 1) {
    const start = at * size;
    for (let row = first[at] as number; row <= at; row += 1) {
      const factor = matrix[start + row] as number;
      if (factor === 0) continue;
      const ofRow = row * size;
      for (let column = first[at] as number; column <= row; column += 1)
        inverse[ofRow + column] =
          (inverse[ofRow + column] as number) + factor * (matrix[start + column] as number);
    }
  }
  for (let row = 0; row < size; row += 1)
    for (let column = 0; column < row; column += 1)
      inverse[column * size + row] = inverse[row * size + column] as number;
}

/**
 * Solves Henderson's mixed model equations: the best linear unbiased prediction of every effect from all values together, and
 * what is left unsure of them (C. R. Henderson, Best linear unbiased estimation and prediction under a selection model,
 * Biometrics 31, 1975). `rowVariances` are of what is a value's own; `effectVariances` are the effects' now, null for no prior.
 * The covariance of a solution is written over by the next.
 */
export function mixedModelSolver({
  effects,
  rows,
}: Design): (rowVariances: readonly number[], effectVariances: readonly (number | null)[]) => Solution {
  const size = effects.length;
  const precision = new Float64Array(size * size);
  const covariance = new Float64Array(size * size);
  return (rowVariances, effectVariances) => {
    const right = new Float64Array(size);
    precision.fill(0);
    for (const [at, variance] of effectVariances.entries())
      precision[at * size + at] = variance === null ? 0 : 1 / variance;
    for (const [at, row] of rows.entries()) addRow(precision, right, row, 1 / (rowVariances[at] as number));
    invert(precision, size, covariance);
    return { means: times(covariance, right), covariance };
  };
}

function times(matrix: Float64Array, vector: Float64Array): Float64Array {
  const size = vector.length;
  return vector.map((_, row) => {
    let sum = 0;
    for (let column = 0; column < size; column += 1)
      sum += (matrix[row * size + column] as number) * (vector[column] as number);
    return sum;
  });
}

/** Into the lower triangle alone, which is all that the factors are made of. */
function addRow(precision: Float64Array, right: Float64Array, row: DesignRow, weight: number): void {
  const { columns, times: often, rest } = row;
  const [count, size] = [columns.length, right.length];
  for (let one = 0; one < count; one += 1) {
    const column = columns[one] as number;
    const weighed = weight * (often[one] as number);
    right[column] = (right[column] as number) + weighed * rest;
    for (let other = 0; other < count; other += 1) {
      const at = column * size + (columns[other] as number);
      if ((columns[other] as number) <= column)
        precision[at] = (precision[at] as number) + weighed * (often[other] as number);
    }
  }
}

/** What a sum of effects comes to less its prior mean, and how unsure that is. */
export function sumOfEffects(
  { means, covariance }: Solution,
  { columns, times: often }: Pick<DesignRow, "columns" | "times">,
): { readonly mean: number; readonly variance: number } {
  let [mean, variance] = [0, 0];
  const [count, size] = [columns.length, means.length];
  for (let one = 0; one < count; one += 1) {
    const [factor, column] = [often[one] as number, columns[one] as number];
    mean += factor * (means[column] as number);
    for (let other = 0; other < one; other += 1)
      variance +=
        2 *
        factor *
        (often[other] as number) *
        (covariance[column * size + (columns[other] as number)] as number);
    variance += factor ** 2 * (covariance[column * size + column] as number);
  }
  return { mean, variance };
}
