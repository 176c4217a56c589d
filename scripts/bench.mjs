import { checkNode } from "./check-node.mjs";
import { install } from "./install.mjs";
import { orExit, runStep } from "./run-step.mjs";

checkNode();
await orExit(async () => {
  await install();
  await runStep("build the core", "tsc", ["-b", "packages/core"]);
});

await import("../bench/resolve.mjs");
await import("../bench/read.mjs");
