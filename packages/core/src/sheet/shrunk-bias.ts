/** By how much one club came out other than it was estimated, and the standard uncertainty of that difference. */
export interface Residual {
  readonly group: string;
  readonly value: number;
  readonly plusMinus: number;
}

/** Standard deviations taken for granted: of what all groups share, and of how far a group lies from that. */
export interface BiasScales {
  readonly shared: number;
  readonly between: number;
}

export interface ShrunkBias {
  readonly value: number;
  readonly plusMinus: number;
  /** Clubs of this group that it rests on, and clubs of every group. */
  readonly count: number;
  readonly countOfAll: number;
}

interface GroupMean {
  readonly mean: number;
  readonly variance: number;
  readonly count: number;
}

/**
 * The bias of estimates for one group of clubs, drawn towards what all groups share and that towards nothing, the more so the
 * fewer clubs there are: the hierarchical normal model with known variances (Gelman et al., Bayesian Data Analysis, 3rd ed.,
 * section 5.4, equations 5.17 and 5.20, with a normal distribution about nothing for the shared mean in the place of a flat
 * one). Where clubs of one group scatter more than their uncertainties allow, these are widened alike (R. T. Birge, Physical
 * Review 40, 207, 1932). An infinite `shared` is the flat one; `between` of nothing makes all groups one.
 */
export function shrunkBias(residuals: readonly Residual[], group: string, scales: BiasScales): ShrunkBias {
  const groups = groupMeans(residuals);
  const shared = sharedMean([...groups.values()], scales);
  const own = groups.get(group) ?? { mean: 0, variance: Number.POSITIVE_INFINITY, count: 0 };
  const between = scales.between ** 2;
  const trust = between === 0 ? 0 : between / (between + own.variance);
  const left = 1 - trust;
  const value = (trust === 0 ? 0 : trust * own.mean) + left * shared.mean;
  const variance = (trust === 0 ? between : trust * own.variance) + left ** 2 * shared.variance;
  return { value, plusMinus: Math.sqrt(variance), count: own.count, countOfAll: residuals.length };
}

function groupMeans(residuals: readonly Residual[]): ReadonlyMap<string, GroupMean> {
  const names = [...new Set(residuals.map(({ group }) => group))];
  const members = names.map((name) => residuals.filter(({ group }) => group === name));
  const widening = birgeRatio(members) ** 2;
  return new Map(names.map((name, at) => [name, meanOf(members[at] ?? [], widening)]));
}

function meanOf(residuals: readonly Residual[], widening: number): GroupMean {
  const weights = residuals.map(({ plusMinus }) => 1 / plusMinus ** 2);
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = residuals.reduce((sum, { value }, at) => sum + value * (weights[at] ?? 0), 0) / whole;
  return { mean, variance: widening / whole, count: residuals.length };
}

/** Square root of chi-squared over its degrees of freedom about the groups' own means; one where that is less. */
function birgeRatio(members: readonly (readonly Residual[])[]): number {
  const count = members.reduce((sum, group) => sum + group.length, 0);
  const freedom = count - members.length;
  if (freedom < 1) return 1;
  const chiSquared = members.reduce((sum, group) => {
    const { mean } = meanOf(group, 1);
    return sum + group.reduce((own, { value, plusMinus }) => own + ((value - mean) / plusMinus) ** 2, 0);
  }, 0);
  return Math.max(1, Math.sqrt(chiSquared / freedom));
}

/** What all groups share; nothing is known of it where there are no groups. */
function sharedMean(
  groups: readonly GroupMean[],
  { shared, between }: BiasScales,
): { readonly mean: number; readonly variance: number } {
  const weights = groups.map(({ variance }) => 1 / (between ** 2 + variance));
  const precision = 1 / shared ** 2 + weights.reduce((sum, weight) => sum + weight, 0);
  const sum = groups.reduce((total, { mean }, at) => total + mean * (weights[at] ?? 0), 0);
  return { mean: sum / precision, variance: 1 / precision };
}
