/** Student's t at 97.5 % for so many degrees of freedom (NIST/SEMATECH e-Handbook 1.3.6.7.2); for those between, the next below. */
const t975 = [
  [1, 12.706],
  [2, 4.303],
  [3, 3.182],
  [4, 2.776],
  [5, 2.571],
  [6, 2.447],
  [7, 2.365],
  [8, 2.306],
  [9, 2.262],
  [10, 2.228],
  [12, 2.179],
  [15, 2.131],
  [19, 2.093],
  [20, 2.086],
  [25, 2.06],
  [30, 2.042],
  [40, 2.021],
];

/** The mean with its 95 % interval. */
export function meanOf(values) {
  const mean = values.reduce((sum, each) => sum + each, 0) / values.length;
  const variance = values.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (values.length - 1);
  const [, t] = t975.findLast(([degrees]) => degrees <= values.length - 1) ?? [0, Number.NaN];
  const half = t * Math.sqrt(variance / values.length);
  return { mean, low: mean - half, high: mean + half };
}

/** The ratio of two sums over the same seeds, with its 95 % interval by leaving one seed out at a time (the jackknife). */
export function ratioOf(ones, others) {
  const sum = (values) => values.reduce((total, each) => total + each, 0);
  const [one, other] = [sum(ones), sum(others)];
  const count = ones.length;
  const pseudo = ones.map(
    (each, at) => (count * one) / other - ((count - 1) * (one - each)) / (other - others[at]),
  );
  const { low, high } = meanOf(pseudo);
  return { mean: one / other, low, high };
}
