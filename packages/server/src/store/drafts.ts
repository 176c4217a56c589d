import { rmSync } from "node:fs";
import { join } from "node:path";
import { namesIn } from "./backups-folder.ts";

/** The name that a file has until it is whole; it says whose it is. */
export const draftOf = (file: string) => `${file}.${process.pid}.part`;

/** Takes away drafts of a file that a crash has left, or this one of our own, with the helper files of SQLite. */
export function clearDrafts(folder: string, name: string | RegExp, own?: string): void {
  for (const found of namesIn(folder)) {
    const [, of = "", pid] = /^(.+)\.(\d+)\.part(?:-wal|-shm|-journal)?$/.exec(found) ?? [];
    const isOfThese = typeof name === "string" ? of === name : name.test(of);
    if (!isOfThese) continue;
    const isOwn = own !== undefined && join(folder, found).startsWith(own);
    if (isOwn || !isRunning(Number(pid))) rmSync(join(folder, found), { force: true });
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Somebody else's process may not be asked, and is there.
    return (error as { code?: string }).code === "EPERM";
  }
}
