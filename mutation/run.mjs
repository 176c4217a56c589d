import { relative } from "node:path";
import { Stryker } from "@stryker-mutator/core";

/** The folders of core in which a slip is dear: what fits, what it measures, what it is worth, what to do. */
const folders = ["rules", "measure", "worth", "plan"];

/** The least share of mutants that has to be noticed in a folder, in per cent. */
const leastNoticed = 85;

const source = "packages/core/src";
const chosen = process.argv.slice(2);

if (chosen.some((folder) => !folders.includes(folder.split("/")[0]))) {
  process.stderr.write(
    `Usage: npm run mutation, or npm run mutation -- ${folders.join("|")}[/part-of-a-name] …\n`,
  );
  process.exit(1);
}

/** `worth` is all files of that folder and those below it, `worth/way` those whose names begin with way. */
function filesOf(folder) {
  return folder.includes("/") ? `${source}/${folder}*.ts` : `${source}/${folder}/**/*.ts`;
}

const results = await new Stryker({
  testRunner: "one-process",
  plugins: [new URL("./one-process-runner.mjs", import.meta.url).pathname],
  mutate: [
    ...(chosen.length > 0 ? chosen : folders).map(filesOf),
    `!${source}/**/*.test.ts`,
    `!${source}/**/*.test-kit.ts`,
  ],
  ignorePatterns: ["bench", "docs", ".mutation", "dist", "dist-page", "ferrule-data"],
  coverageAnalysis: "perTest",
  // A mutant in what is worked out once, while a module is loaded, would need every module to be loaded anew.
  ignoreStatic: true,
  concurrency: 1,
  timeoutFactor: 3,
  timeoutMS: 5000,
  dryRunTimeoutMinutes: 15,
  tsconfigFile: "none",
  disableTypeChecks: false,
  reporters: ["clear-text", "json", "progress-append-only"],
  clearTextReporter: { reportTests: false, logTests: false, allowColor: false, allowEmojis: false },
  jsonReporter: { fileName: ".mutation/mutants.json" },
  tempDirName: ".stryker-tmp",
}).runMutationTest();

const folderOf = ({ fileName }) => relative(source, fileName).split("/")[0];
const lines = [...new Set(results.map(folderOf))].map((folder) => {
  const count = (...statuses) =>
    results.filter((mutant) => folderOf(mutant) === folder && statuses.includes(mutant.status)).length;
  const noticed = count("Killed", "Timeout");
  const missed = count("Survived", "NoCoverage");
  const score = (100 * noticed) / Math.max(1, noticed + missed);
  return { folder, noticed, missed, "left out": count("Ignored", "RuntimeError"), score: score.toFixed(1) };
});
console.table(lines);
if (lines.some(({ score }) => Number(score) < leastNoticed)) process.exitCode = 1;
