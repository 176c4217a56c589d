/**
 * Waiting for chances that come as a Poisson process, each to be taken or left for good. Amounts are in any one unit of money
 * and are not rounded here.
 */
export interface Waiting {
  readonly ratePerWeek: number;
  /** What a week of waiting costs; below nothing when waiting is paid for. */
  readonly holdingPerWeek: number;
  /** Continuous rate of discount. */
  readonly discountPerWeek: number;
  /** How much more than `value` a chance brings, nothing when it brings less, on the average: E[(X − value)⁺]. */
  readonly expectedGain: (value: number) => number;
  /** The chance that a chance brings at least `value`. */
  readonly takeChance: (value: number) => number;
}

/** What is left of a wait at some time before its deadline. */
export interface WaitLeft {
  readonly value: number;
  /** Chances taken until the deadline, on the average if one could take many: none is taken with chance e^−takes. */
  readonly takes: number;
  /** Weeks until one is taken or the deadline comes, on the average. */
  readonly weeks: number;
}

/** How fast waiting gains on a value, per week: −h − rR + λE[(X − R)⁺]. Falls as the value rises. */
export function gainOfWaiting(waiting: Waiting, value: number): number {
  const { ratePerWeek, holdingPerWeek, discountPerWeek } = waiting;
  return -holdingPerWeek - discountPerWeek * value + ratePerWeek * waiting.expectedGain(value);
}

/**
 * What waiting without a deadline is worth to somebody who can have `outside` at any time: the root R of
 * rR = −h + λE[(X − R)⁺] (the set-up of L. Smith, Mathematical Social Sciences 38, 1999), or `outside` where waiting does not
 * gain on it. Throws when waiting gains for ever, as it does when it is paid for and nothing is discounted.
 */
export function reservationValue(waiting: Waiting, outside: number): number {
  if (gainOfWaiting(waiting, outside) <= 0) return outside;
  let [low, span] = [outside, waiting.expectedGain(outside) || 1];
  while (gainOfWaiting(waiting, low + span) > 0) {
    low += span;
    span *= 2;
    if (span > 1e15) throw new RangeError("a wait that gains for ever has no value");
  }
  let high = low + span;
  for (let turn = 0; turn < 200; turn += 1) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (gainOfWaiting(waiting, middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** At the deadline itself. */
export function atDeadline(outside: number): WaitLeft {
  return { value: outside, takes: 0, weeks: 0 };
}

/**
 * What is left of the wait so many weeks earlier: the same equation integrated backwards from the deadline,
 * dJ/dτ = −h − rJ + λE[(X − J)⁺], together with the takes and the weeks. The value climbs from `outside` towards the
 * reservation value, so that `outside` need not be watched on the way. Where it has come within a billionth, it is there.
 */
export function earlier(waiting: Waiting, from: WaitLeft, weeks: number, reservation: number): WaitLeft {
  const closeEnough = 1e-9 * Math.max(1e-6, Math.abs(reservation - from.value));
  const tolerances = [closeEnough, 1e-9, 1e-9 * Math.max(1, weeks)] as const;
  let state: State = [from.value, from.takes, from.weeks];
  let done = 0;
  let step = Math.min(weeks, 0.1 / (waiting.ratePerWeek + waiting.discountPerWeek + 1e-9));
  while (done < weeks) {
    if (reservation - state[0] <= closeEnough) return settled(waiting, state, weeks - done, reservation);
    step = Math.min(step, weeks - done);
    const half = stepped(waiting, stepped(waiting, state, step / 2), step / 2);
    const worst = worstOf(stepped(waiting, state, step), half, tolerances);
    if (worst <= 1 || step <= weeks * 1e-7) {
      state = half;
      done = step >= weeks - done ? weeks : done + step;
    }
    // The error of a step goes with the fifth power of its length; a little is held back so that few steps are done twice.
    step *= Math.min(4, Math.max(0.1, 0.9 * (worst + 1e-12) ** -0.2));
  }
  return { value: state[0], takes: state[1], weeks: state[2] };
}

/** Value, takes and weeks, as in `WaitLeft`. */
type State = readonly [number, number, number];

function slope(waiting: Waiting, [value, , weeks]: State): State {
  const takesPerWeek = waiting.ratePerWeek * waiting.takeChance(value);
  return [gainOfWaiting(waiting, value), takesPerWeek, 1 - takesPerWeek * weeks];
}

/** One step of the classical Runge–Kutta method of fourth order. */
function stepped(waiting: Waiting, at: State, step: number): State {
  const first = slope(waiting, at);
  const second = slope(waiting, moved(at, first, step / 2));
  const third = slope(waiting, moved(at, second, step / 2));
  const fourth = slope(waiting, moved(at, third, step));
  const mean = (i: 0 | 1 | 2) => (first[i] + 2 * second[i] + 2 * third[i] + fourth[i]) / 6;
  return moved(at, [mean(0), mean(1), mean(2)], step);
}

function moved(at: State, by: State, step: number): State {
  return [at[0] + by[0] * step, at[1] + by[1] * step, at[2] + by[2] * step];
}

/** How many times its tolerance the worst of the three is off, by the difference of one step and two halves (a 15th of it). */
function worstOf(one: State, other: State, tolerances: State): number {
  const off = (i: 0 | 1 | 2) => Math.abs(one[i] - other[i]) / 15 / tolerances[i];
  return Math.max(off(0), off(1), off(2));
}

/** Once the value stands still, chances are taken at a steady rate and the rest has a closed form. */
function settled(waiting: Waiting, [, takes, weeks]: State, left: number, reservation: number): WaitLeft {
  const takesPerWeek = waiting.ratePerWeek * waiting.takeChance(reservation);
  if (takesPerWeek === 0) return { value: reservation, takes, weeks: weeks + left };
  const faded = Math.exp(-takesPerWeek * left);
  return {
    value: reservation,
    takes: takes + takesPerWeek * left,
    weeks: weeks * faded + (1 - faded) / takesPerWeek,
  };
}
