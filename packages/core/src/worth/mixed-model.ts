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

export function designOf(
  values: readonly { readonly value: number; readonly loadings: readonly Loading[] }[],
): Design {
  const columns = new Map<string, number>();
  const effects: Effect[] = [];
  const columnOf = (effect: Effect) => {
    const known = columns.get(effect.name);
    if (known !== undefined) return known;
    columns.set(effect.name, effects.length);
    return effects.push(effect) - 1;
  };
  const rows = values.map(({ value, loadings }) => {
    const open = loadings.filter(({ effect, times }) => effect.variance !== 0 && times !== 0);
    return {
      columns: open.map(({ effect }) => columnOf(effect)),
      times: open.map(({ times }) => times),
      rest: value - priorSum(loadings),
    };
  });
  return { effects, columns, rows };
}

/** Lower triangle L with L Lᵀ = A, in place, of a symmetric positive matrix of that size, row by row. */
function factorise(matrix: Float64Array, size: number): void {
  for (let row = 0; row < size; row += 1)
    for (let column = 0; column <= row; column += 1) {
      const ofRow = row * size;
      const ofColumn = column * size;
      let sum = matrix[ofRow + column] as number;
      for (let at = 0; at < column; at += 1)
        sum -= (matrix[ofRow + at] as number) * (matrix[ofColumn + at] as number);
      matrix[ofRow + column] = row === column ? Math.sqrt(sum) : sum / (matrix[ofColumn + column] as number);
    }
}

/** The inverse of L by rows, each from those above it, so that memory is walked in order. */
function invertedTriangle(lower: Float64Array, size: number): Float64Array {
  const inverse = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) {
    const ofRow = row * size;
    const diagonal = lower[ofRow + row] as number;
    for (let above = 0; above < row; above += 1) {
      const factor = (lower[ofRow + above] as number) / diagonal;
      const ofAbove = above * size;
      if (factor === 0) continue;
      for (let at = 0; at <= above; at += 1)
        inverse[ofRow + at] = (inverse[ofRow + at] as number) - factor * (inverse[ofAbove + at] as number);
    }
    inverse[ofRow + row] = 1 / diagonal;
  }
  return inverse;
}

/** The inverse of a symmetric positive matrix, by Cholesky's factors (Golub and Van Loan, Matrix Computations, section 4.2). */
function inverseOf(matrix: Float64Array, size: number): Float64Array {
  factorise(matrix, size);
  const lower = invertedTriangle(matrix, size);
  const inverse = new Float64Array(size * size);
  // (L Lᵀ)⁻¹ = L⁻ᵀ L⁻¹, row of L⁻¹ by row.
  for (let at = 0; at < size; at += 1)
    for (let row = 0; row <= at; row += 1) {
      const factor = lower[at * size + row] as number;
      if (factor === 0) continue;
      for (let column = 0; column <= row; column += 1)
        inverse[row * size + column] =
          (inverse[row * size + column] as number) + factor * (lower[at * size + column] as number);
    }
  for (let row = 0; row < size; row += 1)
    for (let column = 0; column < row; column += 1)
      inverse[column * size + row] = inverse[row * size + column] as number;
  return inverse;
}

/**
 * Solves Henderson's mixed model equations: the best linear unbiased prediction of every effect from all values together, and
 * what is left unsure of them (C. R. Henderson, Best linear unbiased estimation and prediction under a selection model,
 * Biometrics 31, 1975). `rowVariances` are of what is a value's own; `effectVariances` are the effects' now, null for no prior.
 */
export function solveMixedModel(
  { effects, rows }: Design,
  rowVariances: readonly number[],
  effectVariances: readonly (number | null)[],
): Solution {
  const size = effects.length;
  const precision = new Float64Array(size * size);
  const right = new Float64Array(size);
  for (const [at, variance] of effectVariances.entries())
    precision[at * size + at] = variance === null ? 0 : 1 / variance;
  for (const [at, row] of rows.entries()) addRow(precision, right, row, 1 / (rowVariances[at] as number));
  const covariance = inverseOf(precision, size);
  return { means: times(covariance, right), covariance };
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
