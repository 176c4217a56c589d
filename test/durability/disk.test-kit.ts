import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { closeSync, mkdtempSync, openSync, readFileSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";

/** A disk of its own, which can be filled up and made read-only. */
export interface SmallDisk {
  readonly folder: string;
  /** Leaves no room on it. */
  fill(): void;
  /** Gives the room back. */
  makeRoom(): void;
  makeReadOnly(): void;
  makeWritable(): void;
}

/**
 * Whether disks can be mounted here, which takes Linux and the right to. On a build machine that has to be so: there the tests that need
 * it run in any case, and fail where it is not.
 */
export function canMount(): boolean {
  if (process.env.CI) return true;
  const folder = mkdtempSync(join(tmpdir(), "ferrule-disk-"));
  try {
    execFileSync("/bin/mount", ["-t", "tmpfs", "-o", "size=1m", "tmpfs", folder], { stdio: "ignore" });
    execFileSync("/bin/umount", [folder], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A disk of so many bytes in memory, gone when the test is over. */
export function smallDisk(bytes: number): SmallDisk {
  const folder = mkdtempSync(join(tmpdir(), "ferrule-disk-"));
  execFileSync("/bin/mount", ["-t", "tmpfs", "-o", `size=${bytes}`, "tmpfs", folder]);
  onTestFinished(() => {
    // Lazily: what a failed test has left open goes with it.
    execFileSync("/bin/umount", ["-l", folder]);
    rmSync(folder, { recursive: true });
  });
  const filler = join(folder, "filler");
  const remount = (how: string) => execFileSync("/bin/mount", ["-o", `remount,${how}`, folder]);
  return {
    folder,
    fill: () => fill(filler),
    makeRoom: () => rmSync(filler),
    makeReadOnly: () => remount("ro"),
    makeWritable: () => remount("rw"),
  };
}

function fill(file: string): void {
  const handle = openSync(file, "w");
  try {
    for (const chunk of [65_536, 4096, 1]) while (writes(handle, chunk));
  } finally {
    closeSync(handle);
  }
}

function writes(handle: number, bytes: number): boolean {
  try {
    return writeSync(handle, Buffer.alloc(bytes, 1)) === bytes;
  } catch (error) {
    if ((error as { code?: string }).code === "ENOSPC") return false;
    throw error;
  }
}

/**
 * What is in a file, as one short text. Never of a database that this process has open: closing the file again would let go of SQLite's
 * locks on it.
 */
export const hashOf = (file: string) => createHash("sha256").update(readFileSync(file)).digest("hex");
