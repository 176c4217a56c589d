import { checkNode } from "./check-node.mjs";
import { install } from "./install.mjs";
import { orExit, runStep } from "./run-step.mjs";

checkNode();
await orExit(async () => {
  await install();
  await runStep("build the core and the server", "tsc", ["-b", "packages/core", "packages/server"]);
});

await import("../bench/resolve.mjs");
await import("../bench/read.mjs");
await import("../bench/plan.mjs");
await import("../bench/batch.mjs");
