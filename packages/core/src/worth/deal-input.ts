import type { Bench } from "../graph/bench-graph.ts";
import type { CatalogueModel } from "../listing/catalogue.ts";
import type { Listing } from "../listing/listing.ts";
import type { Reference } from "../parts/reference.ts";
import type { Rule } from "../rules/rule.ts";
import type { CostSettings } from "./cost-settings.ts";
import type { Evidence } from "./evidence.ts";
import type { Sighting } from "./sighting.ts";

/** Everything that a judgement rests on; nothing else is looked at. */
export interface DealInput {
  readonly listing: Listing;
  readonly bench: Bench;
  readonly rules: readonly Rule[];
  readonly reference: Reference;
  readonly catalogue: readonly CatalogueModel[];
  readonly evidence: readonly Evidence[];
  readonly sightings: readonly Sighting[];
  readonly costs: CostSettings;
  /** The day of the judgement, such as 2026-11-25. */
  readonly today: string;
  /** How far it is to the seller and back, where the user knows. */
  readonly roundTripKm?: number;
}
