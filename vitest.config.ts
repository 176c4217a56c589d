import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { HeavyFirst } from "./test/heavy-first.ts";

const source = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const tests = ["packages/*/src/**/*.test.ts", "test/**/*.test.ts"];
const browserTests = "test/browser/**";

export default defineConfig({
  resolve: {
    alias: {
      "@ferrule/core": source("./packages/core/src/index.ts"),
      "@ferrule/server": source("./packages/server/src/app.ts"),
    },
  },
  test: {
    // The files of one worker share its modules: no module of ours keeps a state, and reading them anew took most of the time.
    isolate: false,
    maxWorkers: "100%",
    sequence: { sequencer: HeavyFirst },
    globalSetup: "test/thread/build-thread.ts",
    setupFiles: "test/thread/tell-thread.ts",
    // Only a check that fails waits so long.
    expect: { poll: { timeout: 10_000 } },
    projects: [
      {
        extends: true,
        test: {
          name: "code",
          include: tests,
          exclude: ["**/node_modules/**", browserTests],
          testTimeout: 30_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: [`${browserTests}/*.test.ts`],
          globalSetup: ["test/thread/build-thread.ts", "test/browser/build-page.ts"],
          // A browser on a busy machine is slow, and slow is not wrong.
          testTimeout: 240_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
