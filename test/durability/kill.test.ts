import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { beforeAll, expect, it } from "vitest";
import { killRounds } from "./kill-rounds.test-kit.ts";

const checkout = fileURLToPath(new URL("../../", import.meta.url));
const rounds = Number(process.env.ROUNDS ?? 20);
const seed = Number(process.env.SEED ?? 20261125);

/** The server as it is run, from the same build as the command line. */
beforeAll(() => {
  execFileSync(process.execPath, [`${checkout}scripts/ferrule.mjs`, "help"], {
    stdio: ["ignore", "ignore", "inherit"],
  });
}, 180_000);

it(`keeps every acknowledged change, and no half of another, over ${rounds} kills in a storm of changes`, async () => {
  const report = await killRounds({
    mainModule: `${checkout}packages/server/bundle/main.js`,
    rounds,
    seed,
  });
  expect(report.wrongs).toEqual([]);
  // So much has to have been going on that there was something to lose.
  expect(report.acknowledged).toBeGreaterThan(rounds * 10);
  expect(report.open).toBeGreaterThan(rounds);
}, 600_000);
