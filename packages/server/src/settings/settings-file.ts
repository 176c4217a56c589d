import { costSettingsSchema, goalSchema, parseSaleTemplate, parseWith, type Refusal } from "@ferrule/core";
import { z } from "zod";
import { done, type Outcome, problem } from "../errors.ts";
import { labelSetupSchema } from "../store/labels.ts";
import { settingsSchema } from "../store/settings.ts";
import { jsonLines } from "../transfer/json-lines.ts";

/** Settings that are put in together: all of them or some. What is left out stays as it is. */
export const settingsPartSchema = z.strictObject({
  display: settingsSchema.partial().optional(),
  goal: goalSchema.optional(),
  costs: costSettingsSchema.partial().optional(),
  labels: labelSetupSchema.optional(),
  /** The user's own template for descriptions; null for the tool's. */
  saleTemplate: z.string().min(1).max(8000).nullable().optional(),
});
export type SettingsPart = z.infer<typeof settingsPartSchema>;

/** Everything the user decides, as a file to take elsewhere. */
export const settingsFileSchema = settingsPartSchema.extend({
  format: z.literal("ferrule-settings"),
  version: z.literal(1),
});
export type SettingsFile = z.infer<typeof settingsFileSchema>;

/** Reads a file of settings; what cannot be taken is named with its line. */
export function readSettingsFile(text: string): Outcome<SettingsPart> {
  const { lines, brokenAt } = jsonLines(text);
  if (brokenAt) {
    const { line, character, got, expected } = brokenAt;
    return refused([{ field: `line ${line}, character ${character}`, got, expected }]);
  }
  const parsed = parseWith(settingsFileSchema, JSON.parse(text));
  const refusals = parsed.ok ? templateRefusals(parsed.value.saleTemplate) : parsed.refusals;
  if (!parsed.ok || refusals.length > 0)
    return refused(
      refusals.map((one) => ({ ...one, field: `line ${lines.get(one.field) ?? 1}, ${one.field}` })),
    );
  const { format: _format, version: _version, ...settings } = parsed.value;
  return done(settings);
}

function templateRefusals(template: string | null | undefined): Refusal[] {
  const parsed = typeof template === "string" ? parseSaleTemplate(template) : undefined;
  return parsed === undefined || parsed.ok
    ? []
    : parsed.refusals.map((one) => ({ ...one, field: "saleTemplate" }));
}

const refused = (refusals: readonly Refusal[]) =>
  problem("bad-request", "The file was not taken for settings", refusals);
