import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";

// Draws the icons that phones want as pixels from the one that is drawn as lines. Needs Chromium.
const icons = fileURLToPath(new URL("../packages/ui/public/icons/", import.meta.url));
const svg = readFileSync(`${icons}icon.svg`, "utf8");
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu"],
});
for (const size of [180, 192, 512]) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:${size}px}</style>${svg}`);
  await page.screenshot({ path: `${icons}icon-${size}.png` });
}
await browser.close();
