import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { onTestFinished } from "vitest";
import { runCommandLine } from "./run-command-line.ts";

export const tablesFolder = fileURLToPath(new URL("../../../../data", import.meta.url));

/** A folder that is gone when the test is over. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "ferrule-command-line-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

export interface Said {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

export interface Around {
  /** Standard input. */
  readonly input?: string | Uint8Array;
  /** The folder of the bench; by default one that is not there. */
  readonly data?: string;
  readonly width?: number;
}

/** Runs a command line in this process. */
export async function ferrule(args: readonly string[], around: Around = {}): Promise<Said> {
  const { input = "", width = Number.POSITIVE_INFINITY } = around;
  const data = around.data ?? join(temporaryFolder(), "none");
  const said = { out: "", err: "" };
  const exit = await runCommandLine({
    args,
    width,
    env: { FERRULE_DATA: data },
    tablesFolder,
    today: () => "2026-11-25",
    readInput: async () => (typeof input === "string" ? new TextEncoder().encode(input) : input),
    onInterrupt: () => () => {},
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
  });
  return { exit, ...said };
}
