import { buildServer } from "./build-server.mjs";
import { checkNode } from "./check-node.mjs";
import { install } from "./install.mjs";
import { orExit, runStep } from "./run-step.mjs";

checkNode();
await orExit(async () => {
  await install();
  await buildServer();
  await runStep("build the page", "vite", ["build", "packages/ui", "--logLevel", "warn"]);
});

// In this process rather than a child, so that a signal to `npm start` reaches the server itself.
const { main } = await import("../packages/server/bundle/main.js");
await main();
