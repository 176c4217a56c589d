import { readdirSync, realpathSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { install } from "./install.mjs";
import { checkout, orExit, runStep } from "./run-step.mjs";

const packages = ["core", "server"];
const stamp = `${checkout}packages/server/bundle/.built`;

/** Compiles the core and the server, and puts the server into a few files that start quickly. */
export async function buildServer() {
  // What changes while it is built counts as changed since.
  const begun = new Date();
  await runStep("build the server", "tsc", ["-b", "packages/core", "packages/server"]);
  await runStep("put the server together", "vite", ["build", "packages/server", "--logLevel", "warn"]);
  writeFileSync(stamp, `${begun.toISOString()}\n`);
  utimesSync(stamp, begun, begun);
}

/** Whether the core and the server have been built since their sources and the lock file last changed. */
export function isServerBuilt() {
  const built = modifiedAt(stamp);
  const sources = packages.flatMap((name) => filesIn(`${checkout}packages/${name}/src`));
  return [`${checkout}pnpm-lock.yaml`, `${checkout}packages/server/vite.config.ts`, ...sources].every(
    (file) => modifiedAt(file) <= built,
  );
}

/** A folder is among them, since taking a file away changes only that. */
function filesIn(folder) {
  const below = readdirSync(folder, { withFileTypes: true, recursive: true });
  const places = below.map(({ parentPath, path, name }) => `${parentPath ?? path}/${name}`);
  return [folder, ...places.filter((place) => !/\.test(-kit)?\.ts$/.test(place))];
}

function modifiedAt(file) {
  return statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  await orExit(async () => {
    await install();
    await buildServer();
  });
}
