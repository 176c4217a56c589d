// Takes the pictures of the docs from the example bench, each view on a phone and wide, light and dark:
// `node scripts/pictures.mjs`, after `npm run build`; with names of views behind it, only those.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { buildApp } from "../packages/server/dist/app.js";
import { readDemo, readReference } from "../packages/server/dist/reference-files.js";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const folder = process.env.FERRULE_PICTURES ?? here("../docs/pictures/");

const screens = { phone: { width: 360, height: 740 }, wide: { width: 1280, height: 900 } };
const themes = ["light", "dark"];
const qualityOf100 = 70;

const words =
  "Northmoor Ombrel driver head, 10.5 degrees, RH. No sky marks. Headcover included, no wrench. 35 EUR ono, postage 6 EUR";
const manyWords = [
  words,
  "Orvane Quernby driver head 25 EUR",
  "2 Vexholm Reedlace 60 shafts stiff .335 30 EUR",
];
const club = "H01/H01%2BA01%2BS01%2BG01";

/** Where each view is shown, by its name in packages/ui/src/route.ts. */
const places = {
  bench: () => "/",
  "part-form": () => "/parts/S01/edit",
  part: () => "/parts/H01",
  club: () => `/clubs/${club}`,
  refusal: () => "/refused/H05/S01/A01",
  listing: async (send) => `/listings/${(await send("/api/judge", { text: words })).sighting.id}`,
  batch: async (send) =>
    `/listings/many/${(await send("/api/batches", { text: manyWords.join("\n\n"), name: "An evening's listings" })).batch}`,
  sell: () => "/sell/H01/A01/S01/G01",
  sheet: () => `/sheet/${club}`,
  inspection: () => "/inspect/H01",
  advert: () => "/advert/H01/A01/S01/G01",
  labels: () => "/labels/H01/A01/S01/G01",
  code: () => "/code",
  history: async (send) => {
    await send("/api/judge", { text: words });
    return "/history";
  },
  nowhere: () => "/nowhere-at-all",
};

/** What stands in a view once it is finished, where it goes on by itself. */
const finished = { batch: "All 3 judged." };

const views = namesOfViews();
const wanted = process.argv.slice(2).length > 0 ? process.argv.slice(2) : views;
const stray = wanted.find((name) => !views.includes(name));
if (stray) throw new Error(`There is no view "${stray}". The views: ${views.join(", ")}`);

const app = await buildApp({
  reference: readReference(here("../data")),
  demo: readDemo(here("../data")),
  pageFolder: process.env.FERRULE_PAGE ?? here("../packages/ui/dist-page"),
});
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--hide-scrollbars",
  ],
});
try {
  mkdirSync(folder, { recursive: true });
  const address = await app.listen({ port: 0, host: "127.0.0.1" });
  for (const view of wanted) await takeView(address, view);
} finally {
  await browser.close();
  await app.close();
}

/** Every view there is, so that none is forgotten here. */
function namesOfViews() {
  const source = readFileSync(here("../packages/ui/src/route.ts"), "utf8");
  const [, simple = ""] = /const simple = \[([^\]]*)\]/.exec(source) ?? [];
  const written = [
    ...source.matchAll(/readonly view: "([a-z-]+)"/g),
    ...source.matchAll(/^ {6}readonly view: "([a-z-]+)"/gm),
  ];
  return [...new Set([...written, ...simple.matchAll(/"([a-z-]+)"/g)].map(([, name]) => name))];
}

async function takeView(address, view) {
  const place = await (places[view] ?? (() => `/${view}`))((path, body) => send(`${address}${path}`, body));
  for (const [screen, viewport] of Object.entries(screens)) {
    const page = await browser.newPage({ viewport, colorScheme: "light", reducedMotion: "reduce" });
    // The page would listen for changes, and so never be without a request under way.
    await page.addInitScript("delete globalThis.EventSource");
    await page.goto(`${address}${place}`);
    if (finished[view]) await page.getByText(finished[view]).waitFor();
    await settled(page);
    for (const theme of themes) await takePicture(page, theme, `${folder}/${view}-${screen}-${theme}.webp`);
    await page.close();
  }
}

async function takePicture(page, colorScheme, path) {
  await page.emulateMedia({ colorScheme });
  const devtools = await page.context().newCDPSession(page);
  const { data } = await devtools.send("Page.captureScreenshot", { format: "webp", quality: qualityOf100 });
  writeFileSync(path, Buffer.from(data, "base64"));
}

/** Waits until nothing is being fetched, worked out or focused. */
async function settled(page) {
  await page.locator("h1").first().waitFor();
  await page.waitForLoadState("networkidle");
  const busy = page.getByText(/^(Getting|Judging|Planning) .*…$/).first();
  await busy.waitFor({ state: "detached" });
  await page.locator("[aria-busy='true']").first().waitFor({ state: "detached" });
  await page.evaluate(() => {
    document.activeElement?.blur();
    scrollTo(0, 0);
  });
}

async function send(address, body) {
  const headers = { "content-type": "application/json" };
  const reply = await fetch(address, { method: "POST", headers, body: JSON.stringify(body) });
  if (!reply.ok) throw new Error(`${address} answered ${reply.status}: ${await reply.text()}`);
  return reply.json();
}
