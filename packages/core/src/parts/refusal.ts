import type { z } from "zod";

/** Why a value was not taken: where it stands, what was there, and what would have been taken. */
export interface Refusal {
  readonly field: string;
  readonly got: string;
  readonly expected: string;
}

/** The value, or every reason why it was not taken: at least one. */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusals: Refusal[] };

/** Reads an unknown value with a schema; what is wrong comes back as refusals, never as an exception. */
export function parseWith<T>(schema: z.ZodType<T>, input: unknown): Parsed<T> {
  const result = schema.safeParse(input);
  if (result.success) return { ok: true, value: result.data };
  return { ok: false, refusals: result.error.issues.flatMap((issue) => refusalsFrom(issue, input)) };
}

/** One zod issue as refusals; unknown keys are named one by one. */
export function refusalsFrom(issue: z.core.$ZodIssue, input: unknown): Refusal[] {
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((key) => ({
      field: pathText([...issue.path, key]),
      got: "a field we do not know",
      expected: "no such field here",
    }));
  }
  return [{ field: pathText(issue.path), got: gotText(valueAt(input, issue.path)), expected: issue.message }];
}

function pathText(path: readonly PropertyKey[]): string {
  if (path.length === 0) return "(the whole value)";
  return path.map((step) => (step === "" ? '""' : String(step))).join(".");
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((value, key) => (isRecord(value) ? value[String(key)] : undefined), input);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null;
}

function gotText(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "number") return String(value);
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 80 ? `${text.slice(0, 77)}…` : text;
}
