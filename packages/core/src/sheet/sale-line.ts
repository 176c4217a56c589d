import type { MeasuredQuantity } from "./measurement.ts";

/** A fact of the bench that a line of a description rests on. */
export type SaleFact =
  | { readonly of: "part"; readonly part: string; readonly field: string }
  | { readonly of: "joint"; readonly parts: readonly [string, string] }
  | { readonly of: "offer"; readonly parts: readonly string[] }
  | {
      readonly of: "measurement";
      readonly measurement: string;
      readonly quantity: MeasuredQuantity | "built";
    }
  | { readonly of: "estimate"; readonly quantity: string }
  | { readonly of: "inspection"; readonly inspection: string }
  | { readonly of: "clearance"; readonly clearance: string };

/** One thing said, and every fact it is said by. A line without a fact does not exist. */
export interface SaleLine {
  readonly text: string;
  readonly from: readonly [SaleFact, ...SaleFact[]];
}

export const ofPart = (part: string, field: string): SaleFact => ({ of: "part", part, field });
