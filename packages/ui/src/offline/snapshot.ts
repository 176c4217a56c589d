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
  /** The ids of parts by the codes of their labels; not there in what was kept before labels had them. */
  readonly codes?: Readonly<Record<string, string>>;
  readonly costs: CostSettings;
  readonly settings: DisplaySettings;
  readonly reference: Reference;
}
