import type { DealContext } from "./deal-context.ts";
import type { Gain } from "./gain.ts";
import type { Sale } from "./sale.ts";

/** One thing of a listing kept for what comes: taken apart where that is better, each piece for the best that can be made of it. */
export interface Kept {
  /** The place of the thing among those that the listing offers. */
  readonly thing: number;
  /** What it brings over work and over what the other parts of it are worth, before anything is paid for the listing. */
  readonly gain: Gain;
  /** What becomes of it, piece by piece. */
  readonly titles: readonly string[];
  readonly sales: readonly Sale[];
  readonly minutes: number;
  /** Money laid out for work and for listing what is sold. */
  readonly outlayMinor: number;
  /** Other parts that are counted on, of the bench and of listings that may come again. */
  readonly uses: readonly string[];
  /** Whether any of it waits for something that is not on the bench. */
  readonly waits: boolean;
}

/**
 * What parts are worth to the whole bench, the listings of the last weeks being counted on to come again: the prices of a
 * plan's relaxation. They say of a part what the best plan would lose by it, so that a shaft is dear while ten heads wait for
 * one, and cheap when ten shafts lie there.
 */
export interface PlanPrices {
  /** What the bench loses by a part of it, in minor units that are not rounded; nothing where the plan does not know it. */
  readonly ofPart: (id: string) => number | undefined;
  /** The best that each thing of a listing can be kept for; nothing for what can only be sold as it is. */
  readonly keep: (context: DealContext) => readonly Kept[];
}
