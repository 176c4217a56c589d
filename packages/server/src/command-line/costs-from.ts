import { type CostSettings, costSettingsSchema, parseWith, type Refusal } from "@ferrule/core";
import { ProblemError } from "../errors.ts";
import { jsonLines } from "../transfer/json-lines.ts";
import type { InputText } from "./input-text.ts";

/** Costs as JSON, all of them or some; throws a `ProblemError` that names every line that cannot be taken. */
export function costsFrom({ from, text }: InputText): Partial<CostSettings> {
  const { lines, brokenAt } = jsonLines(text);
  if (brokenAt) {
    const { line, character, got, expected } = brokenAt;
    throw refused(from, [{ field: `line ${line}, character ${character}`, got, expected }]);
  }
  const parsed = parseWith(costSettingsSchema.partial(), JSON.parse(text));
  if (parsed.ok) return parsed.value;
  const lineOf = (field: string) => lines.get(field) ?? 1;
  throw refused(
    from,
    parsed.refusals.map((one) => ({ ...one, field: `line ${lineOf(one.field)}, ${one.field}` })),
  );
}

function refused(from: string, refusals: readonly Refusal[]): ProblemError {
  return new ProblemError({
    code: "bad-request",
    message: `${from} cannot be taken for the costs`,
    refusals,
  });
}
