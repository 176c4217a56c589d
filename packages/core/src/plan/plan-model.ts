/**
 * A plan as a model of whole numbers: what there is, what can be bought, what can be done with it, and what limits it. Alike
 * things are one resource with a count, so nothing in the model tells two of them apart. All amounts are whole minor units.
 */

/** A number of identical things on the bench. */
export interface Resource {
  readonly id: string;
  readonly count: number;
}

/** How many of one resource, by its id, a use takes or a bundle gives. */
export interface Share {
  readonly resource: string;
  readonly count: number;
}

/** One thing to do with what there is: build a club, sell something as it is, keep something waiting. */
export interface Use {
  readonly id: string;
  readonly takes: readonly Share[];
  /** What doing it once brings, everything but bundles and trips paid. */
  readonly netMinor: number;
  readonly minutes: number;
  /** Money laid out before any comes in. */
  readonly outlayMinor: number;
  /** What it counts as where only so many of a kind are wanted. */
  readonly kind?: string;
}

/** Things that are bought together or not at all. */
export interface Bundle {
  readonly id: string;
  readonly gives: readonly Share[];
  readonly priceMinor: number;
  /** Own time that buying it takes, and what that time is worth. */
  readonly minutes: number;
  readonly timeMinor: number;
  /** The trip it has to be fetched on. */
  readonly trip?: string;
}

/** A drive that fetches everything at one place, paid once. */
export interface PlanTrip {
  readonly id: string;
  readonly moneyMinor: number;
  readonly minutes: number;
  readonly timeMinor: number;
}

/** What a plan keeps within; null, or a kind that is not named, is without a limit. */
export interface PlanLimits {
  /** The most money laid out. */
  readonly budgetMinor: number | null;
  /** The most own time spent. */
  readonly minutes: number | null;
  /** At most so many uses of a kind. */
  readonly mostOfKind: Readonly<Record<string, number>>;
}

/**
 * All that `solvePlan` is told. Ids are unique within each list, and every resource and trip that is named is there; else it
 * throws.
 */
export interface PlanModel {
  readonly resources: readonly Resource[];
  readonly uses: readonly Use[];
  readonly bundles: readonly Bundle[];
  readonly trips: readonly PlanTrip[];
  readonly limits: PlanLimits;
}

/** How often each use is done, and which bundles are bought. Uses and bundles that are not named are not chosen. */
export interface PlanChoice {
  readonly uses: Readonly<Record<string, number>>;
  readonly bundles: readonly string[];
}

/** A choice, what it brings, and how far from the best it can be at most. */
export interface PlanSolution {
  readonly choice: PlanChoice;
  readonly netMinor: number;
  /** No choice brings more than this. */
  readonly boundMinor: number;
  /** (bound − net) / |bound|; 0 when proven best. */
  readonly gap: number;
  /** What stops the net from being greater, by the prices of the relaxation: `budget`, `minutes`, `kind:…`, a resource's id. */
  readonly binding: readonly { readonly limit: string; readonly worthMinor: number }[];
  /** How it was found: by the relaxation alone, by search, or by the whole-number solver. */
  readonly method: "relaxation" | "heuristic" | "whole-numbers";
  /** Whether the solver was stopped by time or by the user before it had proved its answer. */
  readonly stopped: boolean;
}
