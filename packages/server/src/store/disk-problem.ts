import { ProblemError } from "../errors.ts";

/** What the user is told of SQLite's primary result codes (https://sqlite.org/rescode.html) for what is not our own doing. */
const words: ReadonlyMap<number, string> = new Map([
  [5, "Another program holds the database at the moment. Nothing was changed; try again"],
  [6, "Another program holds the database at the moment. Nothing was changed; try again"],
  [8, "The database may not be written at the moment. Nothing was changed; make its folder writable again"],
  [
    10,
    "The disk could not be read or written. Nothing was changed; what has been kept can still be looked at",
  ],
  [
    11,
    "The database is damaged. Nothing was changed; stop Ferrule and start it again to see what can be done",
  ],
  [13, "The disk is full. Nothing was changed; make room on it and do this again"],
  [14, "The database cannot be opened any more. Nothing was changed; see whether its folder is still there"],
  [
    26,
    "The database is damaged. Nothing was changed; stop Ferrule and start it again to see what can be done",
  ],
]);

/** A failure of the disk, as the problem that the user is told; nothing for any other error. */
export function diskProblem(error: unknown): ProblemError | undefined {
  const { errcode } = error as { errcode?: number };
  const message = errcode === undefined ? undefined : words.get(errcode & 0xff);
  if (message === undefined) return undefined;
  return Object.assign(new ProblemError({ code: "disk", message }), { cause: error });
}
