import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPage, openWorkshop, served, settled, type Workshop } from "./page.test-kit.ts";

let workshop: Workshop;
beforeAll(async () => {
  workshop = await openWorkshop();
});
afterAll(() => workshop.close());

const listing =
  "Northmoor Ombrel driver head only, right handed, 10.5 degrees, 50 euros, postage 4.50. Small sky mark, no cracks";

/** A page at a path of a new bench, once all that is needed without a signal is kept. */
async function prepared(path: string): Promise<{ page: Page; address: string; context: BrowserContext }> {
  const address = await workshop.openBench();
  const { page } = await openPage(workshop, address, { serviceWorkers: "allow" });
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await expect.poll(() => keptParts(page), { timeout: 60_000 }).toBeGreaterThan(0);
  await page.goto(`${address}${path}`);
  await settled(page);
  return { page, address, context: page.context() };
}

/** How many parts the browser keeps. */
function keptParts(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const opening = indexedDB.open("ferrule", 1);
        opening.onupgradeneeded = () => opening.transaction?.abort();
        opening.onerror = () => resolve(0);
        opening.onsuccess = () => {
          const asked = opening.result.transaction("snapshot").objectStore("snapshot").get("last");
          asked.onsuccess = () => {
            opening.result.close();
            resolve(asked.result?.snapshot.parts.length ?? 0);
          };
        };
      }),
  );
}

async function change(address: string, id: string, body: object): Promise<void> {
  const reply = await fetch(`${address}/api/bench/parts/${id}`, {
    method: "PATCH",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });
  expect(reply.status).toBe(200);
}

async function noteOn(page: Page, address: string, id: string, note: string): Promise<void> {
  await page.goto(`${address}/parts/${id}/edit`);
  await page.getByRole("textbox", { name: "Note", exact: true }).fill(note);
  await page.getByRole("button", { name: "Save the change" }).click();
  await page.getByText(`${id} is changed.`).waitFor();
}

describe("without a signal", () => {
  it("opens again, judges a pasted listing and takes a part, and each arrives once when the signal is back", async () => {
    const { page, address, context } = await prepared("/");
    const before = (await served(address, "/api/bench")).body.parts.length;
    const seen = (await served(address, "/api/sightings")).body.sightings.length;
    await context.setOffline(true);
    await page.reload();
    await page.getByRole("link", { name: /No signal, as of/ }).waitFor();
    await page.goto(`${address}/listings`);
    await page.getByLabel("Paste a listing").fill(listing);
    await page.getByRole("button", { name: "Read it" }).click();
    await page.getByRole("heading", { level: 1, name: /Ombrel/ }).waitFor();
    await page
      .getByText(/Judged without a signal, part by part/)
      .first()
      .waitFor();
    await page.goto(`${address}/add`);
    await page.getByLabel("Grip", { exact: true }).check();
    await page.getByRole("textbox", { name: "Note", exact: true }).fill("from the door");
    await page.getByRole("button", { name: "Put it on the bench" }).click();
    await page.getByText(/grip-\w{6} is on the bench/).waitFor();
    await page.getByRole("link", { name: /2 waiting/ }).waitFor();
    expect((await served(address, "/api/bench")).body.parts).toHaveLength(before);
    await context.setOffline(false);
    await page.getByText(/entered without a signal have reached the bench/).waitFor();
    const { parts } = (await served(address, "/api/bench")).body;
    expect(parts).toHaveLength(before + 1);
    expect(parts.filter(({ note }: { note?: string }) => note === "from the door")).toHaveLength(1);
    const { sightings } = (await served(address, "/api/sightings")).body;
    expect(sightings).toHaveLength(seen + 1);
    expect(sightings.some(({ text }: { text: string }) => text === listing)).toBe(true);
  });

  it("shows what goes with a part, and the clubs of the bench", async () => {
    const { page, address, context } = await prepared("/");
    const { parts } = (await served(address, "/api/bench")).body;
    const head = parts.find(({ kind }: { kind: string }) => kind === "head");
    const online = await served(address, `/api/bench/parts/${head.id}/goes-with?limit=1000`);
    await context.setOffline(true);
    const offline = await page.evaluate(async (id) => {
      history.pushState(null, "", `/parts/${id}`);
      window.dispatchEvent(new PopStateEvent("popstate"));
    }, head.id);
    expect(offline).toBeUndefined();
    await page.getByRole("link", { name: /No signal/ }).waitFor();
    for (const { id } of online.body.clubs.slice(0, 3))
      await page
        .locator(`a[href*="/clubs/${head.id}/${encodeURIComponent(id)}"]`)
        .first()
        .waitFor();
  });

  it("finds the part of a label by its code", async () => {
    const { page, address, context } = await prepared("/code");
    const [label] = (await served(address, "/api/labels")).body.labels;
    await context.setOffline(true);
    await page.reload();
    await page.getByLabel("The code on the label").fill(label.code.toLowerCase());
    await page.getByRole("button", { name: "Go to the part" }).click();
    await page.waitForURL(`${address}/parts/${label.part}`);
    await page.getByRole("link", { name: /No signal/ }).waitFor();
  });

  it("puts two changes of different fields together, and shows two of the same field for a person to choose", async () => {
    const { page, address, context } = await prepared("/");
    const [first, second] = (await served(address, "/api/bench")).body.parts;
    await context.setOffline(true);
    await noteOn(page, address, first.id, "seen at the door");
    await noteOn(page, address, second.id, "mine");
    await change(address, first.id, { year: 2011 });
    await change(address, second.id, { note: "theirs" });
    await context.setOffline(false);
    await page.getByRole("link", { name: /1 thing to settle/ }).click();
    expect((await served(address, `/api/bench/parts/${first.id}`)).body).toMatchObject({
      note: "seen at the door",
      year: 2011,
    });
    expect((await served(address, `/api/bench/parts/${second.id}`)).body.note).toBe("theirs");
    await page.getByRole("cell", { name: "mine" }).waitFor();
    await page.getByRole("cell", { name: "theirs" }).waitFor();
    await page.getByRole("button", { name: "Take mine" }).click();
    await page.getByText("All that was entered here has reached the bench").waitFor();
    expect((await served(address, `/api/bench/parts/${second.id}`)).body.note).toBe("mine");
  });
});

it("takes text that another app shares as a listing to be read, also without a signal", async () => {
  const { page, address, context } = await prepared("/");
  const manifest = (await served(address, "/manifest.webmanifest")).body;
  const { action, method, params } = manifest.share_target;
  expect(method).toBe("GET");
  await context.setOffline(true);
  await page.goto(`${address}${action}?${new URLSearchParams({ [params.text]: listing })}`);
  await expect.poll(() => page.getByLabel("Paste a listing").inputValue()).toBe(listing);
  expect(new URL(page.url()).pathname + new URL(page.url()).search).toBe("/listings");
  await page.getByRole("button", { name: "Read it" }).click();
  await page.getByRole("heading", { level: 1, name: /Ombrel/ }).waitFor();
});
