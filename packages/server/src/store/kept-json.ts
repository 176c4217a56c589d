import { resultCodes } from "./result-codes.ts";

/** A text of the database as what it stands for. One that is no JSON was overwritten on the disk, and counts as damage. */
export function keptJson<T>(text: string): T {
  try {
    return JSON.parse(text) as T;
  } catch (error) {
    throw Object.assign(new Error("a text in the database is no JSON", { cause: error }), {
      errcode: resultCodes.corrupt,
    });
  }
}
