import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Temporary folders that several tests share; whoever makes them removes them. */
export function foldersOf() {
  const made: string[] = [];
  return {
    make: () => {
      const folder = mkdtempSync(join(tmpdir(), "ferrule-hostile-"));
      made.push(folder);
      return folder;
    },
    remove: () => {
      for (const folder of made) rmSync(folder, { recursive: true, force: true });
    },
  };
}
