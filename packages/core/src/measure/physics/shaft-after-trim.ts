/** A bare shaft before and what is cut from it. A negative butt trim carries the same line of density on past the butt. */
export interface ShaftBeforeTrim {
  readonly massG: number;
  readonly lengthIn: number;
  readonly balanceFromTipIn: number;
  readonly tipTrimIn: number;
  readonly buttTrimIn: number;
}

export interface TrimmedShaft {
  readonly ok: true;
  readonly massG: number;
  readonly lengthIn: number;
  /** From the new tip. */
  readonly balanceFromTipIn: number;
  /** Moment of inertia about the new tip. */
  readonly moiAboutTipGIn2: number;
}

export type ShaftRefusal =
  /** `beta` is balance over length: outside 1/3 to 2/3 a straight line of density would be negative at one end. */
  | {
      readonly ok: false;
      readonly code: "balance-out-of-range";
      readonly beta: number;
    }
  | {
      readonly ok: false;
      readonly code: "nothing-left";
      readonly lengthIn: number;
    };

/**
 * Mass, balance and moment of inertia of a shaft once trimmed, if its density changes along a straight line from tip to butt.
 * With λ(x) = a + b x from the tip, mass and balance of the whole fix a = (W/L)(4 − 6β) and b = (W/L)(12β − 6)/L, β = B/L;
 * what is left is the integral of λ, xλ and x²λ over it. Derived, no published source.
 */
export function shaftAfterTrim(shaft: ShaftBeforeTrim): TrimmedShaft | ShaftRefusal {
  const beta = shaft.balanceFromTipIn / shaft.lengthIn;
  // Written so that a value that is no number is refused too.
  if (!(beta >= 1 / 3 && beta <= 2 / 3)) return { ok: false, code: "balance-out-of-range", beta };
  const lengthIn = shaft.lengthIn - shaft.tipTrimIn - shaft.buttTrimIn;
  if (!(lengthIn > 0)) return { ok: false, code: "nothing-left", lengthIn };

  const meanGPerIn = shaft.massG / shaft.lengthIn;
  const slope = (meanGPerIn * (12 * beta - 6)) / shaft.lengthIn;
  const atNewTip = meanGPerIn * (4 - 6 * beta) + slope * shaft.tipTrimIn;

  const massG = lengthIn * (atNewTip + (slope * lengthIn) / 2);
  const firstMomentGIn = lengthIn ** 2 * (atNewTip / 2 + (slope * lengthIn) / 3);
  const moiAboutTipGIn2 = lengthIn ** 3 * (atNewTip / 3 + (slope * lengthIn) / 4);
  return {
    ok: true,
    massG,
    lengthIn,
    balanceFromTipIn: firstMomentGIn / massG,
    moiAboutTipGIn2,
  };
}
