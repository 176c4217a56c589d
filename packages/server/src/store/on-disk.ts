import { closeSync, fsyncSync, openSync, statSync } from "node:fs";

/** Returns once what was written to a file, or which names are in a folder, is on disk. */
export function onDisk(path: string): void {
  const handle = openSync(path, "r");
  try {
    fsyncSync(handle);
  } catch (error) {
    // Some systems have nothing of the kind for folders.
    if (!statSync(path).isDirectory()) throw error;
  } finally {
    closeSync(handle);
  }
}
