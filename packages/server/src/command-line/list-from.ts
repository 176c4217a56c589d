import { ProblemError } from "../errors.ts";
import type { RowRefusal } from "../transfer/entry.ts";
import { type ListFile, listTarget } from "../transfer/list-target.ts";
import { fileFormat } from "./file-format.ts";
import type { InputText } from "./input-text.ts";
import { rowRefusals } from "./row-refusals.ts";

/** A list about the bench as it was exported; throws a `ProblemError` that names every line that cannot be taken. */
export function listFrom<T extends { id?: string }>(
  { from, text }: InputText,
  file: ListFile<T>,
): readonly T[] {
  let taken: readonly T[] = [];
  const shelf = {
    all: () => [],
    refusals: () => [],
    takeIn: (values: readonly T[]) => {
      taken = values;
    },
  };
  const target = listTarget(shelf, { ...file, where: "in the file" });
  const read = target.read(fileFormat(from, text), text);
  const checked = target.check(read.entries, "refuse");
  const refused: RowRefusal[] = [...read.refused, ...checked.refused];
  if (refused.length > 0)
    throw new ProblemError({
      code: "bad-request",
      message: `${from} cannot be taken for the ${file.list}`,
      refusals: rowRefusals(refused.sort((one, other) => one.line - other.line)),
    });
  checked.takeIn();
  return taken;
}
