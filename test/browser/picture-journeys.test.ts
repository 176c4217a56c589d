import axe from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { fractionText } from "../../packages/ui/src/format/length.ts";
import { openPage, openWorkshop, served, settled, type Workshop } from "./page.test-kit.ts";

// A browser on a busy machine is slow, and slow is not wrong.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

let workshop: Workshop;
let address: string;
beforeAll(async () => {
  workshop = await openWorkshop();
  address = await workshop.openBench();
});
afterAll(() => workshop.close());

const at = (path: string) => openPage(workshop, `${address}${path}`);
const clubPath = "/clubs/H01/H01%2BA01%2BS01%2BG01";

/** What a drawing says to those who cannot see it, once it is drawn. */
async function said(page: Page, drawing: string): Promise<string> {
  const picture = page.locator(`${drawing} svg[role="img"]`).first();
  await picture.waitFor({ timeout: 90_000 });
  return (await picture.getAttribute("aria-label")) ?? "";
}

/** The labels that a drawing shows. */
const labels = (page: Page, drawing: string) =>
  page.locator(`${drawing} svg[role="img"] text`).allTextContents();

/** The club as the answer has it. */
async function answeredClub() {
  const { body } = await served(address, "/api/bench/parts/H01/goes-with");
  return body.clubs.find(({ id }: { id: string }) => id === "H01+A01+S01+G01");
}

/** What the server makes of the same club with so much cut from its butt. */
async function cutBy(buttTrimIn: number) {
  const { body: bench } = await served(address, "/api/bench");
  const part = (id: string) => bench.parts.find((one: { id: string }) => one.id === id);
  const request = { head: part("H01"), adapter: part("A01"), shaft: part("S01"), grip: part("G01") };
  const reply = await fetch(`${address}/api/dimensions`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ ...request, gripped: true, bonded: true, build: { buttTrimIn } }),
  });
  return (await reply.json()) as { playingLengthIn: number; cutLengthIn: number };
}

describe("the club drawn to scale", () => {
  it("shows the answer's own measures, and others when it is tuned by hand", async () => {
    const { page, faults } = await at(clubPath);
    const { estimates } = await answeredClub();
    const own = `playing length ${fractionText(estimates.playingLengthIn.value)} in`;
    expect((await said(page, "ferrule-club-drawing")).toLowerCase()).toContain("playing length");
    const before = await labels(page, "ferrule-club-drawing");
    expect(before).toEqual(expect.arrayContaining([own, "fulcrum 14 in"]));
    await page.getByRole("slider", { name: "Cut from the butt" }).fill("1.25");
    await page.getByText("cut 1 1/4 in", { exact: true }).waitFor();
    const after = await labels(page, "ferrule-club-drawing");
    const asCut = await cutBy(1.25);
    expect(after).toContain(`playing length ${fractionText(asCut.playingLengthIn)} in`);
    expect(after).toContain(`shaft ${fractionText(asCut.cutLengthIn)} in`);
    expect(after.find((text) => text.startsWith("balance"))).not.toBe(
      before.find((text) => text.startsWith("balance")),
    );
    await page.getByRole("button", { name: "Back to how it was" }).click();
    await page.getByText(own, { exact: true }).waitFor();
    expect(faults).toEqual([]);
  });

  it("draws a way that was found, at the length that was asked for", async () => {
    const { page, faults } = await at(clubPath);
    await page.getByLabel(/^Playing length/).fill("44");
    await page.getByRole("button", { name: "Find the ways" }).click();
    await page.getByRole("button", { name: "Draw this way" }).first().click();
    await page.getByText("playing length 44 in", { exact: true }).waitFor();
    expect(await said(page, "ferrule-swing-weight-drawing")).toContain("As tried: 44 in");
    expect(faults).toEqual([]);
  });

  it("says in numbers what every single change does", async () => {
    const { page } = await at(clubPath);
    await page.locator("ferrule-swing-weight-drawing svg", { hasText: "15 g butt" }).waitFor();
    await page.getByText("The same as a table").click();
    const rows = await page.locator("ferrule-tune-picture tbody tr").allInnerTexts();
    expect(rows).toHaveLength(6);
    const { estimates } = await answeredClub();
    const shorter = `${fractionText(estimates.playingLengthIn.value - 0.5)} in`;
    expect(rows.find((row) => row.startsWith("cut 1/2 in"))).toContain(shorter);
  });
});

describe("the joint cut open", () => {
  it("shows tip, bore, gap and depth of a joint that holds", async () => {
    const { page } = await at(clubPath);
    await said(page, "ferrule-joint-drawing");
    // The parts of the demo: a tip of .335 in a bore of .339 in, 1 1/4 in deep; half the difference is the gap.
    for (const words of ["tip .335 in", "bore .339 in", "epoxy .002 in", "deep 1 1/4 in"])
      expect(await labels(page, "ferrule-joint-drawing"), words).toContain(words);
    expect(await page.locator("ferrule-joint-drawing .mark").count()).toBe(0);
  });

  it.each([
    ["/refused/H15/S17", "mouth", 2],
    ["/refused/H20/S07", "bottom", 1],
    ["/refused/H01/S05/A05", "seat", 2],
    ["/refused/H18/S13", "wall", 2],
  ])("marks what clashes in %s at the %s", async (path, place, marks) => {
    const { page } = await at(path);
    expect(await said(page, "ferrule-joint-drawing")).toContain(`It clashes at the ${place}`);
    expect(await page.locator("ferrule-joint-drawing .mark").count()).toBe(marks);
  });

  it("draws no joint where the joint is not what refuses", async () => {
    const { page } = await at("/refused/H16/S01");
    await page.getByText("rule shaft-suits-club-type").first().waitFor();
    expect(await page.locator("ferrule-joint-drawing").count()).toBe(0);
  });
});

describe("what goes with what", () => {
  it("draws every kind that goes together, tables it, and shows one kind alone with what it does not go with", async () => {
    const { page, faults } = await at("/together");
    expect(await said(page, "ferrule-together-drawing")).toMatch(/kinds of head on the left/);
    expect(await page.locator("ferrule-together-drawing .link.does-not-fit").count()).toBe(0);
    const { body } = await served(address, "/api/bench/resolve?limit=1000");
    const fits = body.clubs.filter(({ verdict }: { verdict: string }) => verdict === "fits");
    const counted = await page
      .locator("tbody tr")
      .filter({ has: page.locator("ferrule-verdict", { hasText: /^\s*Fits\s*$/ }) })
      .locator("td:last-child")
      .allInnerTexts();
    const sum = counted.reduce((all, text) => all + Number(/\d+/.exec(text)?.[0]), 0);
    expect(sum).toBe(fits.length);
    const options = await page.locator("#kind option").allTextContents();
    await page
      .locator("#kind")
      .selectOption({ label: options.find((text) => text.includes("Tarnlock")) ?? "" });
    await page.locator("ferrule-together-drawing .cross").first().waitFor();
    expect(await page.locator("ferrule-together-drawing .group.chosen").count()).toBe(1);
    expect(faults).toEqual([]);
  });
});

describe("prices and money", () => {
  it("draws every price behind an estimate, with the estimate the server makes", async () => {
    const { page } = await at("/prices");
    const text = await said(page, "ferrule-price-drawing");
    const count = Number(/^(\d+) prices/.exec(text)?.[1]);
    expect(count).toBeGreaterThan(5);
    expect(await page.locator("ferrule-price-drawing svg[role='img'] path[transform]").count()).toBe(count);
    expect(text).toContain((await page.locator("ferrule-price-picture strong").first().innerText()).trim());
    await page.getByText(`The ${count} prices behind it`).click();
    await page.getByRole("columnheader", { name: "Counted as" }).waitFor();
  });

  it("ends where the books end", async () => {
    const { page } = await at("/books");
    const { body } = await served(address, "/api/books/summary");
    const euros = (minor: number) => (minor / 100).toLocaleString("en-GB", { minimumFractionDigits: 2 });
    const text = await said(page, "ferrule-money-drawing");
    expect(text).toContain(`€${euros(body.totals.inMinor)} had come in`);
    expect(text).toContain(`€${euros(-body.totals.outMinor)} had gone out`);
    await page.getByText("The same as a table").click();
    const months = await page.locator("section[aria-labelledby='time'] tbody tr").count();
    expect(months).toBe(16);
  });
});

describe.each(["light", "dark"] as const)("on a phone, in %s", (colorScheme) => {
  it("fits without scrolling sideways, labels inside the picture, and has nothing that axe objects to", async () => {
    const { page } = await openPage(workshop, `${address}${clubPath}`, {
      colorScheme,
      viewport: { width: 360, height: 740 },
      bypassCSP: true,
    });
    await page.evaluate(axe.source);
    for (const path of [clubPath, "/refused/H15/S17", "/together", "/prices", "/books"]) {
      if (path !== clubPath) await page.goto(`${address}${path}`);
      await settled(page);
      await page.locator("svg[role='img']").first().waitFor({ timeout: 90_000 });
      if (path !== clubPath) await page.evaluate(axe.source);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
        path,
      ).toBeLessThanOrEqual(0);
      expect(await beyondTheEdge(page), path).toEqual([]);
      const { violations } = await page.evaluate(() =>
        (globalThis as unknown as { axe: typeof axe }).axe.run(),
      );
      expect(violations.map(({ id, nodes }) => `${path} ${id} ${nodes[0]?.target.join(" ")}`)).toEqual([]);
    }
  });
});

/** Labels of drawings that stick out of the window. */
async function beyondTheEdge(page: Page): Promise<string[]> {
  return page
    .locator("svg[role='img'] text")
    .evaluateAll((all) =>
      all
        .filter(
          (one) => one.getBoundingClientRect().right > innerWidth || one.getBoundingClientRect().left < 0,
        )
        .map((one) => one.textContent ?? ""),
    );
}
