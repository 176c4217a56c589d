import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openWorkshop, served, settled, type Workshop } from "./page.test-kit.ts";

let workshop: Workshop;
beforeAll(async () => {
  workshop = await openWorkshop();
});
afterAll(() => workshop.close());

async function at(path: string) {
  return workshop.visit(path);
}

/** Pastes the words, and waits until they are judged. */
async function paste(page: Page, words: string): Promise<string> {
  await page.getByLabel("Paste a listing").fill(words);
  await page.getByRole("button", { name: "Read it" }).click();
  await judged(page);
  return decodeURIComponent(new URL(page.url()).pathname.split("/").at(-1) ?? "");
}

async function judged(page: Page): Promise<void> {
  await page.locator(".verdict[aria-busy='false'] ferrule-deal-mark").waitFor();
  await settled(page);
}

const words =
  "Northmoor Ombrel driver head, 10.5 degrees, RH. No sky marks. Headcover included, no wrench. 35 EUR ono, postage 6 EUR";

describe("a pasted listing", () => {
  it("is read with its words marked, corrected, judged, bought, and taken back again", async () => {
    const { address, page, faults } = await at("/listings");
    const before = (await served(address, "/api/bench")).body;
    const id = await paste(page, words);
    const sighting = (await served(address, `/api/sightings/${id}`)).body;
    expect(sighting).toMatchObject({ text: words, outcome: "open" });
    expect(sighting.listing.asking).toEqual({ amountMinor: 3500, currency: "EUR" });

    expect((await page.locator(".words").innerText()).replaceAll(/[\d,]*\n/g, "")).toContain("postage");
    const marks = await page.locator("mark").allInnerTexts();
    expect(marks.some((mark) => mark.startsWith("RH"))).toBe(true);

    // The loft on the tag turns out to be another one.
    const loft = page.getByRole("textbox", { name: "Loft of item 1" });
    await loft.fill("9,5");
    await expect
      .poll(async () => (await served(address, `/api/sightings/${id}`)).body.listing.items[0].loftDeg)
      .toBe(9.5);
    await judged(page);
    const corrected = (await served(address, `/api/sightings/${id}`)).body;
    expect(corrected.read).toEqual(sighting.read);
    expect(await loft.inputValue()).toBe("9,5");

    await page.getByRole("button", { name: "I bought it" }).click();
    expect(await page.getByLabel("Paid (EUR)").inputValue()).toBe("35.00");
    await page.getByLabel("Paid (EUR)").fill("32,50");
    await page.getByRole("button", { name: "Put it on the bench" }).click();
    await page.getByText(/ are on the bench\./).waitFor();
    await page.getByRole("heading", { name: "The first club with it" }).waitFor();
    const after = (await served(address, "/api/bench")).body;
    const bought = after.parts.filter(
      (part: { id: string }) => !before.parts.some((old: { id: string }) => old.id === part.id),
    );
    expect(bought).toHaveLength(2);
    expect(bought).toContainEqual(expect.objectContaining({ kind: "head", loftDeg: 9.5, hand: "right" }));
    const paidMinor = bought.reduce(
      (sum: number, { paid }: { paid?: { amountMinor: number } }) => sum + (paid?.amountMinor ?? 0),
      0,
    );
    expect(paidMinor).toBe(3250);
    expect((await served(address, `/api/sightings/${id}`)).body.outcome).toBe("bought");

    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByText("The purchase is taken back.").waitFor();
    expect((await served(address, "/api/bench/parts")).body.parts).toHaveLength(before.parts.length);
    expect((await served(address, `/api/sightings/${id}`)).body.outcome).toBe("open");
    expect(faults).toEqual([]);
  });

  it("says the verdict and the most to pay that the server gives, and what each way comes to", async () => {
    const { address, page } = await at("/listings");
    const id = await paste(page, words);
    const { mostToPay, verdict } = (await served(address, `/api/sightings/${id}`)).body;
    const shown = await page.locator(".verdict").innerText();
    expect(shown).toContain(`€${(mostToPay.amountMinor / 100).toFixed(2)}`);
    const begins = {
      buy: "Buy it",
      "offer-up-to": "Offer up to",
      "ask-first": "Ask first",
      leave: "Leave it",
    };
    expect(await page.locator(".verdict ferrule-deal-mark span").innerText()).toContain(
      begins[verdict as keyof typeof begins],
    );
    for (const way of ["Build with what is here", "Wait for a part", "Sell it as it is", "Leave it"])
      expect(await page.getByRole("rowheader", { name: way }).count(), way).toBe(1);
  });

  it("is judged once when it is pasted, and once more for a correction", async () => {
    const { page } = await at("/listings");
    const asked: string[] = [];
    page.on("request", (request) => {
      if (request.method() !== "GET") asked.push(`${request.method()} ${new URL(request.url()).pathname}`);
    });
    await paste(page, words);
    await page.getByRole("rowheader", { name: "Leave it" }).waitFor();
    expect(asked).toEqual(["POST /api/judge"]);
    const answer = page.waitForResponse((reply) => reply.url().endsWith("/api/judge"));
    await page.getByRole("combobox", { name: "Hand of item 1" }).selectOption("left");
    await answer;
    await judged(page);
    expect(asked).toEqual(["POST /api/judge", "POST /api/judge"]);
  });

  it("leads from a fact to its words and back by keyboard", async () => {
    const { page } = await at("/listings");
    await paste(page, words);
    await page.getByRole("button", { name: /see the words for hand of item 1/ }).press("Enter");
    const focused = () =>
      page.evaluate(() => {
        let at = document.activeElement;
        while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
        return at?.getAttribute("name") ?? at?.textContent ?? "";
      });
    await expect.poll(focused).toMatch(/^RH/);
    await page.keyboard.press("Enter");
    await expect.poll(focused).toBe("items.0.hand");
  });

  it("has its questions ready as a message that can be changed", async () => {
    const { page } = await at("/listings");
    await paste(page, "Northmoor Ombrel driver head 25 EUR");
    const message = page.getByLabel("Message to the seller");
    expect(await message.inputValue()).toMatch(/\?/);
    await message.fill("Is it right-handed?");
    await page.getByRole("combobox", { name: "Hand of item 1" }).selectOption("right");
    await judged(page);
    expect(await message.inputValue()).toBe("Is it right-handed?");
  });

  it("keeps hostile words as words", async () => {
    const { page, faults } = await at("/listings");
    const hostile = `<img src=x onerror="document.title='taken'"> driver head <script>alert(1)</script> 20 EUR`;
    await paste(page, hostile);
    expect(await page.locator(".words").evaluate((box) => box.textContent?.includes("<img src=x"))).toBe(
      true,
    );
    expect(await page.locator("main img, main script").count()).toBe(0);
    expect(await page.title()).not.toBe("taken");
    expect(faults).toEqual([]);
  });

  it("that was misread can be mended: an item is added, another taken out, a bad number is named", async () => {
    const { address, page } = await at("/listings");
    const id = await paste(page, words);
    const items = async () => (await served(address, `/api/sightings/${id}`)).body.listing.items;
    const before = await items();
    await page.getByRole("button", { name: "Add an item" }).click();
    await page
      .getByRole("combobox", { name: `What it is of item ${before.length + 1}` })
      .selectOption("grip");
    await expect.poll(async () => (await items()).at(-1).kind).toBe("grip");
    await page.getByRole("textbox", { name: "Loft of item 1" }).fill("steep");
    await page.getByText('Got "steep"').waitFor();
    expect((await items())[0].loftDeg).toBe(before[0].loftDeg);
    await page.getByRole("button", { name: /^Take it out: item 1/ }).click();
    await expect.poll(async () => (await items()).length).toBe(before.length);
  });

  it("is marked as sold to somebody else, at a price, and found again by it", async () => {
    const { address, page } = await at("/listings");
    const id = await paste(page, words);
    await page.getByLabel("It sold at (EUR)").fill("41,50");
    await page.getByRole("button", { name: "Somebody else bought it" }).click();
    await page.getByText("Marked: sold to somebody else.").waitFor();
    expect((await served(address, `/api/sightings/${id}`)).body).toMatchObject({
      outcome: "sold",
      outcomePrice: { amountMinor: 4150, currency: "EUR" },
    });
    await page.getByRole("link", { name: "Listings" }).click();
    await page.getByLabel("What became of it").selectOption("sold");
    await page.getByText(/sold to somebody else at €41\.50/).waitFor();
  });
});

describe("a thing without evidence", () => {
  it("asks for a price, and has an estimate once one is noted", async () => {
    const { address, page } = await at("/listings");
    await fetch(`${address}/api/bench/start-own`, { method: "POST" });
    for (const { id } of (await served(address, "/api/evidence")).body.evidence)
      await fetch(`${address}/api/evidence/${id}`, { method: "DELETE" });
    await paste(page, "Gormwell Lathe putter, RH, good condition, 30 EUR");
    await page.getByText("No evidence.").first().waitFor();
    await page.getByLabel("Price (EUR)").first().fill("55");
    await page.getByRole("button", { name: "Note the price" }).first().click();
    await page.getByText("The price is noted.").waitFor();
    await page
      .getByText(/Should sell for/)
      .first()
      .waitFor();
    const [row] = (await served(address, "/api/evidence")).body.evidence;
    expect(row).toMatchObject({
      price: { amountMinor: 5500, currency: "EUR" },
      clubType: "putter",
      what: "sold",
    });
  });
});

describe("a file of many listings", () => {
  it("is read and judged, and all of it is in the log", async () => {
    const { address, page } = await at("/listings");
    const before = (await served(address, "/api/sightings")).body.sightings.length;
    await page.getByText("Many at once").click();
    const text = [
      "Northmoor Ombrel driver head RH 40 EUR",
      "Vexholm Reedlace 60 shaft stiff 25 EUR",
      "Quillon 2 adapter .335 RH 12 EUR",
    ];
    await page.getByLabel("Choose a file").setInputFiles({
      name: "many.txt",
      mimeType: "text/plain",
      buffer: Buffer.from(`${text.join("\n\n")}\n`),
    });
    await page.getByRole("heading", { name: "many.txt" }).waitFor();
    await page.getByText("All 3 judged.").waitFor();
    const { sightings } = (await served(address, "/api/sightings")).body;
    expect(sightings).toHaveLength(before + 3);
    expect(sightings.map((one: { text: string }) => one.text)).toEqual(expect.arrayContaining(text));
  });
});

describe("the books", () => {
  it("hold a sale with its fees, and the parts are sold", async () => {
    const { address, page } = await at("/parts/H02");
    const before = (await served(address, "/api/books/summary")).body.totals;
    await page.getByRole("link", { name: "Sell", exact: true }).click();
    await page.getByLabel("Price, without postage (EUR)").fill("48,50");
    await page.getByLabel("What sending it cost (EUR)").fill("6.20");
    await page.getByLabel("Days it was for sale").fill("9");
    await page.getByRole("button", { name: "Write the sale in the books" }).click();
    await page.getByText("Sold at €48.50.").waitFor();
    await page.getByRole("heading", { name: "Books" }).waitFor();
    await settled(page);
    const { totals, currency } = (await served(address, "/api/books/summary")).body;
    expect(currency).toBe("EUR");
    // The buyer pays the postage on top: what sending cost comes in and goes out again.
    expect(totals.inMinor - before.inMinor).toBe(4850 + 620);
    expect(totals.postageMinor - before.postageMinor).toBe(0);
    expect(totals.sales).toBe(before.sales + 1);
    expect((await served(address, "/api/bench/parts/H02")).body.soldFor).toEqual({
      amountMinor: 4850,
      currency: "EUR",
    });
    await page.getByText("Sold €48.50").waitFor();
  });

  it("take a line, a change of it, and give a deleted one back", async () => {
    const { address, page } = await at("/books");
    const find = async (note: string) =>
      (await served(address, "/api/books")).body.entries.find(
        (entry: { note?: string }) => entry.note === note,
      );
    await page.getByRole("button", { name: "Add a line" }).first().click();
    await page.getByLabel("How much (EUR)").fill("much");
    await page.getByLabel("Note").fill("Two tubes of epoxy");
    await page.locator("ferrule-shelf-list").getByRole("button", { name: "Add the line" }).click();
    await page.getByText(/Got "much"/).waitFor();
    await page.getByLabel("How much (EUR)").fill("7,80");
    await page.locator("ferrule-shelf-list").getByRole("button", { name: "Add the line" }).click();
    await page.getByText("The line is added.").waitFor();
    expect(await find("Two tubes of epoxy")).toMatchObject({
      type: "material",
      amount: { amountMinor: -780, currency: "EUR" },
    });
    await page.getByRole("button", { name: "Change Materials −€7.80" }).click();
    await page.getByLabel("How much (EUR)").fill("8.10");
    await page.getByRole("button", { name: "Save the change" }).click();
    await page.getByRole("button", { name: "Delete Materials −€8.10" }).click();
    await page.getByText("The line is deleted.").waitFor();
    expect(await find("Two tubes of epoxy")).toBeUndefined();
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByText("The line is back.").waitFor();
    expect((await find("Two tubes of epoxy")).amount.amountMinor).toBe(-810);
  });
});

describe("the costs", () => {
  it("are kept as they were typed, fee tiers and rates included", async () => {
    const { address, page } = await at("/costs");
    await page.getByLabel("An hour of yours is worth (EUR)").fill("15,50");
    await page.getByRole("button", { name: "Keep these" }).first().click();
    await page.getByText("Kept.").waitFor();
    await page.getByLabel("What one of another is worth in EUR").fill("GBP 1,17");
    await page
      .locator("section", { has: page.getByRole("heading", { name: "Currencies" }) })
      .getByRole("button", { name: "Keep these" })
      .click();
    await page.getByRole("button", { name: "Change an auction site" }).click();
    await page.getByLabel("Share of the price").fill("5 % up to 25\n1 % of the rest");
    await page.getByRole("button", { name: "Save the change" }).click();
    await expect
      .poll(async () => (await served(address, "/api/costs")).body)
      .toMatchObject({
        hourValueMinor: 1550,
        rates: { GBP: 1.17 },
        feeTables: expect.arrayContaining([
          expect.objectContaining({
            id: "auction-site",
            tiers: [
              { upToMinor: 2500, percent: 5 },
              { upToMinor: null, percent: 1 },
            ],
          }),
        ]),
      });
  });
});

describe("the models", () => {
  it("take one more, under which a listing is known from then on", async () => {
    const { address, page } = await at("/models");
    await page.getByRole("button", { name: "Add a model" }).click();
    await page.getByLabel("Maker").fill("Gormwell");
    await page.getByLabel("Model", { exact: true }).fill("Sallowby");
    await page.getByLabel("Other ways sellers write it").fill("sallow by, SLB");
    await page.getByLabel("Adapter family").fill("Tarnlock");
    await page.getByRole("button", { name: "Add the model" }).click();
    await page.getByText("The model is added.").waitFor();
    const { models } = (await served(address, "/api/catalogue")).body;
    const added = models.find((one: { model: string }) => one.model === "Sallowby");
    expect(added).toMatchObject({ aliases: ["sallow by", "SLB"], adapterFamily: "Tarnlock" });
    await page.getByRole("link", { name: "Listings" }).click();
    const id = await paste(page, "Gormwell Sallowby driver head RH 30 EUR");
    expect((await served(address, `/api/sightings/${id}`)).body.listing.items[0].modelId).toBe(added.id);
  });
});

describe("the ways to the other places", () => {
  it("are opened and closed by keyboard, and a view that cannot be fetched says so", async () => {
    const { page } = await at("/");
    const more = page.getByRole("button", { name: "More", exact: true });
    await more.press("Enter");
    await page.getByRole("link", { name: "Costs" }).waitFor();
    await page.keyboard.press("Escape");
    expect(await page.getByRole("link", { name: "Costs" }).count()).toBe(0);
    await page.route("**/assets/prices-view*", (route) => route.abort());
    await more.press("Enter");
    await page.getByRole("link", { name: "Prices" }).click();
    await page.getByRole("heading", { name: "This page could not be fetched" }).waitFor();
  });
});
