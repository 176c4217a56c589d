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

const words =
  "Northmoor Ombrel driver head, 10.5 degrees, RH. No sky marks. Headcover included, no wrench. 35 EUR ono, postage 6 EUR";

/** Counts what a person does: presses on the page or of a key that means something, and the words that are typed. */
class Hand {
  readonly typed: string[] = [];
  presses = 0;
  constructor(private readonly page: Page) {}

  async press(role: "button" | "link", name: string | RegExp): Promise<void> {
    this.presses += 1;
    await this.page.getByRole(role, { name }).click();
  }

  async key(key: string): Promise<void> {
    this.presses += 1;
    await this.page.keyboard.press(key);
  }

  async type(text: string): Promise<void> {
    this.typed.push(text);
    await this.page.keyboard.type(text);
  }

  /** Everything that stands in the controls of the page, and has not been typed. */
  value(label: string): Promise<string> {
    return this.page.getByLabel(label).inputValue();
  }
}

/** From the verdict on, a phone and a wide window take the same presses. */
async function fromVerdictToBooks(page: Page, hand: Hand): Promise<void> {
  await page.locator(".verdict[aria-busy='false'] ferrule-deal-mark").waitFor();
  await hand.press("button", "Bought for €35.00");
  await page.getByRole("heading", { name: "The first club with it" }).waitFor();
  hand.presses += 1;
  await page
    .locator("section", { has: page.locator("#best") })
    .locator("a.club")
    .click();
  await hand.press("link", "Build sheet");
  await hand.press("button", /^It is built/);
  await hand.type("45 1/8");
  await hand.key("Tab");
  await hand.type("D3");
  await hand.key("Tab");
  await hand.type("318");
  await hand.key("Enter");
  await hand.press("link", "It is sold");
  await page.getByText(/^Filled in: the middle of what such a thing goes for/).waitFor();
  // The focus is in the price, which is the only thing that only the user knows.
  await expect.poll(() => focusedId(page), { timeout: 20_000 }).toBe("price");
  expect(Number(await hand.value("Price, without postage (EUR)"))).toBeGreaterThan(0);
  expect(await hand.value("Name in the books")).toMatch(/^Northmoor Ombrel driver /);
  await hand.type("121");
  await hand.key("Enter");
  await page.getByText("Sold at €121.00.").waitFor();
  await page.getByRole("heading", { name: "Books" }).waitFor();
}

async function focusedId(page: Page): Promise<string | undefined> {
  return page.evaluate(() => {
    let at = document.activeElement;
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    return at?.id;
  });
}

async function copy(page: Page, text: string): Promise<void> {
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
}

type Line = { id: string; type: string; amount: { amountMinor: number }; club?: string; parts: string[] };

/** What the way has left behind: the purchase as the listing said it, the club as it was measured, the sale and its fees. */
async function checkBooks(address: string, before: readonly Line[]): Promise<void> {
  const { entries } = (await served(address, "/api/books")).body as { entries: Line[] };
  const lines = entries.filter(({ id }) => !before.some((old) => old.id === id));
  const amounts = (type: string) =>
    lines.filter((line) => line.type === type).map(({ amount }) => amount.amountMinor);
  const sum = (all: readonly number[]) => all.reduce((total, each) => total + each, 0);
  expect(sum(amounts("buy"))).toBe(-3500);
  expect(amounts("sale")).toEqual([12_100]);
  const [fees = 0] = amounts("fee");
  expect(fees).toBeLessThan(0);
  expect(sum(amounts("postage"))).toBe(-600);
  const { measurements } = (await served(address, "/api/measurements")).body;
  expect(measurements.at(-1).measured).toMatchObject({
    playingLengthIn: { value: 45.125 },
    swingWeightPoints: { value: 33 },
    massG: { value: 318 },
  });
  const { parts } = (await served(address, "/api/bench")).body;
  const sold = parts.filter((part: { soldOn?: string }) => part.soldOn !== undefined);
  expect(sold).toContainEqual(expect.objectContaining({ kind: "head", maker: "Northmoor", model: "Ombrel" }));
}

describe("the way from a listing to the books", () => {
  it.each([
    { name: "wide, with the keyboard's paste", width: 1280, height: 900, presses: 10 },
    { name: "on a phone, with a thumb", width: 360, height: 740, presses: 11 },
  ])(
    "is one press from each step to the next, with nothing typed twice: $name",
    async ({ width, height, presses }) => {
      const address = await workshop.openBench();
      const before = (await served(address, "/api/books")).body.entries;
      const { page, faults } = await openPage(workshop, address, {
        viewport: { width, height },
        permissions: ["clipboard-read", "clipboard-write"],
      });
      const hand = new Hand(page);
      await copy(page, words);
      if (width > 1000) await hand.key("Control+v");
      else {
        await hand.press("link", "Listings");
        await hand.press("button", "Paste and read");
      }
      await fromVerdictToBooks(page, hand);
      expect(hand.presses).toBeLessThanOrEqual(presses);
      // Only what no listing and no bench can know is typed, each once: three readings and the price it brought.
      expect(hand.typed).toEqual(["45 1/8", "D3", "318", "121"]);
      await checkBooks(address, before);
      expect(faults).toEqual([]);
    },
  );

  it("reads what is pasted into the empty box at once, and leaves what looks like many listings to be told apart", async () => {
    const address = await workshop.openBench();
    const { page } = await openPage(workshop, `${address}/`, {
      permissions: ["clipboard-read", "clipboard-write"],
    });
    await page.getByRole("link", { name: "Listings" }).click();
    await settled(page);
    await expect.poll(() => focusedId(page), { timeout: 20_000 }).toBe("paste");
    await copy(page, [words, words, words, words].join("\n\n"));
    await page.keyboard.press("Control+v");
    expect((await page.getByLabel("Paste a listing").inputValue()).length).toBeGreaterThan(3 * words.length);
    expect(new URL(page.url()).pathname).toBe("/listings");
    await page.getByLabel("Paste a listing").fill("");
    await copy(page, words);
    await page.getByLabel("Paste a listing").press("Control+v");
    await page.getByRole("button", { name: "Bought for €35.00" }).waitFor();
  });
});
