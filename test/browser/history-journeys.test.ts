import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from "vitest";
import { objections, openWithAxe } from "./axe.test-kit.ts";
import { openPage, openWorkshop, served, settled, type Workshop } from "./page.test-kit.ts";

let workshop: Workshop;
beforeAll(async () => {
  workshop = await openWorkshop();
});
afterAll(() => workshop.close());

/** A page that hears of changes, closed when the test is over. */
async function livePage(address: string, path: string): Promise<{ page: Page; faults: readonly string[] }> {
  const { page, faults } = await openPage(workshop, `${address}${path}`, { isLive: true });
  onTestFinished(() => page.context().close());
  return { page, faults };
}

const note = (page: Page) => page.getByRole("textbox", { name: "Note", exact: true });

/** Opens the form of a part, once it stands there. */
async function openForm(address: string, id: string): Promise<{ page: Page; faults: readonly string[] }> {
  const opened = await livePage(address, `/parts/${id}/edit`);
  await note(opened.page).waitFor();
  return opened;
}

async function patch(address: string, path: string, body: object): Promise<void> {
  const headers = { "content-type": "application/json" };
  const reply = await fetch(`${address}${path}`, { method: "PATCH", headers, body: JSON.stringify(body) });
  expect(reply.status).toBe(200);
}

describe("two pages at once", () => {
  it("show each other's changes without being asked, and lose nothing that is being typed", async () => {
    const address = await workshop.openBench();
    const { page: one, faults } = await livePage(address, "/");
    const found = one.getByRole("region", { name: "Parts" }).getByRole("link");
    await found.first().waitFor();
    await one.getByRole("searchbox", { name: "Search" }).fill("from the door");
    await expect.poll(() => found.count()).toBe(0);
    const { page: other } = await openForm(address, "S01");
    await note(other).fill("bought from the door");
    await other.getByRole("button", { name: "Save the change" }).click();
    await one
      .getByRole("region", { name: "Parts" })
      .getByText(/\bS01\b/)
      .first()
      .waitFor();
    await one.getByRole("link", { name: "Another page: Changed the part S01" }).waitFor();
    expect(await one.getByRole("searchbox", { name: "Search" }).inputValue()).toBe("from the door");
    expect(await other.getByRole("link", { name: /^Another page/ }).count()).toBe(0);
    expect(faults).toEqual([]);
  });

  it("refuse a stale edit with both versions, put together field by field as one says", async () => {
    const address = await workshop.openBench();
    const { page: one, faults } = await openForm(address, "S01");
    await note(one).fill("mine");
    await one.getByLabel("Mass (g)", { exact: true }).fill("61");
    await patch(address, "/api/bench/parts/S01", { note: "theirs", maker: "Haldenbach" });
    await one.getByText("! This machine changed this a moment ago.").waitFor();
    expect(await note(one).inputValue()).toBe("mine");
    await one.getByRole("button", { name: "Save the change" }).click();
    const dialog = one.getByRole("dialog", { name: /This machine changed the part S01 meanwhile/ });
    await dialog.getByRole("row", { name: /^Note mine theirs/ }).waitFor();
    await dialog.getByRole("row", { name: /^Maker .* Haldenbach/ }).waitFor();
    await dialog.getByRole("radio", { name: "theirs" }).check();
    await dialog.getByRole("button", { name: "Save as chosen" }).click();
    await one.getByText("S01 is changed.").waitFor();
    const { body } = await served(address, "/api/bench/parts/S01");
    expect(body).toMatchObject({ note: "theirs", maker: "Haldenbach" });
    expect([body.massG, body.massG?.value]).toContain(61);
    expect(faults).toEqual([]);
  });

  it("keep what was typed where one goes on typing, and put it all in with Keep mine", async () => {
    const address = await workshop.openBench();
    const { page } = await openForm(address, "G01");
    await note(page).fill("mine");
    await patch(address, "/api/bench/parts/G01", { note: "theirs" });
    await page.getByRole("button", { name: "Save the change" }).click();
    await page.getByRole("button", { name: "Go on typing" }).click();
    expect(await note(page).inputValue()).toBe("mine");
    await page.getByRole("button", { name: "Save the change" }).click();
    await page.getByRole("button", { name: "Keep mine" }).click();
    await page.getByText("G01 is changed.").waitFor();
    expect((await served(address, "/api/bench/parts/G01")).body.note).toBe("mine");
  });

  it("take what is there where one says so, and put back what was deleted meanwhile where one says that", async () => {
    const address = await workshop.openBench();
    const { page } = await openForm(address, "G01");
    await note(page).fill("mine");
    await patch(address, "/api/bench/parts/G01", { note: "theirs" });
    await page.getByRole("button", { name: "Take theirs" }).click();
    await expect.poll(() => note(page).inputValue()).toBe("theirs");
    await note(page).fill("mine again");
    await fetch(`${address}/api/bench/parts/G01`, { method: "DELETE" });
    await page.getByText("! This machine deleted this a moment ago.").waitFor();
    await page.getByRole("button", { name: "Save the change" }).click();
    await page.getByRole("button", { name: "Put it back as mine" }).click();
    await page.getByText("G01 is changed.").waitFor();
    expect((await served(address, "/api/bench/parts/G01")).body.note).toBe("mine again");
  });

  it("do not delete what somebody else has changed meanwhile without showing it", async () => {
    const address = await workshop.openBench();
    // Not live, as behind something that lets no events through: what it shows is old by then.
    const { page } = await openPage(workshop, `${address}/parts/S01`);
    onTestFinished(() => page.context().close());
    await patch(address, "/api/bench/parts/S01", { note: "sold to the greenkeeper" });
    await page.getByRole("button", { name: "Delete" }).click();
    await page.getByRole("row", { name: /Note .* sold to the greenkeeper/ }).waitFor();
    await page.getByRole("button", { name: "Leave it there" }).click();
    await page.getByText("What is on the bench now stays as it is.").waitFor();
    expect((await served(address, "/api/bench/parts/S01")).status).toBe(200);
    await page.getByText("sold to the greenkeeper").first().waitFor();
  });

  it("put changes of different costs together unasked, and keep a list's form through another's change", async () => {
    const address = await workshop.openBench();
    const { page } = await livePage(address, "/costs");
    const hour = page.getByLabel(/An hour of yours/).first();
    await hour.fill("17.50");
    const put = await fetch(`${address}/api/costs`, {
      method: "PUT",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ packagingMinor: 333 }),
    });
    expect(put.status).toBe(200);
    await page.getByRole("link", { name: /Changed the costs/ }).waitFor();
    expect(await hour.inputValue()).toBe("17.50");
    await page.getByRole("button", { name: "Keep these" }).first().click();
    await page.getByText("Kept.", { exact: true }).waitFor();
    expect((await served(address, "/api/costs")).body).toMatchObject({
      hourValueMinor: 1750,
      packagingMinor: 333,
    });
  });
});

describe("the history", () => {
  it("tells who changed what field by field, and undoes a change that is not the last", async () => {
    const address = await workshop.openBench();
    await fetch(`${address}/api/own-name`, {
      method: "PUT",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ name: "Front desk" }),
    });
    await patch(address, "/api/bench/parts/S01", { note: "first" });
    await patch(address, "/api/bench/parts/S02", { note: "second" });
    const { page, faults } = await livePage(address, "/");
    await page.getByRole("button", { name: "More", exact: true }).click();
    await page.getByRole("link", { name: "History" }).click();
    const change = page.getByRole("listitem").filter({ hasText: "Changed the part S01" });
    await change.getByText("Front desk").waitFor();
    await change.getByText("What changed", { exact: false }).first().click();
    await change.locator("ins", { hasText: "first" }).waitFor();
    await change.getByRole("button", { name: /^Undo change/ }).click();
    await change.getByText(/undone by change \d+/).waitFor();
    expect((await served(address, "/api/bench/parts/S01")).body.note).not.toBe("first");
    expect((await served(address, "/api/bench/parts/S02")).body.note).toBe("second");
    await page.getByRole("button", { name: "Undo", exact: true }).click();
    await page.getByText(/^Change \d+ holds again\.$/).waitFor();
    expect((await served(address, "/api/bench/parts/S01")).body.note).toBe("first");
    expect(faults).toEqual([]);
  });

  it("refuses to undo what was changed since, with both versions and the change to undo first", async () => {
    const address = await workshop.openBench();
    await patch(address, "/api/bench/parts/S01", { note: "first" });
    await patch(address, "/api/bench/parts/S01", { note: "second" });
    const { page } = await openPage(workshop, `${address}/parts/S01`);
    onTestFinished(() => page.context().close());
    await page.getByRole("link", { name: "What changed here" }).click();
    await page.getByRole("heading", { name: "What changed: the part S01" }).waitFor();
    const changes = page.getByRole("listitem").filter({ hasText: "Changed the part S01" });
    await expect.poll(() => changes.count()).toBe(2);
    await changes
      .nth(1)
      .getByRole("button", { name: /^Undo change/ })
      .click();
    await changes.nth(1).getByRole("row", { name: "Note first second" }).waitFor();
    await changes
      .nth(1)
      .getByRole("button", { name: /^Change \d+$/ })
      .click();
    await expect.poll(() => changes.first().evaluate((row) => row.matches(":focus"))).toBe(true);
    expect((await served(address, "/api/bench/parts/S01")).body.note).toBe("second");
    await changes
      .first()
      .getByRole("button", { name: /^Undo change/ })
      .click();
    await changes
      .first()
      .getByText(/undone by change/)
      .waitFor();
    await changes
      .nth(1)
      .getByRole("button", { name: /^Undo change/ })
      .click();
    await changes
      .nth(1)
      .getByText(/undone by change/)
      .waitFor();
    expect((await served(address, "/api/bench/parts/S01")).body.note).not.toBe("first");
  });

  it("brings older changes when asked", async () => {
    const address = await workshop.openBench();
    for (let at = 0; at < 35; at++) await patch(address, "/api/bench/parts/S01", { note: `note ${at}` });
    const { page } = await openPage(workshop, `${address}/history/parts/S01`);
    onTestFinished(() => page.context().close());
    const rows = page.locator("li[id^='change-']");
    await expect.poll(() => rows.count()).toBe(30);
    await page.getByRole("button", { name: "Show older" }).click();
    await page.getByText("That is all that is kept.").waitFor();
    expect(await rows.count()).toBeGreaterThanOrEqual(35);
  });

  it("calls this machine as it is named on Devices", async () => {
    const { page, address } = await workshop.visit("/devices");
    await page.getByLabel("Name in the history").fill("Front desk");
    await page.getByRole("button", { name: "Keep the name" }).click();
    await page.getByText("Kept.", { exact: true }).waitFor();
    await patch(address, "/api/bench/parts/S01", { note: "by name" });
    await page.goto(`${address}/history`);
    await settled(page);
    await page.getByText("Front desk").first().waitFor();
  });
});

describe("on a phone", () => {
  it("both versions and a refused undo have nothing axe objects to and do not scroll sideways", async () => {
    const address = await workshop.openBench();
    const viewport = { width: 360, height: 740 };
    const { page, faults } = await openWithAxe(workshop.browser, `${address}/parts/S01/edit`, { viewport });
    onTestFinished(() => page.context().close());
    const sideways = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    await note(page).fill("mine");
    await patch(address, "/api/bench/parts/S01", { note: "theirs" });
    await page.getByRole("button", { name: "Save the change" }).click();
    await page.getByRole("row", { name: /^Note mine theirs/ }).waitFor();
    await page.getByRole("dialog", { name: /^This machine changed the part S01 meanwhile/ }).waitFor();
    expect(await objections(page)).toEqual([]);
    expect(await sideways()).toBeLessThanOrEqual(0);
    await page.getByRole("button", { name: "Keep mine" }).click();
    await page.getByText("S01 is changed.").waitFor();
    await page.goto(`${address}/history/parts/S01`);
    await settled(page);
    await page
      .getByRole("button", { name: /^Undo change/ })
      .nth(1)
      .click();
    await page.getByRole("row", { name: "Note theirs mine" }).waitFor();
    expect(await objections(page)).toEqual([]);
    expect(await sideways()).toBeLessThanOrEqual(0);
    expect(faults).toEqual([]);
  });
});
