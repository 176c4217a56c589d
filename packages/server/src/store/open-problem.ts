import { statfsSync } from "node:fs";
import { StartupProblem } from "../startup-problem.ts";
import { latestBackup } from "./backups-folder.ts";
import { resultCodeOf, resultCodes } from "./result-codes.ts";

const leastFreeBytes = 1024 * 1024;

/** A database that can be read but is not whole. */
export class Damaged extends Error {}

/** Whether SQLite says that the file is no sound database. */
export function isDamage(error: unknown): boolean {
  const code = resultCodeOf(error);
  return error instanceof Damaged || code === resultCodes.corrupt || code === resultCodes.notADatabase;
}

/** Whether somebody else holds the database. */
export function isInUse(error: unknown): boolean {
  const code = resultCodeOf(error);
  return code === resultCodes.busy || code === resultCodes.locked;
}

/** Why the database of a folder cannot be opened, with a way out; what we did not foresee is returned as it is. */
export function openProblem(error: unknown, file: string, folder: string): unknown {
  if (error instanceof StartupProblem) return error;
  // SQLite takes several lines for what it finds.
  const message = (error as Error).message.replace(/\s+/g, " ");
  if (isDamage(error))
    return new StartupProblem(
      `The bench's database ${file} is damaged (${message}). It has been left as it is. ${wayBack(folder)}`,
    );
  if (isInUse(error))
    return new StartupProblem(
      `The bench's database ${file} is in use by another program. Stop that program, or set FERRULE_DATA to another folder`,
    );
  // Read-only (8), disk errors (10), full (13) and a file that cannot be opened (14) are all the folder's.
  return isFull(error, folder) ? fullProblem(folder, message) : folderProblem(folder, message);
}

/** What to do where the database cannot be used as it is. */
export function wayBack(folder: string): string {
  const backup = latestBackup(folder);
  const way =
    backup === undefined
      ? "Put a backup in its place (ferrule restore FILE)"
      : `Go back to the latest backup (ferrule restore ${backup})`;
  return `${way}, or move it away to start afresh, or set FERRULE_DATA to another folder`;
}

export function folderProblem(folder: string, message: string): StartupProblem {
  return new StartupProblem(
    `The folder ${folder} for the bench's database cannot be written (${message}). ` +
      `Make it writable for this account, or set FERRULE_DATA to another folder`,
  );
}

function fullProblem(folder: string, message: string): StartupProblem {
  return new StartupProblem(
    `The disk of the folder ${folder} is full (${message}). Nothing has been changed. ` +
      `Make room on it and start again, or set FERRULE_DATA to a folder on another disk`,
  );
}

/** Says so itself, or fails at its helper files on a disk without room for them. */
function isFull(error: unknown, folder: string): boolean {
  const code = resultCodeOf(error);
  if (code === resultCodes.full) return true;
  return (
    (code === resultCodes.ioError || code === resultCodes.cannotOpen) && freeBytes(folder) < leastFreeBytes
  );
}

function freeBytes(folder: string): number {
  try {
    const { bavail, bsize } = statfsSync(folder);
    return bavail * bsize;
  } catch {
    return Number.POSITIVE_INFINITY;
  }
}
