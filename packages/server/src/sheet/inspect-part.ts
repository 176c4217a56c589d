import {
  type Clearance,
  canBePutRight,
  clearanceRefusals,
  clearedFaults,
  type Fault,
  faultsFromAnswers,
  type Inspection,
  type InspectionAnswer,
  type InspectionRow,
  inspectedFaults,
  inspectionRowsFor,
  type Part,
  type Refusal,
  safetyStops,
} from "@ferrule/core";
import { formerFields } from "../bench/former-fields.ts";
import { newId } from "../bench/new-id.ts";
import { done, type Outcome, problem } from "../errors.ts";
import type { ListName } from "../store/lists.ts";
import type { SheetTools } from "./sheet-tools.ts";

/** What there is to look at on a part, and what was found and cleared before, the last first. */
export interface PartInspection {
  readonly part: Part;
  readonly rows: readonly InspectionRow[];
  readonly inspections: readonly Inspection[];
  readonly clearances: readonly Clearance[];
  /** Faults of safety that stand, and whether a practised person could put each right. */
  readonly stops: readonly { readonly fault: Fault; readonly canBePutRight: boolean }[];
}

export interface InspectRequest {
  readonly part: string;
  readonly answers: readonly InspectionAnswer[];
  readonly on?: string;
  readonly by?: string;
  readonly note?: string;
}

export interface Inspected {
  readonly inspection: Inspection;
  readonly part: Part;
  /** Faults of safety that were denied now but stay until somebody clears them. */
  readonly toClear: readonly Fault[];
}

export interface ClearRequest extends Omit<Clearance, "id" | "on"> {
  readonly on?: string;
}

export function partInspection(
  { bench, tables, reference }: SheetTools,
  id: string,
): Outcome<PartInspection> {
  const found = bench.parts.get(id);
  if (!found.ok) return found;
  const part = found.value;
  const inspections = tables.inspections.all().map(({ value }) => value);
  const clearances = tables.clearances.all().map(({ value }) => value);
  return done({
    part,
    rows: inspectionRowsFor(part, reference.inspection),
    inspections: inspections.filter((one) => one.part === id).toReversed(),
    clearances: clearances.filter((one) => one.part === id).toReversed(),
    stops: safetyStops([part]).map(({ fault }) => ({ fault, canBePutRight: canBePutRight(part, fault) })),
  });
}

/** Takes answers down and makes them faults asserted and denied on the part; one undo takes it back. */
export function inspectPart(tools: SheetTools, request: InspectRequest): Outcome<Inspected> {
  const { bench, tables, reference, today } = tools;
  return tables.together(
    () => {
      const found = bench.parts.get(request.part);
      if (!found.ok) return found;
      const part = found.value;
      const rows = inspectionRowsFor(part, reference.inspection);
      const refusals = answerRefusals(request.answers, rows);
      if (refusals.length > 0) return problem("bad-request", "The inspection was not taken", refusals);
      const { asserted, denied } = faultsFromAnswers(request.answers, rows);
      const inspection: Inspection = {
        id: newId("inspection", (id) => tables.inspections.get(id) !== undefined),
        on: request.on ?? today(),
        part: part.id,
        answers: [...request.answers],
        asserted: [...asserted],
        denied: [...denied],
        ...(request.by ? { by: request.by } : {}),
        ...(request.note ? { note: request.note } : {}),
      };
      tables.inspections.insert(inspection);
      const { faults, deniedFaults, toClear } = inspectedFaults(part, inspection);
      const now = writeFaults(tools, part, faults, deniedFaults, { inspections: [inspection.id] });
      return done({ inspection, part: now, toClear });
    },
    { what: "part-inspected" },
  );
}

function answerRefusals(answers: readonly InspectionAnswer[], rows: readonly InspectionRow[]): Refusal[] {
  const known = new Set(rows.map(({ id }) => id));
  const ids = answers.map(({ row }) => row);
  return ids.flatMap((row, at) =>
    known.has(row) && ids.indexOf(row) === at
      ? []
      : [
          {
            field: `answers.${at}.row`,
            got: JSON.stringify(row),
            expected: "a row for this part, each once",
          },
        ],
  );
}

/** Clears a fault of safety by a person's word; the note is kept, and one undo takes the clearing back. */
export function clearFault(
  tools: SheetTools,
  { part: id, fault, because, by, note, on }: ClearRequest,
): Outcome<{ clearance: Clearance; part: Part }> {
  const { bench, tables, today } = tools;
  return tables.together(
    () => {
      const found = bench.parts.get(id);
      if (!found.ok) return found;
      const refusals = clearanceRefusals(found.value, { fault, because });
      if (refusals.length > 0) return problem("bad-request", "The fault was not cleared", refusals);
      const clearance: Clearance = {
        id: newId("clearance", (taken) => tables.clearances.get(taken) !== undefined),
        on: on ?? today(),
        part: id,
        fault,
        because,
        by,
        note,
      };
      tables.clearances.insert(clearance);
      const { faults, deniedFaults } = clearedFaults(found.value, fault);
      const part = writeFaults(tools, found.value, faults, deniedFaults, { clearances: [clearance.id] });
      return done({ clearance, part });
    },
    { what: "fault-cleared" },
  );
}

/** An empty list of faults is left out, as a part that nobody spoke of has none. */
function writeFaults(
  { tables }: SheetTools,
  part: Part,
  faults: readonly Fault[],
  deniedFaults: readonly Fault[],
  added: { readonly [Name in ListName]?: readonly string[] },
): Part {
  const { faults: _faults, deniedFaults: _denied, ...rest } = part;
  const now = {
    ...rest,
    ...(faults.length > 0 ? { faults: [...faults] } : {}),
    ...(deniedFaults.length > 0 ? { deniedFaults: [...deniedFaults] } : {}),
  } as Part;
  tables.parts.replace(part.id, now);
  tables.deletions.push({ added, changed: { parts: [{ id: part.id, fields: formerFields(part, now) }] } });
  return now;
}
