import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildServer } from "./build-server.mjs";
import { checkNode } from "./check-node.mjs";
import { install } from "./install.mjs";
import { orExit, runStep, StepFailed } from "./run-step.mjs";

const sources = ["packages/core/src", "packages/server/src", "packages/ui/src"];

const steps = {
  install,
  lint: () => runStep("lint", "biome", ["check", "."]),
  build: () => runStep("build", "tsc", ["-b"]),
  "types-of-tests": () => runStep("types-of-tests", "tsc", ["-p", "tsconfig.test.json"]),
  layers: () => runStep("layers", "depcruise", [...sources, "--config", ".dependency-cruiser.cjs"]),
  unused: () => runStep("unused", "knip", []),
  page: () => runStep("page", "vite", ["build", "packages/ui", "--logLevel", "warn"]),
  server: buildServer,
  vitest: runTests,
};

checkNode();
await orExit(async () => {
  for (const name of chosenSteps(process.argv.slice(2))) await steps[name]();
});

function chosenSteps(args) {
  if (args.length === 0) return Object.keys(steps);
  const [option, name] = args;
  if (option === "--only" && args.length === 2 && Object.hasOwn(steps, name)) return [name];
  throw new StepFailed(`Usage: npm test, or npm test -- --only ${Object.keys(steps).join("|")}`);
}

async function runTests() {
  const folder = mkdtempSync(join(tmpdir(), "ferrule-test-"));
  const report = join(folder, "report.json");
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  try {
    await runStep("vitest", "vitest", ["run", ...reporters, ...withoutBrowser()]);
  } catch (error) {
    if (!(error instanceof StepFailed)) throw error;
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  } finally {
    if (existsSync(report)) printCounts(JSON.parse(readFileSync(report, "utf8")));
    rmSync(folder, { recursive: true });
  }
}

/** The browser's tests are left out where there is no browser, except on the build machine, where that is a mistake. */
function withoutBrowser() {
  const chromium = process.env.CHROMIUM ?? "/usr/bin/chromium";
  if (existsSync(chromium)) return [];
  if (process.env.CI)
    throw new StepFailed(`The step "vitest" needs Chromium, and there is none at ${chromium}`);
  process.stdout.write(
    `There is no Chromium at ${chromium} (set CHROMIUM to its path): leaving out test/browser\n`,
  );
  return ["--exclude", "test/browser/**"];
}

function printCounts({ numPassedTests, numFailedTests, testResults }) {
  // A file that cannot be loaded has no tests to count and has failed all the same.
  const unloaded = testResults.filter(
    (file) => file.status === "failed" && file.assertionResults.length === 0,
  ).length;
  process.stdout.write(`${numPassedTests} passed, ${numFailedTests + unloaded} failed\n`);
}
