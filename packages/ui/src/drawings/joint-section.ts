import type { Clash } from "./joint-clashes.ts";
import type { JointFacts } from "./joint-facts.ts";

/**
 * A joint cut through its axis, in inches: along from the mouth of the bore towards its bottom, half widths across. Widths are
 * as they are to be drawn, so the gap between tip and bore, a few thousandths, is `widened` times what it is.
 */
export interface JointSection {
  readonly widened: number;
  readonly tipHalfIn: number;
  readonly boreHalfIn: number;
  readonly outsideHalfIn: number;
  /** Where the bore ends, and where the tip stops. */
  readonly depthIn: number;
  readonly tipEndIn: number;
  /** From where on, going up, the shaft is wider than its tip; negative above the mouth. */
  readonly widensAboveIn: number;
  /** The face of the head on which an adapter's shoulder rests. */
  readonly seatIn: number | undefined;
  readonly clashes: readonly (Clash & { readonly alongIn: number; readonly halfIn: number })[];
  /** Which of the edges are drawn from no reading at all. */
  readonly guessed: readonly ("tip" | "bore" | "depth" | "outside")[];
}

/** What an edge that nobody has measured is drawn at: only so that there is a picture, and never shown as a number. */
const drawnAt = { tipIn: 0.35, depthIn: 1.2, wallIn: 0.09, parallelIn: 3 } as const;
/** The widest that a gap is drawn, and the most that it is widened. */
const widestIn = 0.065;
const mostWidened = 20;
/** A taper tip gains 0.015 in over about 2 in: marathonsportsagency.blog, 2024-12-09. */
export const taperPerIn = 0.0075;

/** The gap on either side of the tip; negative where the tip is the wider. Half the difference of the diameters: derived, no published source. */
export function bondLineIn({ tipIn, boreIn, reamedToIn, sandedIn }: JointFacts): number | undefined {
  const bore = reamedToIn ?? boreIn;
  return tipIn === undefined || bore === undefined ? undefined : (bore - (tipIn - (sandedIn ?? 0))) / 2;
}

export function jointSection(facts: JointFacts, clashes: readonly Clash[]): JointSection {
  const gapIn = bondLineIn(facts);
  const widened = widenedBy(gapIn);
  const tipIn = facts.tipIn ?? facts.boreIn ?? drawnAt.tipIn;
  const tipHalfIn = tipIn / 2;
  const boreHalfIn = tipHalfIn + (gapIn ?? 0.002) * widened;
  const outsideHalfIn = Math.max((facts.outsideIn ?? 0) / 2, boreHalfIn + wallIn(facts, boreHalfIn));
  const depthIn = facts.depthIn ?? drawnAt.depthIn;
  const jams = clashes.some(({ place }) => place === "mouth");
  const tipEndIn = endOfTip(facts, depthIn, jams);
  const seatIn =
    facts.holder === "adapter" ? Math.min(depthIn, depthIn - (facts.stopIn ?? depthIn / 2)) : undefined;
  const shape = { tipHalfIn, boreHalfIn, outsideHalfIn, depthIn, seatIn };
  return {
    ...shape,
    widened,
    tipEndIn,
    widensAboveIn: facts.tipForm === "taper" ? tipEndIn : tipEndIn - (facts.parallelIn ?? drawnAt.parallelIn),
    clashes: clashes.map((clash) => ({ ...clash, ...whereOf(clash, shape) })),
    guessed: [
      ...(facts.tipIn === undefined ? (["tip"] as const) : []),
      ...(facts.boreIn === undefined ? (["bore"] as const) : []),
      ...(facts.depthIn === undefined ? (["depth"] as const) : []),
      ...(facts.outsideIn === undefined && facts.holder === "bore" ? (["outside"] as const) : []),
    ],
  };
}

function widenedBy(gapIn: number | undefined): number {
  if (gapIn === undefined || gapIn === 0) return mostWidened;
  return Math.max(1, Math.min(mostWidened, Math.floor(widestIn / Math.abs(gapIn))));
}

/** The wall outside the bore as it is drawn: the measured one where there is one, for a widened gap must not eat it up. */
function wallIn({ outsideIn, boreIn, reamedToIn }: JointFacts, boreHalfIn: number): number {
  const bore = reamedToIn ?? boreIn;
  if (outsideIn === undefined) return drawnAt.wallIn;
  return bore === undefined ? Math.max(0.03, outsideIn / 2 - boreHalfIn) : (outsideIn - bore) / 2;
}

/** A tip that widens before it is home stops where the wide part meets the mouth; any other goes to the bottom. */
function endOfTip({ parallelIn, tipForm }: JointFacts, depthIn: number, jams: boolean): number {
  if (jams && tipForm !== "taper" && parallelIn !== undefined && parallelIn < depthIn) return parallelIn;
  return depthIn;
}

function whereOf(
  { place }: Clash,
  {
    boreHalfIn,
    outsideHalfIn,
    tipHalfIn,
    depthIn,
    seatIn,
  }: Pick<JointSection, "boreHalfIn" | "outsideHalfIn" | "tipHalfIn" | "depthIn" | "seatIn">,
): { readonly alongIn: number; readonly halfIn: number } {
  switch (place) {
    case "mouth":
      return { alongIn: 0, halfIn: boreHalfIn };
    case "wall":
      return { alongIn: depthIn * 0.4, halfIn: (boreHalfIn + outsideHalfIn) / 2 };
    case "gap":
      return { alongIn: depthIn * 0.5, halfIn: (boreHalfIn + tipHalfIn) / 2 };
    case "bottom":
      return { alongIn: depthIn, halfIn: 0 };
    case "seat":
      return { alongIn: seatIn ?? 0, halfIn: outsideHalfIn };
  }
}
