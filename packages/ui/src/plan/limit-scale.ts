/** The stops of a slider for a limit: 0, one step, two steps … and, at its end, no limit. */
export interface LimitScale {
  readonly step: number;
  /** The position that stands for no limit. */
  readonly end: number;
}

const mostStops = 60;
const niceSteps = [1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500, 1000, 2000, 5000, 10_000] as const;

/** A scale that reaches `top`, which limits nothing, in steps of a round number of `unit`. */
export function limitScale(top: number, unit: number): LimitScale {
  const step = unit * (niceSteps.find((each) => top / (each * unit) <= mostStops) ?? niceSteps.at(-1) ?? 1);
  return { step, end: Math.max(1, Math.ceil(top / step)) + 1 };
}

export function positionOf(limit: number | null, { step, end }: LimitScale): number {
  return limit === null ? end : Math.min(end - 1, Math.round(limit / step));
}

export function limitAt(position: number, { step, end }: LimitScale): number | null {
  return position >= end ? null : position * step;
}
