import type { Bench } from "../graph/bench-graph.ts";
import type { CatalogueModel } from "../listing/catalogue.ts";
import type { ClubType } from "../parts/part.ts";
import type { Reference } from "../parts/reference.ts";
import type { Rule } from "../rules/rule.ts";
import type { CostSettings } from "../worth/cost-settings.ts";
import type { Evidence } from "../worth/evidence.ts";
import type { PlanPrices } from "../worth/plan-prices.ts";
import type { Sighting } from "../worth/sighting.ts";

/** What the user allows and asks of a plan; null is no limit. */
export interface PlanWishes {
  /** The most money laid out. */
  readonly budgetMinor: number | null;
  /** The most own time. */
  readonly minutes: number | null;
  /** At most so many clubs of one type are built. */
  readonly mostOfType: Readonly<Partial<Record<ClubType, number>>>;
  /** Whether own hours count at the user's rate, or for nothing. */
  readonly hours: "at-own-rate" | "for-nothing";
  /**
   * Leave out whatever brings less for an hour, with what has to be bought and driven for it, before the hour itself is
   * counted; null to take everything that brings something.
   */
  readonly leastPerHourMinor: number | null;
}

/** Everything that a plan rests on. */
export interface PlanInput {
  readonly bench: Bench;
  readonly rules: readonly Rule[];
  readonly reference: Reference;
  readonly catalogue: readonly CatalogueModel[];
  readonly evidence: readonly Evidence[];
  /** All that was seen; the open ones are what can be bought today. */
  readonly sightings: readonly Sighting[];
  readonly costs: CostSettings;
  readonly today: string;
  readonly wishes: PlanWishes;
  /** What parts are worth kept, where that has been worked out: without it what may wait is looked at part by part. */
  readonly prices?: PlanPrices;
}
