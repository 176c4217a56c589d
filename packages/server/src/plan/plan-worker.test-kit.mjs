import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const source = (path) => fileURLToPath(new URL(`../../../../${path}`, import.meta.url));

// Runs the thread from its source, which Node alone could not, since it is TypeScript.
const { module } = await runnerImport(source("packages/server/src/plan/plan-worker.ts"), {
  configFile: false,
  logLevel: "error",
  resolve: { alias: { "@ferrule/core": source("packages/core/src/index.ts") } },
});
await module.main();
