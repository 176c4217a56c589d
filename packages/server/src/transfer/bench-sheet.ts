import { benchColumns, rowKinds } from "./columns.ts";
import { onlyRefusal, type Sheet } from "./read-csv.ts";
import { unflatten } from "./unflatten.ts";

const kindExpected = `one of ${rowKinds.join(", ")}`;

/** The bench's own file: parts, joints, claims and the goal in one table, told apart by their kind. */
export const benchSheet: Sheet = {
  required: ["kind"],
  isNumber: (name) => benchColumns.type(name) === "number",
  readRow: (cells, line) => {
    const kind = cells.get("kind") ?? "";
    const list = listOf(kind);
    if (list === undefined)
      return onlyRefusal({
        line,
        column: "kind",
        got: kind === "" ? "nothing" : JSON.stringify(kind),
        expected: kindExpected,
      });
    if (list !== "parts") cells.delete("kind");
    return { entries: [{ list, value: unflatten(cells, benchColumns), lineOf: () => line }], refused: [] };
  },
};

function listOf(kind: string): string | undefined {
  if (kind === "joint") return "joints";
  if (kind === "claim") return "claims";
  if (kind === "goal") return "goal";
  return (rowKinds as readonly string[]).includes(kind) ? "parts" : undefined;
}
