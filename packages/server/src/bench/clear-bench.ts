import type { Deletion } from "../store/deletions.ts";
import type { Tables } from "../store/tables.ts";

/** Takes everything off the bench, and returns it. */
export function clearBench(tables: Tables): Deletion {
  const taken = {
    parts: tables.parts.all(),
    joints: tables.joints.all(),
    claims: tables.claims.all(),
    bench: {
      goal: tables.goals.read(),
      example: tables.settings.isExample() ?? false,
    },
  };
  for (const table of [tables.joints, tables.claims, tables.parts]) table.clear();
  tables.goals.write({});
  return taken;
}
