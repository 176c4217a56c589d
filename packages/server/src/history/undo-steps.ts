import { isDeepStrictEqual } from "node:util";
import { costSettingsSchema, goalSchema, parseWith, watchSchema } from "@ferrule/core";
import type { z } from "zod";
import type { Conflict } from "../errors.ts";
import type { ChangeEntry, HistoryTable, TableName } from "../store/history.ts";
import { labelSetupSchema } from "../store/labels.ts";
import { settingsSchema } from "../store/settings.ts";
import {
  namedClaimSchema,
  namedClearanceSchema,
  namedEntrySchema,
  namedEvidenceSchema,
  namedInspectionSchema,
  namedJointSchema,
  namedMeasurementSchema,
  namedModelSchema,
  namedPartSchema,
  namedSightingSchema,
} from "../wire/named.ts";
import type { KeptThing, KeptThings, Standing } from "./kept-thing.ts";
import { undoneValue } from "./undone-value.ts";

/** What an undo does to one thing. */
export interface UndoStep {
  readonly table: TableName;
  readonly thing: KeptThing;
  readonly present: Standing | undefined;
  readonly next: Standing | undefined;
}

/** Marks of something else that is told in the same change; where they have been written anew, they are left. */
const leftAlone: ReadonlySet<TableName> = new Set(["former-settings"]);

/** What taking one change back comes to for one of its things. */
export function undoStep(
  things: KeptThings,
  history: HistoryTable,
  number: number,
  entry: ChangeEntry,
): UndoStep | Conflict | undefined {
  const { table, id, place } = entry;
  const thing = things.of(table, id);
  const present = thing.read();
  const value = valueBefore(entry, present);
  const isFree = value === undefined || place === null || thing.otherAt(place) === undefined;
  if (value !== "changed" && isFree) {
    const next = value === undefined ? undefined : { place, value: value.value };
    return { table, thing, present, next };
  }
  if (leftAlone.has(table)) return undefined;
  return {
    table,
    id,
    left: entry.after ?? null,
    present: present?.value ?? null,
    changes: laterChanges(history, number, table, id),
  };
}

export const isConflict = (step: UndoStep | Conflict): step is Conflict => "changes" in step;

function valueBefore(
  { table, before, after }: ChangeEntry,
  present: Standing | undefined,
): { readonly value: unknown } | undefined | "changed" {
  if ((present === undefined) !== (after === undefined)) return "changed";
  if (before === undefined) return isDeepStrictEqual(present?.value, after) ? undefined : "changed";
  const undone = undoneValue(before, after, present?.value);
  if (!undone.stands) return "changed";
  const isWhole = present === undefined || isDeepStrictEqual(present.value, after);
  return isWhole || isSound(table, undone.value) ? { value: undone.value } : "changed";
}

const schemas: { readonly [Name in TableName]?: z.ZodType } = {
  parts: namedPartSchema,
  joints: namedJointSchema,
  claims: namedClaimSchema,
  models: namedModelSchema,
  evidence: namedEvidenceSchema,
  sightings: namedSightingSchema,
  entries: namedEntrySchema,
  measurements: namedMeasurementSchema,
  inspections: namedInspectionSchema,
  clearances: namedClearanceSchema,
  goal: goalSchema,
  costs: costSettingsSchema,
  settings: settingsSchema,
  labels: labelSetupSchema,
};

/** What is put together of two changes has to be something that could have been sent. */
function isSound(table: TableName, value: unknown): boolean {
  const schema =
    table === "watches" && (value as { by?: string }).by === "hand" ? watchSchema : schemas[table];
  return schema === undefined || parseWith(schema, value).ok;
}

const laterMost = 20;

/** Changes of a thing after one, without those that have been taken back and those that took them back. */
export function laterChanges(history: HistoryTable, number: number, table: string, id: string): number[] {
  const numbers = history.ofThing(table, id, laterMost + 1).map((entry) => entry.number);
  return numbers
    .filter((later) => later > number)
    .filter((later) => {
      const change = history.get(later);
      if (change === undefined || change.undoneBy !== null) return false;
      return change.undoes === null || change.undoes <= number;
    });
}
