// How long the page takes from an input to its next paint, on a bench of so many parts, with the processor slowed four times:
// `node bench/interaction.mjs [parts]`, after `npm run build`. Times are Event Timing's (W3C): of each input the worst, and
// of three rounds the middle one. The baseline is the same page on a bench of a tenth as many parts.
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { buildApp } from "../packages/server/dist/app.js";
import { readReference } from "../packages/server/dist/reference-files.js";
import { median } from "./measure.mjs";
import { seededBench } from "./seeded-bench.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const slowedBy = 4;
const rounds = 3;
const count = Number(process.argv[2] ?? 1000);

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking"],
});
try {
  const small = await worstTimes(Math.round(count / 10));
  const large = await worstTimes(count);
  process.stdout.write(
    `milliseconds from input to next paint, slowed ${slowedBy} times, of each the worst, and the middle of ${rounds} rounds\n`,
  );
  for (const [name, ms] of Object.entries(large))
    process.stdout.write(
      `${name.padEnd(28)} ${String(ms).padStart(5)} at ${count} parts, ${small[name]} at ${count / 10}: ×${(ms / Math.max(1, small[name])).toFixed(1)}\n`,
    );
} finally {
  await browser.close();
}

/** The worst time of each input by its name, the middle of the rounds. */
async function worstTimes(parts) {
  const app = await buildApp({
    reference: readReference(here("../data")),
    pageFolder: here("../packages/ui/dist-page"),
  });
  try {
    const address = await app.listen({ port: 0, host: "127.0.0.1" });
    const { parts: all, joints } = seededBench(parts, 1);
    const text = JSON.stringify({ parts: all, joints });
    const body = JSON.stringify({ format: "json", text, take: "all-or-none" });
    const headers = { "content-type": "application/json", origin: address };
    const answer = await fetch(`${address}/api/bench/import`, { method: "POST", headers, body });
    if (!answer.ok) throw new Error(`the bench was not taken: ${answer.status} ${await answer.text()}`);
    const taken = [];
    for (let round = 0; round < rounds; round += 1) taken.push(await times(address));
    return Object.fromEntries(
      Object.keys(taken[0]).map((name) => [name, median(taken.map((found) => found[name]))]),
    );
  } finally {
    await app.close();
  }
}

async function times(address) {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    serviceWorkers: "block",
  });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await page.addInitScript(() => {
    globalThis.worst = 0;
    const note = (list) => {
      for (const { duration, interactionId } of list.getEntries())
        if (interactionId > 0) globalThis.worst = Math.max(globalThis.worst, duration);
    };
    new PerformanceObserver(note).observe({ type: "event", durationThreshold: 16, buffered: true });
  });
  await page.goto(address);
  await page.getByLabel("Search").waitFor({ timeout: 40_000 });
  await page.waitForTimeout(2000);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slowedBy });
  const found = {};
  const measure = async (name, act) => {
    await page.evaluate(() => {
      globalThis.worst = 0;
    });
    await act();
    await page.waitForTimeout(1200);
    found[name] = Math.max(found[name] ?? 0, await page.evaluate(() => globalThis.worst));
  };
  await measure("type into the search", () =>
    page.getByLabel("Search").pressSequentially("driver", { delay: 120 }),
  );
  await measure("empty the search", async () => {
    await page.getByLabel("Search").press("ControlOrMeta+a");
    await page.getByLabel("Search").press("Delete");
  });
  await measure("type a word with a slip", () =>
    page.getByLabel("Search").pressSequentially("norhtmoor", { delay: 200 }),
  );
  await measure("empty the search", async () => {
    await page.getByLabel("Search").press("ControlOrMeta+a");
    await page.getByLabel("Search").press("Delete");
  });
  await measure("open the narrowing", () => page.getByText("Narrow it down").click());
  await measure("choose a kind", () => page.getByLabel("Kind", { exact: true }).press("s"));
  await measure("press Tab", () => page.keyboard.press("Tab"));
  await measure("open the menu", () => page.getByText("More", { exact: true }).first().click());
  await measure("follow a link to a view", () =>
    page.getByRole("link", { name: "Listings", exact: true }).first().click(),
  );
  await measure("type a listing", () =>
    page.getByLabel("Paste a listing").pressSequentially("Driver head 35 EUR", { delay: 80 }),
  );
  const go = async (path, ready) => {
    await page.goto(`${address}${path}`);
    await ready.first().waitFor({ timeout: 40_000 });
    await page.waitForTimeout(1500);
  };
  await go("/labels", page.getByText("One by one"));
  await measure("labels: open the list", () => page.getByText("One by one").click());
  await measure("labels: tick one", () => page.locator(".ticks input").first().click());
  await go("/sell", page.getByLabel("Search the parts"));
  await measure("sell: search", () =>
    page.getByLabel("Search the parts").pressSequentially("shaft", { delay: 120 }),
  );
  await measure("sell: tick one", () => page.locator("label.tick").first().click());
  await go("/add", page.getByLabel("Head", { exact: true }));
  await measure("add: choose a kind", () => page.getByLabel("Head", { exact: true }).click());
  await measure("add: type a maker", () =>
    page.locator("ferrule-part-field input").first().pressSequentially("Northmoor", { delay: 80 }),
  );
  await go("/together", page.locator("select"));
  await measure("together: choose another", async () => {
    await page.locator("select").first().focus();
    await page.keyboard.press("ArrowDown");
  });
  await go("/plan", page.getByRole("button"));
  await measure("plan: press Tab", () => page.keyboard.press("Tab"));
  const id = (await (await fetch(`${address}/api/bench`)).json()).parts.find(
    ({ kind }) => kind === "head",
  ).id;
  await go(`/parts/${encodeURIComponent(id)}`, page.getByRole("heading", { level: 1 }));
  await measure("part: open what is folded", () => page.locator("summary").first().click());
  await context.close();
  return found;
}
