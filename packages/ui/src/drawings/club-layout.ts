import type { ClubDimensions } from "@ferrule/core";

/** A measure laid along the shaft axis, in inches from the edge of the grip cap towards the head. */
export interface AxisDimension {
  readonly name: AxisDimensionName;
  readonly fromIn: number;
  readonly toIn: number;
}

export type AxisDimensionName =
  | "playing-length"
  | "cut-length"
  | "insertion"
  | "bbgm"
  | "grip"
  | "fulcrum"
  | "balance";

/** A piece along the axis, from nearer the cap to nearer the head. */
export interface AxisPiece {
  readonly fromIn: number;
  readonly toIn: number;
}

/** Where everything of a club is drawn, in inches along its axis from the edge of the grip cap; what is not known is not there. */
export interface ClubLayout {
  /** Where the axis meets the ground. */
  readonly groundIn: number;
  /** Of the ground to the axis. */
  readonly lieDeg: number | undefined;
  readonly grip: AxisPiece | undefined;
  readonly cap: AxisPiece | undefined;
  readonly shaft: AxisPiece;
  /** What of the shaft is inside the bore. */
  readonly hidden: AxisPiece | undefined;
  /** From the mouth of the bore to the ground: the hosel's length, or the adapter's reach. */
  readonly holder: AxisPiece | undefined;
  /** The face of the head that an adapter's shoulder rests on. */
  readonly seatIn: number | undefined;
  readonly balance: { readonly atIn: number; readonly lowIn: number; readonly highIn: number } | undefined;
  /** The shaft as it came, laid where it would lie in the club, and what of it is cut or added. */
  readonly uncut: AxisPiece | undefined;
  readonly buttCut: AxisPiece | undefined;
  readonly tipCut: AxisPiece | undefined;
  readonly extension: AxisPiece | undefined;
  readonly dimensions: readonly AxisDimension[];
}

/** The scale's fulcrum, from the grip end: US patent 1,953,916 and tutelman.com/golf/design/swingwt3.php. */
export const fulcrumIn = 14;

interface Balance {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Lays a club out along its axis: the cap's edge at 0, the butt a cap's thickness further, the tip a BBGM short of the ground.
 * `undefined` where its length is not known. That hosel length is BBGM and insertion together: Hireko blog, January 2011.
 */
export function clubLayout(of: ClubDimensions, balance: Balance | null): ClubLayout | undefined {
  const { playingLengthIn, bbgmIn, capThicknessIn, insertionIn } = of;
  if (playingLengthIn === null || bbgmIn === null || capThicknessIn === null) return undefined;
  const shaft = { fromIn: capThicknessIn, toIn: playingLengthIn - bbgmIn };
  const hidden = insertionIn === null ? undefined : { fromIn: shaft.toIn - insertionIn, toIn: shaft.toIn };
  const layout = {
    groundIn: playingLengthIn,
    lieDeg: of.lieDeg ?? undefined,
    grip: of.gripLengthIn === null ? undefined : { fromIn: 0, toIn: of.gripLengthIn },
    cap: capThicknessIn > 0 ? { fromIn: 0, toIn: capThicknessIn } : undefined,
    shaft,
    hidden,
    holder: hidden && { fromIn: hidden.fromIn, toIn: playingLengthIn },
    seatIn: of.seatToGroundIn === null ? undefined : playingLengthIn - of.seatToGroundIn,
    balance: balance ? { atIn: balance.value, lowIn: balance.low, highIn: balance.high } : undefined,
    ...cuts(of, shaft),
  };
  return { ...layout, dimensions: dimensionsOf(layout) };
}

/** Less than a rule is read to, 1/32 in, is neither a cut nor an extension. */
const leastCutIn = 1 / 32;

function cuts(
  { buttTrimIn, tipTrimIn }: ClubDimensions,
  { fromIn, toIn }: AxisPiece,
): Pick<ClubLayout, "uncut" | "buttCut" | "tipCut" | "extension"> {
  const butt = buttTrimIn ?? 0;
  const tip = tipTrimIn ?? 0;
  const hasTip = tip > leastCutIn;
  return {
    uncut: { fromIn: fromIn - butt, toIn: toIn + tip },
    buttCut: butt > leastCutIn ? { fromIn: fromIn - butt, toIn: fromIn } : undefined,
    extension: butt < -leastCutIn ? { fromIn, toIn: fromIn - butt } : undefined,
    tipCut: hasTip ? { fromIn: toIn, toIn: toIn + tip } : undefined,
  };
}

function dimensionsOf(layout: Omit<ClubLayout, "dimensions">): readonly AxisDimension[] {
  const { shaft, hidden, groundIn, grip, balance } = layout;
  const all: readonly (AxisDimension | undefined)[] = [
    { name: "playing-length", fromIn: 0, toIn: groundIn },
    { name: "cut-length", ...shaft },
    hidden && { name: "insertion", ...hidden },
    { name: "bbgm", fromIn: shaft.toIn, toIn: groundIn },
    grip && { name: "grip", ...grip },
    { name: "fulcrum", fromIn: 0, toIn: fulcrumIn },
    balance && { name: "balance", fromIn: 0, toIn: balance.atIn },
  ];
  return all.filter((one) => one !== undefined);
}
