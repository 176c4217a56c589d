import { ProblemError } from "../errors.ts";
import { resultCodeOf, resultCodes } from "./result-codes.ts";

const held = "Another program holds the database at the moment. Nothing was changed; try again";
const damaged =
  "The database is damaged. Nothing was changed; stop Ferrule and start it again to see what can be done";

/** What the user is told of what is not our own doing. */
const words: ReadonlyMap<number, string> = new Map([
  [resultCodes.busy, held],
  [resultCodes.locked, held],
  [
    resultCodes.readOnly,
    "The database may not be written at the moment. Nothing was changed; make its folder writable again",
  ],
  [
    resultCodes.ioError,
    "The disk could not be read or written. Nothing was changed; what has been kept can still be looked at",
  ],
  [resultCodes.corrupt, damaged],
  [resultCodes.full, "The disk is full. Nothing was changed; make room on it and do this again"],
  [
    resultCodes.cannotOpen,
    "The database cannot be opened any more. Nothing was changed; see whether its folder is still there",
  ],
  [resultCodes.notADatabase, damaged],
]);

/** A failure of the disk, as the problem that the user is told; nothing for any other error. */
export function diskProblem(error: unknown): ProblemError | undefined {
  const code = resultCodeOf(error);
  const message = code === undefined ? undefined : words.get(code);
  if (message === undefined) return undefined;
  return Object.assign(new ProblemError({ code: "disk", message }), { cause: error });
}
