import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type axe from "axe-core";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { openPage } from "./page.test-kit.ts";

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What axe finds by colours alone. Light and dark differ in nothing else: the page has the same elements in both. */
const colourRules = ["color-contrast", "link-in-text-block"];

/** A page in light with axe on it. Axe's own code needs the page's CSP out of the way. */
export function openWithAxe(browser: Browser, address: string, options: BrowserContextOptions = {}) {
  return openPage({ browser }, address, { colorScheme: "light", bypassCSP: true, ...options }, axeSource);
}

/** What axe objects to in light, and then to the colours in dark, as lines that name the rule and the place. */
export async function objections(page: Page): Promise<string[]> {
  const inLight = await violations(page, {});
  await page.emulateMedia({ colorScheme: "dark" });
  const inDark = await violations(page, { runOnly: { type: "rule", values: colourRules } });
  await page.emulateMedia({ colorScheme: "light" });
  return [...inLight, ...inDark.map((line) => `in dark: ${line}`)];
}

/** Of what is in order axe need not tell the places, which takes it most of its time. */
async function violations(page: Page, options: axe.RunOptions): Promise<string[]> {
  const { violations: found } = await page.evaluate(
    (chosen) => (globalThis as unknown as { axe: typeof axe }).axe.run(chosen),
    { resultTypes: ["violations"], ...options } satisfies axe.RunOptions,
  );
  return found.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(" ")} ${node.failureSummary}`),
  );
}
