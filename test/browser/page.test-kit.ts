import { execFile } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { buildApp } from "../../packages/server/src/app.ts";
import { readDemo, readReference } from "../../packages/server/src/reference-files.ts";

const checkout = fileURLToPath(new URL("../../", import.meta.url));
const chromiumFlags =
  "--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync";

/** A built page, a browser, and a new bench for every caller; all of it is gone after `close`. */
export interface Workshop {
  readonly browser: Browser;
  /** Starts a server on a bench of its own, kept in a temporary folder, with the example on it. Returns its address. */
  readonly openBench: () => Promise<string>;
  readonly close: () => Promise<void>;
}

export async function openWorkshop(): Promise<Workshop> {
  const folder = mkdtempSync(join(tmpdir(), "ferrule-browser-"));
  const pageFolder = join(folder, "page");
  await buildPage(pageFolder);
  const browser = await chromium.launch({
    executablePath: process.env["CHROMIUM"] ?? "/usr/bin/chromium",
    args: chromiumFlags.split(" "),
  });
  const closings: (() => Promise<unknown>)[] = [() => browser.close()];
  const openBench = async () => {
    const dataFolder = mkdtempSync(join(folder, "bench-"));
    const data = join(checkout, "data");
    const app = await buildApp({
      dataFolder,
      pageFolder,
      reference: readReference(data),
      demo: readDemo(data),
    });
    closings.push(() => app.close());
    await app.listen({ port: 0, host: "127.0.0.1" });
    return `http://127.0.0.1:${(app.server.address() as AddressInfo).port}`;
  };
  const close = async () => {
    for (const step of closings) await step();
    rmSync(folder, { recursive: true, force: true });
  };
  return { browser, openBench, close };
}

/** Builds the page as it ships, whatever this test run's own environment says. */
async function buildPage(outDir: string): Promise<void> {
  const vite = join(checkout, "node_modules/vite/bin/vite.js");
  const words = [vite, "build", "packages/ui", "--outDir", outDir, "--logLevel", "warn"];
  await promisify(execFile)(process.execPath, words, {
    cwd: checkout,
    env: { ...process.env, NODE_ENV: "production" },
  });
}

/** A page at a path, once it has its answers. Errors of the page itself are collected in `faults`. */
export async function openPage(
  workshop: Workshop,
  address: string,
  options: BrowserContextOptions = {},
): Promise<{ page: Page; faults: string[] }> {
  const context = await workshop.browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  const faults: string[] = [];
  page.on("pageerror", (error) => faults.push(error.message));
  await page.goto(address);
  await settled(page);
  return { page, faults };
}

/** Waits until nothing is being fetched and nothing says that it is. */
export async function settled(page: Page): Promise<void> {
  await page.locator("h1").first().waitFor();
  await page.waitForLoadState("networkidle");
  await page
    .getByText(/^Getting .* …$/)
    .first()
    .waitFor({ state: "detached" });
}

/** What the server says at a path, asked beside the page. */
// biome-ignore lint/suspicious/noExplicitAny: each test reads the few fields it checks
export async function served(address: string, path: string): Promise<any> {
  const reply = await fetch(`${address}${path}`);
  return { status: reply.status, body: await reply.json() };
}
