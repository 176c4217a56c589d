import type {
  CatalogueModel,
  Claim,
  CostSettings,
  Evidence,
  Goal,
  Joint,
  Part,
  Reference,
  Sighting,
} from "@ferrule/core";
import type { DisplaySettings } from "../display-settings.ts";

/** The bench and the lists about it, as they were when they were last fetched. */
export interface Snapshot {
  readonly example: boolean;
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly claims: readonly Claim[];
  readonly goal: Goal;
  readonly undo: number;
  readonly models: readonly CatalogueModel[];
  readonly evidence: readonly Evidence[];
  readonly sightings: readonly Sighting[];
  readonly costs: CostSettings;
  readonly settings: DisplaySettings;
  readonly reference: Reference;
}
