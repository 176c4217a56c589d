import axe from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { openPage, openWorkshop, served, settled, type Workshop } from "./page.test-kit.ts";

// A browser on a busy machine is slow, and slow is not wrong.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

let workshop: Workshop;
beforeAll(async () => {
  workshop = await openWorkshop();
});
afterAll(() => workshop.close());

const phone = { viewport: { width: 360, height: 740 } };

async function send(address: string, method: string, path: string, body: object): Promise<void> {
  const headers = { "content-type": "application/json" };
  const reply = await fetch(`${address}${path}`, { method, headers, body: JSON.stringify(body) });
  expect(reply.status, await reply.clone().text()).toBeLessThan(300);
}

const sheetPath = (club: string) => `/sheet/${club.split("+")[0]}/${encodeURIComponent(club)}`;

/** Pages of a PDF: each is an object of type Page (ISO 32000-1, 7.7.3.3). */
async function pagesOnPaper(page: Page): Promise<number> {
  const pdf = (await page.pdf({ preferCSSPageSize: true, printBackground: true })).toString("latin1");
  return pdf.match(/\/Type\s*\/Page(?!s)/g)?.length ?? 0;
}

async function objections(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate(() => (globalThis as unknown as { axe: typeof axe }).axe.run());
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(" ")}`));
}

const sidewaysPx = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

async function isGood(page: Page, faults: readonly string[]): Promise<void> {
  expect(await objections(page)).toEqual([]);
  expect(await sidewaysPx(page)).toBeLessThanOrEqual(0);
  expect(faults).toEqual([]);
}

describe("the build sheet", () => {
  it("is one press from the club, is measured back with what stood estimated, and leads to the description", async () => {
    const address = await workshop.openBench();
    const { page, faults } = await openPage(workshop, `${address}/clubs/H01/H01%2BA01%2BS01%2BG01`);
    await page.getByRole("link", { name: "Build sheet" }).click();
    await page.getByRole("heading", { name: /^Build sheet: / }).waitFor();
    await settled(page);
    await page.getByText("No club measured yet").first().waitFor();
    await page.getByRole("textbox", { name: /^Playing length/ }).fill("much");
    await page.getByRole("button", { name: "Keep what was measured" }).click();
    await page.getByText("This was not understood.").waitFor();
    await page.getByRole("textbox", { name: /^Playing length/ }).fill("45 1/8");
    await page.getByRole("textbox", { name: /^Swing weight/ }).fill("D3");
    await page.getByRole("textbox", { name: /^Mass/ }).fill("318");
    await page.getByRole("button", { name: "Keep what was measured" }).click();
    await page.getByText("Kept what was measured.").waitFor();
    const row = page.locator("section", { hasText: "Measured" }).getByRole("row", { name: /^Mass 318 g/ });
    await row.waitFor();
    await page
      .getByText(/1 club of this type, 1 in all/)
      .first()
      .waitFor();
    const { measurements } = (await served(address, "/api/measurements")).body;
    expect(measurements[0].measured).toMatchObject({
      playingLengthIn: { value: 45.125 },
      swingWeightPoints: { value: 33 },
    });
    await page.getByRole("link", { name: "Describe it for sale" }).click();
    expect(await page.getByLabel("Text", { exact: true }).inputValue()).toContain("Mass: 318 g, measured on");
    await page.getByRole("link", { name: "It is sold" }).click();
    await page.getByRole("heading", { name: "Sell" }).waitFor();
    expect(faults).toEqual([]);
  });

  it("is one page of A4 on paper, however much work the club is, in dark and light", async () => {
    const address = await workshop.openBench();
    await send(address, "PUT", "/api/bench/goal", {
      skill: "machine",
      targets: { driver: { playingLengthIn: 44 }, iron: { playingLengthIn: 36.5 } },
    });
    const { clubs } = (await served(address, "/api/bench/resolve?limit=5000")).body;
    type Found = { id: string; work: { cautions: unknown[] }[] };
    const cares = ({ work }: Found) => work.length + work.flatMap(({ cautions }) => cautions).length;
    const byWork = (clubs as Found[]).toSorted((one, other) => cares(other) - cares(one));
    const [most, least] = [byWork[0], byWork.at(-1)] as [Found, Found];
    expect(cares(most)).toBeGreaterThan(20);
    for (const [club, colorScheme] of [
      [most, "dark"],
      [most, "light"],
      [least, "light"],
    ] as const) {
      const { page } = await openPage(workshop, `${address}${sheetPath(club.id)}`, { colorScheme });
      await page.getByRole("heading", { name: "Steps in order" }).waitFor();
      expect(await pagesOnPaper(page), club.id).toBe(1);
      await page.context().close();
    }
  });

  it.each(["light", "dark"] as const)("is good on a phone and wide, in %s", async (colorScheme) => {
    const address = await workshop.openBench();
    const path = sheetPath("H01+A01+S01+G01");
    const { page, faults } = await openPage(workshop, `${address}${path}`, {
      ...phone,
      colorScheme,
      bypassCSP: true,
    });
    await isGood(page, faults);
    await page.setViewportSize({ width: 1280, height: 900 });
    await isGood(page, faults);
  });
});

describe("the inspection", () => {
  it("asks one thing at a time, goes back, and stops the club until a person clears it with a note", async () => {
    const address = await workshop.openBench();
    const { page, faults } = await openPage(workshop, `${address}/parts/A01`, { ...phone, bypassCSP: true });
    await page.getByRole("link", { name: "Look it over" }).click();
    await page.getByText("Question 1 of 4").waitFor();
    await isGood(page, faults);
    const yes = page.getByRole("button", { name: "Yes", exact: true });
    expect((await yes.boundingBox())?.height).toBeGreaterThanOrEqual(80);
    await yes.click();
    await page.getByRole("button", { name: "← Back" }).click();
    expect(await yes.getAttribute("aria-pressed")).toBe("true");
    await page.getByRole("button", { name: "No", exact: true }).click();
    await page.getByRole("button", { name: "No", exact: true }).click();
    await page.getByText("Question 3 of 4").waitFor();
    await yes.click();
    await page.getByRole("button", { name: "I cannot tell" }).click();
    await page.getByRole("heading", { name: "What you found" }).waitFor();
    await isGood(page, faults);
    await page.getByRole("button", { name: "Write it down" }).click();
    await page.getByRole("heading", { name: "Stopped for safety" }).waitFor();
    const part = async () => (await served(address, "/api/bench/parts/A01")).body;
    expect(await part()).toMatchObject({ faults: ["loose-joint"], deniedFaults: ["adapter-damaged"] });
    const sheet = await served(address, `/api/sheet?club=${encodeURIComponent("H01+A01+S01+G01")}`);
    expect([sheet.status, sheet.body.error.code]).toEqual([409, "unsafe"]);
    await page.getByText("Moves or creaks where it is joined: clear it").click();
    await page.getByRole("button", { name: "Clear it with this note" }).click();
    await page.getByText("A name is needed.").waitFor();
    await isGood(page, faults);
    await page.getByLabel("It has been put right").check();
    await page.getByLabel("Who says so").fill("Ann");
    await page.getByLabel("What was looked at or done").fill("Bonded anew, left for 24 hours, does not move");
    await page.getByRole("button", { name: "Clear it with this note" }).click();
    await page.getByText("Cleared: moves or creaks where it is joined.").waitFor();
    expect((await part()).faults).toBeUndefined();
    await page.getByText(/cleared by Ann, put right/).waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(async () => (await part()).faults).toEqual(["loose-joint"]);
  });

  it("is there again after a reload, until it is written down", async () => {
    const address = await workshop.openBench();
    const { page, faults } = await openPage(workshop, `${address}/inspect/A01`, phone);
    await page.getByText("Question 1 of 4").waitFor();
    await page.getByRole("button", { name: "No", exact: true }).click();
    await page.getByRole("button", { name: "No", exact: true }).click();
    await page.getByText("Question 3 of 4").waitFor();
    await page.reload();
    await page.getByText("Question 3 of 4").waitFor();
    await page.getByText("Begun before and not written down: 2 answers kept.").waitFor();
    await isGood(page, faults);
    await page.getByRole("button", { name: "No", exact: true }).click();
    await page.getByRole("button", { name: "No", exact: true }).click();
    await page.getByLabel(/^Who looked/).fill("Ann");
    await page.reload();
    await page.getByRole("heading", { name: "No: 4" }).waitFor();
    expect(await page.getByLabel(/^Who looked/).inputValue()).toBe("Ann");
    await page.getByRole("button", { name: "Write it down" }).click();
    await page.getByRole("heading", { name: "Written down" }).waitFor();
    const { body } = await served(address, "/api/inspection?part=A01");
    expect(body.inspections).toMatchObject([{ by: "Ann" }]);
    await page.reload();
    await page.getByText("Question 1 of 4").waitFor();
    expect(await page.getByText("Begun before").count()).toBe(0);
  });

  it("is gone through by keyboard alone", async () => {
    const address = await workshop.openBench();
    const { page } = await openPage(workshop, `${address}/inspect/G01`);
    await page.getByText("Question 1 of 2").waitFor();
    for (let turn = 0; turn < 2; turn += 1) {
      await page.getByRole("button", { name: "No", exact: true }).focus();
      await page.keyboard.press("Enter");
    }
    await page.getByRole("button", { name: "Write it down" }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Written down" }).waitFor();
    expect((await served(address, "/api/bench/parts/G01")).body.deniedFaults).toContain("grip-worn");
  });
});

describe("the sale", () => {
  it("is not written at Enter on a price that was only filled in, but at a press on the button", async () => {
    const address = await workshop.openBench();
    const { page, faults } = await openPage(workshop, `${address}/sell/H01/A01/S01/G01`);
    const price = page.getByLabel("Price, without postage (EUR)");
    await page.getByText(/^Filled in: the middle of what such a thing goes for/).waitFor();
    await expect.poll(() => price.inputValue()).not.toBe("");
    await price.press("Enter");
    await page.getByText(/^Not written yet: “Price, without postage” is still what was filled in/).waitFor();
    await isGood(page, faults);
    expect((await served(address, "/api/bench/parts/H01")).body.soldOn).toBeUndefined();
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Books" }).waitFor();
    expect((await served(address, "/api/bench/parts/H01")).body.soldOn).toBeDefined();
  });
});

describe("the description", () => {
  it("is copied, written in a template of one's own, and tells what each line rests on", async () => {
    const address = await workshop.openBench();
    const permissions = ["clipboard-read", "clipboard-write"];
    const options = { ...phone, permissions, bypassCSP: true };
    const { page, faults } = await openPage(workshop, `${address}/advert/H01/A01/S01/G01`, options);
    const text = page.getByLabel("Text", { exact: true });
    await text.waitFor();
    await page.getByRole("button", { name: "Copy the text" }).click();
    await page.getByText("Copied.").first().waitFor();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(await text.inputValue());
    await page.getByText("Change how descriptions are written").click();
    const own = page.getByRole("textbox", { name: "Your template" });
    await own.fill("{title} for {prize}");
    await page.getByRole("button", { name: "Keep it" }).click();
    await page.getByText(/line 1: got \{prize\}/).waitFor();
    await isGood(page, faults);
    await own.fill("<b>Juniors</b>: {title}");
    await page.getByRole("button", { name: "Keep it" }).click();
    await expect.poll(() => text.inputValue()).toMatch(/^<b>Juniors<\/b>: /);
    expect(await page.locator("b").count()).toBe(0);
    await page.getByText(/^\d+ lines$/).click();
    await page
      .getByText(/H01, maker/)
      .first()
      .waitFor();
    await isGood(page, faults);
  });
});
