/** One of the readings an estimate rests on, and how much of its variance that one explains. */
export interface BasisEntry {
  /** The part's id, or `build` for a choice made at the bench. */
  readonly part: string;
  readonly field: string;
  readonly source: "measured" | "stated" | "catalogue" | "typical" | "chosen";
  /** Share of the variance, 0 to 1; the list is sorted by it, widest first. */
  readonly share: number;
}

/** A computed quantity: `low` to `high` is the 95 % interval. The unit is in the name of the field that holds it. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly basis: readonly BasisEntry[];
}

/** A swing weight in points from A0 with its label ("D2.3"). */
export interface SwingWeightEstimate {
  readonly points: number;
  readonly label: string;
  readonly low: number;
  readonly high: number;
  readonly basis: readonly BasisEntry[];
}

/** Loft, lie and face angle at one setting of an adapter: with the sole flat, and with the face squared by hand. */
export interface SettingEstimate {
  readonly label: string;
  readonly rotationDeg: number;
  readonly soled: { readonly loftDeg: Estimate; readonly lieDeg: Estimate; readonly faceAngleDeg: Estimate };
  readonly squared: { readonly loftDeg: Estimate; readonly lieDeg: Estimate };
}

/** Mean shear in a bond against what the epoxy bears: information, never permission. */
export interface BondEstimate {
  readonly shearPa: number;
  readonly shearPsi: number;
  readonly strengthPa: number;
  readonly pullN: number;
  /** Always shown with it: the mean says nothing of peel, impact or a badly prepared joint. */
  readonly caution: string;
}

/** How a club would measure and swing. `null` where a fact that has no typical value is missing; `missing` says which. */
export interface Estimates {
  readonly playingLengthIn: Estimate | null;
  readonly rulesLengthIn: Estimate | null;
  readonly massG: Estimate | null;
  readonly balanceFromButtIn: Estimate | null;
  readonly swingWeight: SwingWeightEstimate | null;
  readonly moiKgCm2: Estimate | null;
  readonly frequencyCpm: Estimate | null;
  readonly loftDeg: Estimate | null;
  readonly lieDeg: Estimate | null;
  readonly faceAngleDeg: Estimate | null;
  readonly settings: readonly SettingEstimate[];
  readonly bond: BondEstimate | null;
  /** The shaft once trimmed: cut length (tip to butt), mass and balance. */
  readonly cutLengthIn: Estimate | null;
  readonly shaftMassG: Estimate | null;
  readonly shaftBalanceFromTipIn: Estimate | null;
  /** What could not be estimated and the field that would settle it. */
  readonly missing: readonly {
    readonly quantity: string;
    readonly part: string;
    readonly field: string;
    readonly reason: string;
  }[];
}
