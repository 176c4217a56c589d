import type { LengthUnit } from "./format/length.ts";
import type { Currency } from "./format/money.ts";

export type Theme = "auto" | "light" | "dark";

/** How things are shown; kept by the server beside the bench. */
export interface DisplaySettings {
  readonly lengthUnit: LengthUnit;
  readonly currency: Currency;
  readonly theme: Theme;
}

/** What is shown before the server has answered. */
export const defaultDisplay: DisplaySettings = { lengthUnit: "in", currency: "EUR", theme: "auto" };
