import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runTool } from "./run-command.mjs";

/** Runs the tests, all or those of some files, and prints `N passed, N failed` on a line of its own. */
export async function runTests(files) {
  const folder = mkdtempSync(join(tmpdir(), "ferrule-test-"));
  const report = join(folder, "report.json");
  try {
    await runTool("vitest", [
      "run",
      "--reporter=default",
      "--reporter=json",
      `--outputFile.json=${report}`,
      ...files,
    ]);
  } finally {
    printCounts(report);
    rmSync(folder, { recursive: true, force: true });
  }
}

function printCounts(report) {
  const counts = readCounts(report);
  if (counts === undefined) return console.log("The tests ended without a report.");
  if (counts.skipped > 0) console.log(`${counts.skipped} skipped`);
  console.log(`${counts.passed} passed, ${counts.failed} failed`);
}

function readCounts(report) {
  let json;
  try {
    json = JSON.parse(readFileSync(report, "utf8"));
  } catch {
    return undefined;
  }
  // A file that cannot be loaded has no tests to count, and must not pass for a file without failures.
  const unloaded = json.testResults.filter(
    (file) => file.status === "failed" && !file.assertionResults.some(isFailed),
  );
  return {
    passed: json.numPassedTests,
    failed: json.numFailedTests + unloaded.length,
    skipped: json.numPendingTests + json.numTodoTests,
  };
}

function isFailed(test) {
  return test.status === "failed";
}
