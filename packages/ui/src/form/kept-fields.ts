import type { RecordField } from "./record-field.ts";

/** What a thing holds that its form does not ask about; it is kept as it is. */
export function keptFields(
  before: object | undefined,
  fields: readonly RecordField[],
): Record<string, unknown> {
  const asked = new Set(fields.map(({ path }) => path.split(".")[0]));
  return Object.fromEntries(Object.entries(before ?? {}).filter(([name]) => !asked.has(name)));
}
