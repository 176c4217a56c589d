import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { configDefaults, defineConfig } from "vitest/config";

const source = (path: string) => fileURLToPath(new URL(path, import.meta.url));

const chromium = process.env["CHROMIUM"] || "/usr/bin/chromium";
const hasChromium = existsSync(chromium);
const browserTests = "test/browser/**";

if (!hasChromium) {
  const missing = `There is no Chromium at ${chromium}. Install it there, or set CHROMIUM to where it is.`;
  if (process.env["CI"]) throw new Error(`The browser tests cannot run. ${missing}`);
  process.stdout.write(`Skipping the browser tests. ${missing}\n`);
}

export default defineConfig({
  resolve: {
    alias: {
      "@ferrule/core": source("./packages/core/src/index.ts"),
      "@ferrule/server": source("./packages/server/src/app.ts"),
    },
  },
  test: {
    include: ["packages/*/src/**/*.test.ts", "test/**/*.test.ts"],
    exclude: [...configDefaults.exclude, ...(hasChromium ? [] : [browserTests])],
    env: { CHROMIUM: chromium },
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
});
