import { checkNode } from "./check-node.mjs";
import { install } from "./install.mjs";
import { orExit, runStep } from "./run-step.mjs";

checkNode();
await orExit(async () => {
  await install();
  await runStep("build the core and the server", "tsc", ["-b", "packages/core", "packages/server"]);
});

const { bench } = await import("../bench/all.mjs");
await orExit(() => bench(process.argv.slice(2)));
