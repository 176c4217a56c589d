import { execFile } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the built page is. */
    readonly pageFolder: string;
  }
}

const checkout = fileURLToPath(new URL("../../", import.meta.url));

/** Builds the page once for all tests in a browser, as it ships, whatever this test run's own environment says. */
export async function setup(project: TestProject): Promise<() => void> {
  const pageFolder = mkdtempSync(join(tmpdir(), "ferrule-page-"));
  const vite = join(checkout, "node_modules/vite/bin/vite.js");
  const words = [vite, "build", "packages/ui", "--outDir", pageFolder, "--emptyOutDir", "--logLevel", "warn"];
  await promisify(execFile)(process.execPath, words, {
    cwd: checkout,
    env: { ...process.env, NODE_ENV: "production" },
  });
  project.provide("pageFolder", pageFolder);
  return () => rmSync(pageFolder, { recursive: true, force: true });
}
