import { codesNear, typedCode } from "./short-code.ts";

/** What a typed or scanned code led to. */
export interface FoundCode {
  /** The code as it was understood. */
  readonly code: string;
  /** The id of the part whose it is; null where nothing has it. */
  readonly part: string | null;
  /** Where nothing has it: codes of the bench that are one slip away, and their parts. */
  readonly near: readonly { readonly code: string; readonly part: string }[];
}

/** Finds the part of a code, as somebody types or scans it, among the ids of parts by their codes. */
export function findByCode(text: string, parts: ReadonlyMap<string, string>): FoundCode {
  const typed = typedCode(text);
  const code = typed.is === "no-code" ? text.trim().slice(0, 40) : typed.code;
  const part = parts.get(code) ?? null;
  const near = part === null ? codesNear(code, parts.keys()) : [];
  return { code, part, near: near.map((one) => ({ code: one, part: parts.get(one) as string })) };
}
