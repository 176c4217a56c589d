import { readFileSync } from "node:fs";
import { ProblemError } from "../errors.ts";
import type { Surroundings } from "./command.ts";

/** A text and where it is from, for messages. */
export interface InputText {
  readonly from: string;
  readonly text: string;
}

/** A file's text, or with `-` that of standard input; throws a `ProblemError` where it cannot be read or is not UTF-8. */
export async function inputText(name: string, { readInput }: Surroundings): Promise<InputText> {
  const from = name === "-" ? "standard input" : name;
  const bytes = name === "-" ? await readInput() : fileBytes(name);
  try {
    return { from, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
  } catch {
    throw refused(from, "bytes that are not UTF-8", "a text in UTF-8");
  }
}

function fileBytes(name: string): Uint8Array {
  try {
    return readFileSync(name);
  } catch (error) {
    const { code, message } = error as { code?: string; message: string };
    const got = { ENOENT: "no such file", EISDIR: "a folder", EACCES: "a file that may not be read" }[
      code ?? ""
    ];
    throw refused(name, got ?? message, "a file that can be read");
  }
}

function refused(from: string, got: string, expected: string): ProblemError {
  return new ProblemError({
    code: "bad-request",
    message: `${from} cannot be read`,
    refusals: [{ field: from, got, expected }],
  });
}
