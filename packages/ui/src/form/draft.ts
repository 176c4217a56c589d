import { type Fault, type FieldPath, fields, type Money, type Part, type PartKind } from "@ferrule/core";
import type { DisplaySettings } from "../display-settings.ts";
import { lengthInput } from "../format/length-input.ts";
import { moneyInput, parseMoney } from "../format/money.ts";
import { parseLength } from "../format/parse-length.ts";
import { parseNumber } from "../format/parse-number.ts";
import { faultsByKind } from "../words/part-words.ts";
import type { FormField } from "./form-field.ts";
import { formFields } from "./form-fields.ts";
import { isDiameter } from "./is-diameter.ts";
import { valueAt, withValue } from "./path.ts";
import { settingsFromText, settingsText } from "./settings-text.ts";

/** What stands in the form, word for word: by field path, with `path:plusMinus` and `path:source` for readings. */
export type Draft = Readonly<Record<string, string>>;

/** The fields of a form that apply to what has been chosen so far. */
export function fieldsInUse(
  kind: PartKind,
  draft: Draft,
): { first: readonly FormField[]; rest: readonly FormField[] } {
  const applies = (field: FormField) => field.only === undefined || draft["socket.type"] === field.only;
  const { first, rest } = formFields[kind];
  return { first: first.filter(applies), rest: rest.filter(applies) };
}

/** The part a draft describes. What cannot be read is left as it was typed, so that the refusal names it. */
export function partFromDraft(
  kind: PartKind,
  draft: Draft,
  display: DisplaySettings,
  before?: Part,
): Record<string, unknown> {
  const { first, rest } = fieldsInUse(kind, draft);
  let part: Record<string, unknown> = { ...unknownFields(before), kind };
  for (const name of ["id", "note"]) if (draft[name]?.trim()) part[name] = draft[name]?.trim();
  for (const field of [...first, ...rest]) {
    const value = valueOfField(field, draft, display);
    if (value !== undefined) part = withValue(part, field.path, value);
  }
  return { ...part, ...faultsOf(kind, draft, before) };
}

/** Fields of a stored part that the form does not know; they are kept as they are. */
function unknownFields(before: Part | undefined): Record<string, unknown> {
  if (!before) return {};
  const { first, rest } = formFields[before.kind];
  const known = new Set([
    "id",
    "kind",
    "note",
    "faults",
    "deniedFaults",
    ...[...first, ...rest].map(({ path }) => path.split(".")[0]),
  ]);
  return Object.fromEntries(Object.entries(before).filter(([name]) => !known.has(name)));
}

function valueOfField(field: FormField, draft: Draft, display: DisplaySettings): unknown {
  const text = draft[field.path]?.trim() ?? "";
  if (text === "") return undefined;
  switch (field.control) {
    case "reading":
      return readingOf(field.path, text, draft, display);
    case "year":
      return parseNumber(text) ?? text;
    case "money": {
      const amountMinor = parseMoney(text);
      return amountMinor === undefined
        ? text
        : ({ amountMinor, currency: draft[`${field.path}:currency`] ?? display.currency } satisfies Money);
    }
    case "yes-no":
      return text === "yes";
    case "settings":
      return settingsFromText(text);
    default:
      return text;
  }
}

function readingOf(path: FieldPath, text: string, draft: Draft, display: DisplaySettings): unknown {
  const value = quantityOf(path, text, display) ?? text;
  const source = draft[`${path}:source`] || undefined;
  const plusMinusText = draft[`${path}:plusMinus`]?.trim() ?? "";
  if (!source && plusMinusText === "") return value;
  const plusMinus =
    plusMinusText === "" ? undefined : (quantityOf(path, plusMinusText, display) ?? plusMinusText);
  return { value, plusMinus, source };
}

function quantityOf(path: FieldPath, text: string, display: DisplaySettings): number | undefined {
  if (fields[path].unit !== "in") return parseNumber(text);
  return parseLength(text, isDiameter(path) ? "in" : display.lengthUnit);
}

/** The answers about faults; those a stored part had keep their order, and the ones the form does not ask about stay. */
function faultsOf(kind: PartKind, draft: Draft, before?: Part): { faults?: Fault[]; deniedFaults?: Fault[] } {
  const asked = new Set([...(before?.faults ?? []), ...(before?.deniedFaults ?? []), ...faultsByKind[kind]]);
  const having = (answer: string) => [...asked].filter((fault) => draft[`fault:${fault}`] === answer);
  const [faults, deniedFaults] = [having("there"), having("not-there")];
  return { ...(faults.length > 0 && { faults }), ...(deniedFaults.length > 0 && { deniedFaults }) };
}

/** The draft that describes a stored part. */
export function draftFromPart(part: Part, display: DisplaySettings): Draft {
  const draft: Record<string, string> = { id: part.id, note: part.note ?? "" };
  const { first, rest } = formFields[part.kind];
  for (const field of [...first, ...rest])
    Object.assign(draft, textOf(field, valueAt(part, field.path), display));
  for (const fault of part.faults ?? []) draft[`fault:${fault}`] = "there";
  for (const fault of part.deniedFaults ?? []) draft[`fault:${fault}`] = "not-there";
  return draft;
}

function textOf(field: FormField, value: unknown, display: DisplaySettings): Draft {
  if (value === undefined) return {};
  if (field.control === "reading") return readingText(field.path, value, display);
  if (field.control === "money") return moneyText(field.path, value as Money);
  if (field.control === "yes-no") return { [field.path]: value ? "yes" : "no" };
  if (field.control === "settings") return { [field.path]: settingsText(value) };
  return { [field.path]: String(value) };
}

/** The currency an amount was kept in stays with it, whatever the page shows by now. */
function moneyText(path: string, { amountMinor, currency }: Money): Draft {
  return { [path]: moneyInput(amountMinor), [`${path}:currency`]: currency };
}

function readingText(path: FieldPath, value: unknown, display: DisplaySettings): Draft {
  const unit = fields[path].unit !== "in" ? "none" : isDiameter(path) ? "in" : display.lengthUnit;
  if (typeof value === "number") return { [path]: lengthInput(value, unit) };
  const written = value as { value: number; plusMinus?: number; source?: string };
  return {
    [path]: lengthInput(written.value, unit),
    ...(written.plusMinus !== undefined && {
      [`${path}:plusMinus`]: lengthInput(written.plusMinus, unit),
    }),
    ...(written.source && { [`${path}:source`]: written.source }),
  };
}
