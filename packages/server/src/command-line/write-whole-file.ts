import { existsSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { ProblemError } from "../errors.ts";

/** Writes a file whole or not at all; throws a `ProblemError` where something is there already that is not to be replaced. */
export function writeWholeFile(file: string, text: string, force: boolean): void {
  const refused = (got: string, expected: string) =>
    new ProblemError({
      code: "bad-request",
      message: `${file} was not written`,
      refusals: [{ field: file, got, expected }],
    });
  if (existsSync(file) && !statSync(file).isFile())
    throw refused("something that is no file", "the name of a file");
  if (existsSync(file) && !force)
    throw refused("a file that is there already", "a name that is free, or --force to replace it");
  const draft = `${file}.${process.pid}.part`;
  try {
    writeFileSync(draft, text, { flush: true });
    renameSync(draft, file);
  } catch (error) {
    throw refused((error as Error).message, "a folder that can be written, with room in it");
  } finally {
    rmSync(draft, { force: true });
  }
}
