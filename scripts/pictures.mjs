// Takes the pictures of the docs from the example bench: `node scripts/pictures.mjs`, after `npm run build`.
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { buildApp } from "../packages/server/dist/app.js";
import { readDemo, readReference } from "../packages/server/dist/reference-files.js";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const pictures = here("../docs/pictures/");

const app = await buildApp({
  reference: readReference(here("../data")),
  demo: readDemo(here("../data")),
  pageFolder: here("../packages/ui/dist-page"),
});
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
  ],
});
try {
  mkdirSync(pictures, { recursive: true });
  await takeBench(await app.listen({ port: 0, host: "127.0.0.1" }));
} finally {
  await browser.close();
  await app.close();
}

/** The first screen of the example, with a club for every verdict. */
async function takeBench(address) {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, colorScheme: "light" });
  await page.goto(address);
  await page.getByText("Refused, with the facts that prove it.").waitFor();
  await page.waitForLoadState("networkidle");
  await page.evaluate(() => document.activeElement?.blur());
  await page.screenshot({ path: `${pictures}bench.png` });
}
