import { createHash } from "node:crypto";
import { readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { checkout, runStep } from "./run-step.mjs";

const lockFile = `${checkout}pnpm-lock.yaml`;
const installed = `${checkout}node_modules/.modules.yaml`;
const stampFile = `${checkout}node_modules/.ferrule-installed`;

/** Installs exactly what the lock file says. Does nothing where the last install was of the same files by the same Node. */
export async function install() {
  const stamp = stampOfNow();
  if (modifiedAt(installed) > modifiedAt(lockFile) && readOrEmpty(stampFile) === stamp) return;
  await runStep("install", "npx", ["--yes", "pnpm@12.4.2", "install", "--frozen-lockfile"]);
  writeFileSync(stampFile, stamp);
}

function stampOfNow() {
  const packages = readdirSync(`${checkout}packages`).map(
    (name) => `${checkout}packages/${name}/package.json`,
  );
  const files = [lockFile, `${checkout}pnpm-workspace.yaml`, `${checkout}package.json`, ...packages];
  const hash = createHash("sha256").update(`${process.versions.modules} ${process.platform} ${process.arch}`);
  for (const file of files) hash.update(readOrEmpty(file));
  return hash.digest("hex");
}

function modifiedAt(file) {
  return statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

function readOrEmpty(file) {
  return statSync(file, { throwIfNoEntry: false }) === undefined ? "" : readFileSync(file, "utf8");
}
