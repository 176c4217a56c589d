import type { WorkStep } from "../resolve/result.ts";
import type { LeftOut } from "./offers.ts";

/** One thing to do, in the order of the plan. */
export interface PlanAction {
  readonly do: "buy" | "fetch" | "take-apart" | "build" | "sell" | "wait";
  readonly title: string;
  /** Parts of the bench, or of a listing by the names the plan gives them. */
  readonly parts: readonly string[];
  /** The listing that is bought, or those that are fetched. */
  readonly sightings: readonly string[];
  /** What it brings, or costs, over everything that belongs to it. */
  readonly netMinor: number;
  readonly outlayMinor: number;
  readonly minutes: number;
  /** Steps at the bench, with their cautions. */
  readonly work: readonly WorkStep[];
  /** For waiting: what for, and the price at or under which to take it. */
  readonly waitsFor: {
    readonly want: string;
    readonly text: string;
    readonly takeAtOrUnderMinor: number;
  } | null;
}

/** What to do with the whole bench. */
export interface Plan {
  readonly actions: readonly PlanAction[];
  readonly currency: string;
  readonly netMinor: number;
  readonly outlayMinor: number;
  readonly minutes: number;
  /**
   * No plan brings more than this; the gap is how far from it the plan can be, as a share. Where an hour has to bring so much,
   * both are of what plans bring over that.
   */
  readonly boundMinor: number;
  readonly gap: number;
  readonly stopped: boolean;
  readonly binding: readonly PlanBinding[];
  readonly leftOut: readonly LeftOut[];
  /** Parts that nothing is done with. */
  readonly kept: readonly string[];
  /** The best plan that buys or builds something else; null where there is none. */
  readonly nextBest: {
    readonly netMinor: number;
    readonly without: string;
    readonly actions: readonly PlanAction[];
  } | null;
}

/** What keeps the plan from bringing more, in words, and what one unit more of it would bring. */
export interface PlanBinding {
  readonly limit: "budget" | "minutes" | "clubs-of-type" | "part";
  readonly text: string;
  /** More net for one more: a currency unit of budget, an hour, a club, a part. */
  readonly worthMinor: number;
}
