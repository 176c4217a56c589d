import { type FieldPath, fields } from "../parts/fields.ts";
import type { Adapter, Grip, Head, Shaft } from "../parts/part.ts";
import { type Reading, readingFrom, type WrittenReading } from "../parts/reading.ts";
import { type TypicalRow, typicalReading } from "../parts/typical.ts";

/** A part that can be in a club. */
export type ClubPart = Head | Adapter | Shaft | Grip;

/**
 * The reading of a part's field: what was written, else the typical reading for such a part, else `undefined`.
 * @param path a field path such as `massG` or `socket.bbgmIn`, or a name that only the typical table has, such as
 * `balanceFraction`; the reading is in the unit that the path's suffix names.
 */
export function partReading(
  part: ClubPart,
  path: string,
  typicalRows: readonly TypicalRow[],
): Reading | undefined {
  return writtenReading(part, path) ?? typicalReading(typicalRows, part, path);
}

/** The reading of a part's field as written, never a typical one. */
export function writtenReading(part: ClubPart, path: string): Reading | undefined {
  if (!isFieldPath(path)) return undefined;
  const written = valueAt(part, path);
  return written === undefined || written === null ? undefined : readingFrom(path, written as WrittenReading);
}

function isFieldPath(path: string): path is FieldPath {
  return Object.hasOwn(fields, path);
}

/** Paths are one or two names deep. */
function valueAt(part: ClubPart, path: string): unknown {
  const dot = path.indexOf(".");
  const record = part as Record<string, unknown>;
  if (dot < 0) return record[path];
  const inner = record[path.slice(0, dot)];
  return typeof inner === "object" && inner !== null
    ? (inner as Record<string, unknown>)[path.slice(dot + 1)]
    : undefined;
}
