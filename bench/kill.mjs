// The long form of the kill test: a server is killed in a storm of changes, ROUNDS times (200), and everything is looked at after each
// time. SEED decides what the clients do; SERVER names another built main.js to kill. It ends with 1 where anything was lost or halved.
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const here = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url));
const { ROUNDS = "200", SEED = "20261125", SERVER = here("packages/server/bundle/main.js") } = process.env;

const { module } = await runnerImport(here("test/durability/kill-rounds.test-kit.ts"), {
  configFile: false,
  logLevel: "error",
  resolve: { alias: { "@ferrule/core": here("packages/core/src/index.ts") } },
});
const begun = performance.now();
const { wrongs, ...counts } = await module.killRounds({
  mainModule: SERVER,
  rounds: Number(ROUNDS),
  seed: Number(SEED),
  log: (line) => process.stdout.write(`${line}\n`),
});
for (const wrong of wrongs) process.stdout.write(`WRONG ${wrong}\n`);
const seconds = ((performance.now() - begun) / 1000).toFixed(0);
process.stdout.write(`${JSON.stringify(counts)} in ${seconds} s, ${wrongs.length} wrong\n`);
process.exit(wrongs.length > 0 ? 1 : 0);
