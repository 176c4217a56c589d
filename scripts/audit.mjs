import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { auditVerdict } from "./audit-verdict.mjs";

// Asks the registry whether anything that is shipped is known to be unsafe; `high` and above fails the build.
const { status, stdout, stderr, error } = spawnSync(
  "npx",
  ["--yes", "pnpm@12.4.2", "audit", "--prod", "--audit-level", "high"],
  { cwd: fileURLToPath(new URL("../", import.meta.url)), encoding: "utf8", timeout: 120_000 },
);
const said = `${stdout ?? ""}${stderr ?? ""}${error?.message ?? ""}`;
const verdict = auditVerdict(status, said);

const words = {
  clean: "The audit knows of nothing high or critical in what is shipped\n",
  "no-answer": `The registry gave no audit answer, so nothing is known either way:\n${said.trim()}\n`,
  unsafe: `The audit failed:\n${said.trim()}\n`,
};
process.stdout.write(words[verdict]);
process.exitCode = verdict === "unsafe" ? 1 : 0;
