import { mkdtempSync, rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  interface ProvidedContext {
    /** The server's thread, put together from its source. */
    readonly threadFile: string;
  }
}

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
/** A place from which the packages of the server are found. */
const beside = here("../../packages/server/node_modules/");

/** Puts the server's thread together once for all tests: each server of each test starts some. */
export async function setup(project: TestProject): Promise<() => void> {
  const outDir = mkdtempSync(`${beside}.thread-test-`);
  await build({
    configFile: false,
    logLevel: "error",
    resolve: { alias: { "@ferrule/core": here("../../packages/core/src/index.ts") } },
    ssr: { noExternal: ["fuse.js", "zod"], external: ["highs"] },
    build: {
      ssr: here("../../packages/server/src/threads/thread.ts"),
      outDir,
      emptyOutDir: true,
      rolldownOptions: { output: { entryFileNames: "thread.mjs" } },
    },
  });
  project.provide("threadFile", `${outDir}/thread.mjs`);
  return () => rmSync(outDir, { recursive: true, force: true });
}
