import type { Deletion } from "../store/deletions.ts";
import { listNames, type PlacedLists } from "../store/lists.ts";
import type { Tables } from "../store/tables.ts";

export type Cleared = PlacedLists & Pick<Deletion, "bench">;

/** Takes everything off the bench and out of the lists about it, and returns it. What the user decided about money stays. */
export function clearBench(tables: Tables): Cleared {
  const taken = {
    parts: tables.parts.all(),
    joints: tables.joints.all(),
    claims: tables.claims.all(),
    models: tables.models.all(),
    evidence: tables.evidence.all(),
    sightings: tables.sightings.all(),
    entries: tables.entries.all(),
    measurements: tables.measurements.all(),
    inspections: tables.inspections.all(),
    clearances: tables.clearances.all(),
    bench: { goal: tables.goals.read(), example: tables.settings.isExample() ?? false },
  };
  for (const name of listNames) tables[name].clear();
  tables.goals.write({});
  return taken;
}
