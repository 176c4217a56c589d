import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const source = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

// Runs the server from its source in a process of its own, which Node alone could not, since it is TypeScript.
const { module } = await runnerImport(source("packages/server/src/main.ts"), {
  configFile: false,
  logLevel: "error",
  resolve: { alias: { "@ferrule/core": source("packages/core/src/index.ts") } },
});
await module.main();
