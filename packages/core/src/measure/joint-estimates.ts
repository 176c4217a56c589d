import type { ClubInput } from "./club-facts.ts";
import type { ClubNumbers, NumberKey } from "./club-numbers.ts";
import type { BasisEntry, Estimate } from "./estimate.ts";
import { interval95 } from "./uncertainty.ts";

/**
 * Writes the results at some figures into `out`. `moved` is the figure that differs from the best estimates, if any; `out`
 * then holds the results at the best estimates, so that one which `moved` cannot change may be left as it is.
 */
export type JointModel = (at: ClubNumbers, out: Float64Array, moved?: NumberKey) => void;

/**
 * The law of `propagate` (JCGM 100:2008, 5.1.2, independent inputs, central differences) for many results of one club at
 * once: each input is moved once up and once down and all results are read at both places.
 * A result that comes out as NaN, because a figure is missing, is `null`.
 * @param numbers is moved during the call and is as before after it
 */
export function jointEstimates(
  model: JointModel,
  numbers: ClubNumbers,
  inputs: readonly ClubInput[],
  count: number,
): readonly (Estimate | null)[] {
  const middle = new Float64Array(count);
  model(numbers, middle);
  const changes = inputs.map((input) => changesForOneUncertainty(model, numbers, input, middle));
  return Array.from(middle, (value, k) =>
    Number.isFinite(value) ? estimateAt(value, k, inputs, changes) : null,
  );
}

// The steps are those of `propagate`, for the same reasons.
const uncertaintyStep = 1e-3;
const roundingStep = Math.cbrt(Number.EPSILON);

/** How much each result changes for one standard uncertainty of an input. */
function changesForOneUncertainty(
  model: JointModel,
  numbers: ClubNumbers,
  { key, value, plusMinus }: ClubInput,
  middle: Float64Array,
): Float64Array {
  const step = Math.max(uncertaintyStep * plusMinus, roundingStep * Math.abs(value));
  const above = middle.slice();
  const below = middle.slice();
  numbers[key] = value + step;
  model(numbers, above, key);
  numbers[key] = value - step;
  model(numbers, below, key);
  numbers[key] = value;
  for (let k = 0; k < middle.length; k++)
    above[k] = slope(below[k]!, middle[k]!, above[k]!, step) * plusMinus;
  return above;
}

/** Beside a bound, where the model gives no number on one side, the other side alone tells. */
function slope(below: number, middle: number, above: number, step: number): number {
  if (!Number.isFinite(below)) return (above - middle) / step;
  if (!Number.isFinite(above)) return (middle - below) / step;
  return (above - below) / (2 * step);
}

function estimateAt(
  value: number,
  k: number,
  inputs: readonly ClubInput[],
  changes: readonly Float64Array[],
): Estimate {
  let variance = 0;
  for (const change of changes) variance += change[k]! ** 2;
  const { low, high } = interval95({ value, standardUncertainty: Math.sqrt(variance) });
  return { value, low, high, basis: basisAt(k, inputs, changes, variance) };
}

/** An input that explains less than this of a variance is rounding and is not named. */
const leastShare = 1e-9;

function basisAt(
  k: number,
  inputs: readonly ClubInput[],
  changes: readonly Float64Array[],
  variance: number,
): BasisEntry[] {
  const basis: BasisEntry[] = [];
  for (let i = 0; i < inputs.length; i++) {
    const { part, field, source } = inputs[i]!;
    const share = variance > 0 ? changes[i]![k]! ** 2 / variance : 0;
    if (share > leastShare) basis.push({ part, field, source, share });
  }
  return basis.sort((one, other) => other.share - one.share);
}
