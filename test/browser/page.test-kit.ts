import { mkdtempSync, rmSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { inject, onTestFinished } from "vitest";
import { buildApp } from "../../packages/server/src/app.ts";
import { readDemo, readReference } from "../../packages/server/src/reference-files.ts";

const checkout = fileURLToPath(new URL("../../", import.meta.url));
const chromiumFlags =
  "--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync";

/** The built page, a browser, and a new bench for every caller; all of it is gone after `close`. */
export interface Workshop {
  readonly browser: Browser;
  /** Starts a server on a bench of its own, kept in a temporary folder, with the example on it. Returns its address. */
  readonly openBench: () => Promise<string>;
  /** The same, and a page at a path of it; both are gone when the test is over. */
  readonly visit: (path: string) => Promise<Visit>;
  readonly close: () => Promise<void>;
}

/** A page, and the address of the bench that it shows. Errors of the page itself are collected in `faults`. */
export interface Visit {
  readonly address: string;
  readonly page: Page;
  readonly faults: readonly string[];
}

export async function openWorkshop(): Promise<Workshop> {
  const folder = mkdtempSync(join(tmpdir(), "ferrule-browser-"));
  const browser = await chromium.launch({
    executablePath: process.env["CHROMIUM"] ?? "/usr/bin/chromium",
    args: chromiumFlags.split(" "),
  });
  const startBench = async () => {
    const data = join(checkout, "data");
    const app = await buildApp({
      dataFolder: mkdtempSync(join(folder, "bench-")),
      pageFolder: inject("pageFolder"),
      reference: readReference(data),
      demo: readDemo(data),
    });
    await app.listen({ port: 0, host: "127.0.0.1" });
    return { app, address: `http://127.0.0.1:${(app.server.address() as AddressInfo).port}` };
  };
  const closings: (() => Promise<unknown>)[] = [() => browser.close()];
  const openBench = async () => {
    const { app, address } = await startBench();
    closings.push(() => app.close());
    return address;
  };
  const visit = async (path: string) => {
    const { app, address } = await startBench();
    onTestFinished(() => app.close());
    const { page, faults } = await openPage({ browser }, `${address}${path}`);
    onTestFinished(() => page.context().close());
    return { address, page, faults };
  };
  const close = async () => {
    for (const step of closings) await step();
    rmSync(folder, { recursive: true, force: true });
  };
  return { browser, openBench, visit, close };
}

/**
 * A page at a path, once it has its answers. Errors of the page itself are collected in `faults`. A script is run at the start
 * of every page that is opened there. With `isLive` it hears of changes as they are made; then the heading alone is waited for.
 */
export async function openPage(
  workshop: Pick<Workshop, "browser">,
  address: string,
  { isLive = false, ...options }: BrowserContextOptions & { isLive?: boolean } = {},
  script = "",
): Promise<{ page: Page; faults: string[] }> {
  // What is kept for when there is no signal is the matter of tests of its own; elsewhere it would only take time.
  const quiet = { viewport: { width: 1280, height: 900 }, serviceWorkers: "block" } as const;
  const context = await workshop.browser.newContext({ ...quiet, ...options });
  if (script !== "") await context.addInitScript(script);
  // A page that listens for changes is never without a request under way, which is what these tests wait for.
  if (!isLive) await context.addInitScript("delete globalThis.EventSource");
  const page = await context.newPage();
  const faults: string[] = [];
  page.on("pageerror", (error) => faults.push(error.message));
  await page.goto(address);
  if (isLive) await page.locator("h1").first().waitFor();
  else await settled(page);
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
