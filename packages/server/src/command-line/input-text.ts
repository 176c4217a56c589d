import { readFileSync, statSync } from "node:fs";
import { decodedText } from "@ferrule/core";
import { ProblemError } from "../errors.ts";
import type { Surroundings } from "./command.ts";

/** A text and where it is from, for messages. */
export interface InputText {
  readonly from: string;
  readonly text: string;
}

/** Larger files than this are not read: a bench of ten thousand parts has a tenth of it. */
const bytesMost = 50_000_000;

/** A file's text, or with `-` that of standard input; throws a `ProblemError` where it cannot be read or is no text. */
export async function inputText(name: string, { readInput }: Surroundings): Promise<InputText> {
  const from = name === "-" ? "standard input" : name;
  const bytes = name === "-" ? await readInput() : fileBytes(name);
  if (bytes.length > bytesMost) throw tooLarge(from, bytes.length);
  const text = decodedText(bytes);
  if (text === undefined)
    throw refused(from, "bytes that are no text", "a text in UTF-8, Windows-1252, or UTF-16 with its mark");
  return { from, text };
}

function tooLarge(from: string, size: number): ProblemError {
  return refused(from, `${size} bytes`, `at most ${bytesMost} bytes`);
}

function fileBytes(name: string): Uint8Array {
  try {
    const { size } = statSync(name);
    if (size > bytesMost) throw tooLarge(name, size);
    return readFileSync(name);
  } catch (error) {
    if (error instanceof ProblemError) throw error;
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
