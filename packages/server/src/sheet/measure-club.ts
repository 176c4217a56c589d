import {
  type Build,
  type BuildSheet,
  clubSummary,
  estimatedOf,
  type Joint,
  type MeasuredQuantity,
  type Measurement,
  measuredQuantities,
  measuredQuantityNames,
  mergePatch,
  type Part,
  shaftAfterBuild,
  type Uncertain,
} from "@ferrule/core";
import { formerFields } from "../bench/former-fields.ts";
import { newId } from "../bench/new-id.ts";
import { done, type Outcome } from "../errors.ts";
import type { Placed } from "../store/document-table.ts";
import { type Compared, compared, sheetOfClub } from "./club-sheet.ts";
import { type FoundClub, findClub } from "./find-club.ts";
import type { SheetTools } from "./sheet-tools.ts";

export interface MeasureRequest {
  readonly club: string;
  readonly build?: Build;
  readonly measured: { readonly [Q in MeasuredQuantity]?: number | { value: number; plusMinus?: number } };
  /** The club has been put together: its joints are made on the bench, and those of former clubs undone. */
  readonly built?: boolean;
  readonly on?: string;
  readonly by?: string;
  readonly note?: string;
}

export interface Measured extends Compared {
  /** Parts with what was read written on them. */
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly undone: readonly Joint[];
}

/**
 * Records what was read off a finished club beside what was estimated of it. Where the club stands, or has been built now, the
 * playing length becomes the shaft's own reading, and its joints are made. All of it or nothing; one undo takes it back.
 */
export function measureClub(tools: SheetTools, request: MeasureRequest): Outcome<Measured> {
  const { tables } = tools;
  return tables.together(
    () => {
      const found = findClub(tools, request.club, request.build ?? {});
      if (!found.ok) return found;
      const sheet = sheetOfClub(tools, found.value);
      if (!sheet.ok) return sheet;
      const measurement = measurementOf(tools, request, found.value, sheet.value);
      tables.measurements.insert(measurement);
      const built = request.built ? joinClub(tools, found.value) : { joints: [], undone: [] };
      const stands = request.built || found.value.club.work.every(({ step }) => !joining.has(step));
      const shaft = stands ? writeShaft(tools, found.value, sheet.value, measurement) : undefined;
      tables.deletions.push({
        joints: built.undone,
        added: { measurements: [measurement.id], joints: built.joints.map(({ id }) => id as string) },
        changed: shaft
          ? { parts: [{ id: shaft.now.id, fields: formerFields(shaft.before, shaft.now) }] }
          : {},
      });
      return done({
        ...compared(measurement),
        parts: shaft ? [shaft.now] : [],
        joints: built.joints,
        undone: built.undone.map(({ value }) => value),
      });
    },
    { what: "club-measured" },
  );
}

/** Steps after which a joint stands that did not before. */
const joining: ReadonlySet<string> = new Set(["screw-in", "bond-tip", "grip-on"]);

function measurementOf(
  { tables, today }: SheetTools,
  { club, measured, built, on, by, note }: MeasureRequest,
  { parts, build }: FoundClub,
  { estimates }: BuildSheet,
): Measurement {
  const ids = [parts.head, parts.adapter, parts.shaft, parts.grip].flatMap((part) => part?.id ?? []);
  const estimated = measuredQuantityNames.flatMap((name) => {
    const estimate = estimatedOf(estimates, name);
    return estimate ? [[name, estimate] as const] : [];
  });
  return {
    id: newId("measurement", (id) => tables.measurements.get(id) !== undefined),
    on: on ?? today(),
    club,
    parts: ids,
    ...(parts.head.clubType ? { clubType: parts.head.clubType } : {}),
    ...(Object.keys(build).length > 0 ? { build } : {}),
    measured: readingsOf(measured),
    estimated: Object.fromEntries(estimated),
    ...(built ? { built } : {}),
    ...(by ? { by } : {}),
    ...(note ? { note } : {}),
  };
}

/** A bare number takes the uncertainty of a usual instrument. */
function readingsOf(measured: MeasureRequest["measured"]): Measurement["measured"] {
  const named = measuredQuantityNames.flatMap((name): (readonly [string, Uncertain])[] => {
    const read = measured[name];
    if (read === undefined) return [];
    const { plusMinus } = measuredQuantities[name];
    return [[name, typeof read === "number" ? { value: read, plusMinus } : { plusMinus, ...read }]];
  });
  return Object.fromEntries(named);
}

function joinClub(
  { tables }: SheetTools,
  { club, parts }: FoundClub,
): { joints: readonly Joint[]; undone: readonly Placed<Joint>[] } {
  const undone = club.undoes.flatMap(({ id }) => tables.joints.get(id as string) ?? []);
  for (const { value } of undone) tables.joints.remove(value.id as string);
  const standing = tables.joints.all().map(({ value }) => value);
  const stands = ({ type, parts: [a, b] }: Joint) =>
    standing.some((joint) => joint.type === type && joint.parts.includes(a) && joint.parts.includes(b));
  const joints = jointsOf(parts)
    .filter((joint) => !stands(joint))
    .map((joint) => {
      const named = { ...joint, id: newId("joint", (id) => tables.joints.get(id) !== undefined) };
      tables.joints.insert(named);
      return named;
    });
  return { joints, undone };
}

function jointsOf({ head, adapter, shaft, grip }: FoundClub["parts"]): Joint[] {
  return [
    ...(adapter ? [{ type: "screwed", parts: [head.id, adapter.id] } satisfies Joint] : []),
    { type: "bonded", parts: [(adapter ?? head).id, shaft.id] },
    { type: "gripped", parts: [grip.id, shaft.id] },
  ];
}

function writeShaft(
  { tables, reference }: SheetTools,
  { parts, build }: FoundClub,
  { estimates }: BuildSheet,
  { measured, built }: Measurement,
): { readonly before: Part; readonly now: Part } | undefined {
  const { buttTrimIn } = clubSummary(parts, build, reference);
  const patch = shaftAfterBuild({
    parts,
    build: built ? build : {},
    estimates,
    playingLengthIn: measured.playingLengthIn,
    buttTrimIn: built ? (buttTrimIn ?? 0) : 0,
  });
  const before = tables.parts.get(parts.shaft.id)?.value;
  if (!before || Object.keys(patch).length === 0) return undefined;
  const { length: _length, ...rest } = before as Part & { length?: unknown };
  const now = mergePatch("length" in patch ? rest : before, patch) as Part;
  tables.parts.replace(now.id, now);
  return { before, now };
}
