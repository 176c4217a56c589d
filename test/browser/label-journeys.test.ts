import axe from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { openPage, openWorkshop, served, settled, type Workshop } from "./page.test-kit.ts";

// A browser on a busy machine is slow, and slow is not wrong.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

let workshop: Workshop;
beforeAll(async () => {
  workshop = await openWorkshop();
});
afterAll(() => workshop.close());

const phone = { viewport: { width: 360, height: 740 } };

interface Label {
  readonly code: string;
  readonly part: string;
}
const labelsAt = async (address: string): Promise<Label[]> =>
  (await served(address, "/api/labels")).body.labels;

async function isGood(page: Page, faults: readonly string[]): Promise<void> {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate(() => (globalThis as unknown as { axe: typeof axe }).axe.run());
  expect(
    violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`)),
  ).toEqual([]);
  const sidewaysPx = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(sidewaysPx).toBeLessThanOrEqual(0);
  expect(faults).toEqual([]);
}

/** Pages of a PDF: each is an object of type Page (ISO 32000-1, 7.7.3.3), and its size in points. */
async function onPaper(page: Page): Promise<{ pages: number; box: string | undefined }> {
  const pdf = (await page.pdf({ preferCSSPageSize: true, printBackground: true })).toString("latin1");
  return {
    pages: pdf.match(/\/Type\s*\/Page(?!s)/g)?.length ?? 0,
    box: /\/MediaBox\s*\[([^\]]*)\]/.exec(pdf)?.[1]?.trim(),
  };
}

describe("labels", () => {
  it("are chosen, printed on as many sheets as it takes, and new no more once they are", async () => {
    const address = await workshop.openBench();
    const all = await labelsAt(address);
    const { page, faults } = await openPage(workshop, `${address}/labels`, phone);
    await isGood(page, faults);
    await page.getByRole("button", { name: new RegExp(`^Print ${all.length} labels`) }).waitFor();
    const sheets = Math.ceil(all.length / 21);
    const paper = await onPaper(page);
    expect(paper.pages).toBe(sheets);
    // A4 by ISO 216, 210 × 297 mm, is 595 × 842 points of 1/72 in.
    expect(paper.box?.split(/\s+/).map((edge) => Math.round(Number(edge)))).toEqual([0, 0, 595, 842]);
    await page
      .getByRole("combobox", { name: "Size" })
      .selectOption({ label: "A roll 29 mm wide, cut every 62 mm" });
    await page.getByRole("combobox", { name: "Labels of" }).selectOption("wrench");
    const wrenches = await page.locator(".tag").count();
    expect((await onPaper(page)).pages).toBe(wrenches);
    await page.getByRole("combobox", { name: "Labels of" }).selectOption("all");
    await page.getByRole("button", { name: "They are printed" }).click();
    await page.getByText(`${all.length} labels noted as printed.`).waitFor();
    await page.getByRole("button", { name: "Print 0 labels" }).waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByText("They are not noted as printed.").waitFor();
  });

  it("of one part are one press from it", async () => {
    const address = await workshop.openBench();
    const { page, faults } = await openPage(workshop, `${address}/parts/H01`);
    await page.getByRole("link", { name: "Label" }).click();
    await page.getByRole("button", { name: "Print 1 label" }).waitFor();
    expect(faults).toEqual([]);
  });
});

describe("a code", () => {
  it("scanned into the search of the bench leads to its part, and misread to those it may be", async () => {
    const address = await workshop.openBench();
    const [label] = await labelsAt(address);
    const { code, part } = label as Label;
    const { page, faults } = await openPage(workshop, address);
    const search = page.getByRole("searchbox", { name: "Search" });
    const misread = (code[0] === "7" ? "8" : "7") + code.slice(1);
    await search.fill(misread);
    await search.press("Enter");
    await page.getByText(`Nothing on the bench has the code ${misread}. Did you mean ${code}`).waitFor();
    await search.fill("");
    await search.pressSequentially(`https://192.168.1.20:4311/code/${code}`);
    await search.press("Enter");
    await page.waitForURL(`${address}/parts/${part}`);
    await settled(page);
    expect(faults).toEqual([]);
  });

  it("in an address leads on, and going back does not come to it again; a camera that cannot read is said to", async () => {
    const address = await workshop.openBench();
    const [label] = await labelsAt(address);
    const { code, part } = label as Label;
    const { page, faults } = await openPage(workshop, `${address}/code`, phone);
    await page.getByText(/This browser cannot read codes with its camera|Scan a label/).waitFor();
    await isGood(page, faults);
    await page.goto(`${address}/code/${code.toLowerCase()}`);
    await page.waitForURL(`${address}/parts/${part}`);
    await page.goBack();
    await page.getByRole("heading", { name: "Find by code" }).waitFor();
    await page.getByRole("textbox", { name: "The code on the label" }).fill("22222");
    await page.getByRole("button", { name: "Go to the part" }).click();
    await page.getByText(/Nothing on the bench has the code 22222/).waitFor();
    expect(faults).toEqual([]);
  });
});

describe("settings at once", () => {
  it("are shown, want a rate where there are books, are put in and taken back", async () => {
    const address = await workshop.openBench();
    const { page, faults } = await openPage(workshop, `${address}/settings`, phone);
    await page.getByRole("combobox", { name: "First values for" }).selectOption("britain");
    await page.getByRole("textbox", { name: "One EUR is worth, in the new currency" }).fill("0.85");
    await page.getByRole("button", { name: "Show again" }).click();
    await page.getByText("An hour of yours is worth", { exact: true }).waitFor();
    await isGood(page, faults);
    await page.getByRole("button", { name: "Put them in" }).click();
    await page.getByText(/settings changed\./).waitFor();
    expect((await served(address, "/api/costs")).body).toMatchObject({
      currency: "GBP",
      rates: { EUR: 0.85 },
    });
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByText("The settings are as they were.").waitFor();
    expect((await served(address, "/api/costs")).body.currency).toBe("EUR");
  });

  it("come from a file, whose slips are named", async () => {
    const address = await workshop.openBench();
    const { page, faults } = await openPage(workshop, `${address}/settings`);
    const file = (settings: object) => ({
      name: "ferrule-settings.json",
      mimeType: "application/json",
      buffer: Buffer.from(JSON.stringify({ format: "ferrule-settings", version: 1, ...settings })),
    });
    await page.getByLabel("Or a file of settings").setInputFiles(file({ costs: { hourValueMinor: -1 } }));
    await page.getByText(/line 1, costs\.hourValueMinor/).waitFor();
    await page.getByLabel("Or a file of settings").setInputFiles(file({ display: { theme: "dark" } }));
    await page.getByText("1 setting would change").waitFor();
    await page.getByRole("button", { name: "Put them in" }).click();
    await page.locator("html[data-theme=dark]").waitFor();
    expect(faults).toEqual([]);
  });
});
