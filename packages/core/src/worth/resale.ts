/** The weight that one price had in an estimate. */
export interface EvidenceWeight {
  readonly evidence: string;
  /** How close the thing was: same model and condition, same model, same class and age, same class. */
  readonly closeness: "same-model-and-condition" | "same-model" | "same-class-and-age" | "same-class";
  /** Share of all the weight, from 0 to 1. */
  readonly share: number;
  /** Its price brought to the condition, season and kind of price that is asked about. */
  readonly adjustedMinor: number;
}

/** A factor that a resale was multiplied by, under its name in the settings: 1 changes nothing. */
export interface AppliedAdjustment {
  readonly name: string;
  readonly factor: number;
  /** How many prices it was fitted from; 0 for a figure of the settings. */
  readonly fittedFrom: number;
}

/** What a thing would sell for, as an interval that is wide where there is little to go by. */
export type Resale =
  | {
      readonly known: true;
      readonly currency: string;
      readonly valueMinor: number;
      readonly lowMinor: number;
      readonly highMinor: number;
      /** Standard deviation of the logarithm of the next price, for chances of a loss. */
      readonly sigmaLog: number;
      readonly daysToSell: { readonly value: number; readonly low: number; readonly high: number } | null;
      /** How many equally good prices the evidence amounts to. */
      readonly effectiveCount: number;
      readonly basis: readonly EvidenceWeight[];
      readonly adjustments: readonly AppliedAdjustment[];
    }
  | { readonly known: false; readonly question: string };
