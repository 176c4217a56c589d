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

async function planned(page: Page): Promise<void> {
  await page.locator("section[aria-busy='false'] .figures").waitFor({ timeout: 90_000 });
}

/** The plan's view, and the last plan that the server gave it. */
async function atPlan() {
  const { page, faults } = await at("/settings");
  const bodies: Promise<unknown>[] = [];
  page.on("response", (reply) => {
    if (reply.url().endsWith("/api/plan") && reply.ok()) bodies.push(reply.json());
  });
  await page.getByRole("link", { name: "Plan", exact: true }).click();
  await planned(page);
  // biome-ignore lint/suspicious/noExplicitAny: each test reads the few fields it checks
  const lastPlan = async (): Promise<any> => bodies.at(-1);
  return { page, faults, lastPlan };
}

const euros = (minor: number) =>
  `${minor < 0 ? "−" : ""}€${(Math.abs(minor) / 100).toLocaleString("en-GB", { minimumFractionDigits: 2 })}`;

/** What stands under "Brings". */
const brings = (page: Page) => page.locator(".figures dd").first().innerText();

describe("the plan", () => {
  it("is the server's, thing by thing, and its clubs are drawn and tabled", async () => {
    const { page, faults, lastPlan } = await atPlan();
    const plan = await lastPlan();
    expect(plan.actions.length).toBeGreaterThan(5);
    expect(await brings(page)).toBe(euros(plan.netMinor));
    expect(await page.locator(".actions > li").count()).toBe(plan.actions.length);
    const clubs = plan.actions.filter(({ do: what }: { do: string }) => what === "build" || what === "wait");
    const drawn = page.locator("figure svg[role='img']");
    expect(await drawn.count()).toBe(Math.min(24, clubs.length));
    const [first] = plan.actions.filter(({ do: what }: { do: string }) => what === "build");
    for (const part of first.parts) expect(await drawn.first().getAttribute("aria-label")).toContain(part);
    await page.getByText("The same as a table").click();
    expect(await page.locator("tbody tr").count()).toBe(clubs.length);
    await page
      .getByText(/^The work: /)
      .first()
      .click();
    await page.getByText("Take care", { exact: true }).first().waitFor();
    expect(faults).toEqual([]);
  });

  it("answers when a slider has moved, and leads back to where it began", async () => {
    const { page, lastPlan } = await atPlan();
    const began = await brings(page);
    const before = await lastPlan();
    const hours = page.getByRole("slider", { name: /Your hours/ });
    await hours.press("Home");
    for (let hour = 0; hour < 8; hour++) await hours.press("ArrowRight");
    await page.getByText(/less than the plan you began with/).waitFor({ timeout: 60_000 });
    const minutes = Number(await hours.inputValue()) * (await stepOf(page));
    const plan = await lastPlan();
    expect(plan.minutes).toBeLessThanOrEqual(minutes);
    expect(plan.netMinor).toBeLessThan(before.netMinor);
    expect(await brings(page)).toBe(euros(plan.netMinor));
    expect(await page.locator(".actions > li").count()).toBe(plan.actions.length);
    await page.getByRole("button", { name: "Back to it" }).click();
    await expect.poll(() => brings(page), { timeout: 60_000 }).toBe(began);
  });

  it("keeps the last answer on the page while a slider is dragged, and drops what was overtaken", async () => {
    const { page } = await at("/plan");
    await planned(page);
    const began = await brings(page);
    let asked = 0;
    const bodies: string[] = [];
    await page.route("**/api/plan", async (route) => {
      asked += 1;
      bodies.push(route.request().postData() ?? "");
      await new Promise((resolve) => setTimeout(resolve, asked === 1 ? 3000 : 300));
      await route.continue().catch(() => undefined);
    });
    const skill = page.getByRole("slider", { name: /How far you go/ });
    await skill.press("Home");
    await expect.poll(() => asked).toBe(1);
    expect(await brings(page)).toBe(began);
    const hours = page.getByRole("slider", { name: /Your hours/ });
    const presses = 20;
    await hours.press("Home");
    for (let press = 0; press < presses; press++) await hours.press("ArrowRight");
    await planned(page);
    expect(asked).toBeLessThan(presses);
    const last = JSON.parse(bodies.at(-1) ?? "{}");
    expect(last).toMatchObject({ skill: "screw", minutes: 20 * (await stepOf(page)) });
  });
});

describe("a plan that was not settled in time", () => {
  it("is searched for longer, as far as somebody waits, and the best of it is shown", async () => {
    const { page, faults } = await at("/settings");
    await page.route("**/api/plan", async (route) => {
      const reply = await route.fetch();
      await route.fulfill({
        response: reply,
        json: { ...(await reply.json()), netMinor: 100, stopped: true },
      });
    });
    await page.getByRole("link", { name: "Plan", exact: true }).click();
    const longer = page.getByRole("button", { name: "Search for longer" });
    await longer.waitFor({ timeout: 90_000 });
    expect(await brings(page)).toBe("€1.00");
    const started = page.waitForResponse((reply) => reply.url().endsWith("/api/plan/jobs"));
    await longer.click();
    expect((await started).status()).toBe(202);
    await expect.poll(() => brings(page), { timeout: 120_000 }).not.toBe("€1.00");
    await planned(page);
    expect(faults).toEqual([]);
  });
});

/** Minutes in one step of the slider of hours: what it says at its first step. */
async function stepOf(page: Page): Promise<number> {
  const hours = page.getByRole("slider", { name: /Your hours/ });
  const words = await hours.getAttribute("aria-valuetext");
  const [, whole = "0", rest = "0"] = /(?:(\d+) h ?)?(?:(\d+) min)?$/.exec(words ?? "") ?? [];
  return (Number(whole) * 60 + Number(rest)) / Number(await hours.inputValue());
}

const wanted = "Vexholm Reedlace 60 wood shaft, 44.5 in, with Quillon 2 adapter RH. 25 EUR, postage 5 EUR";

describe("the watchlist", () => {
  it("has a hit once a listing that offers something wanted is pasted, until it is dealt with", async () => {
    const { address, page, faults } = await at("/listings");
    await page.getByLabel("Paste a listing").fill(wanted);
    await page.getByRole("button", { name: "Read it" }).click();
    await page.locator(".verdict[aria-busy='false'] ferrule-deal-mark").waitFor();
    await page.getByRole("heading", { name: "On your watchlist" }).waitFor();
    await page.getByRole("link", { name: "Watchlist", exact: true }).click();
    await page.getByText("the most worth first").waitFor();
    const [hit] = (await served(address, "/api/hits")).body.hits;
    await page
      .getByText(hit.overMinor < 0 ? /under the cap/ : /over the cap/)
      .first()
      .waitFor();
    const link = page.getByRole("link", { name: `Open the listing ${hit.sighting}` });
    expect(await link.getAttribute("href")).toBe(`/listings/${hit.sighting}`);
    expect(await page.locator(".hit").first().innerText()).toContain(hit.clubs[0]);
    await page
      .getByRole("button", { name: `Dealt with: listing ${hit.sighting}` })
      .first()
      .click();
    await expect
      .poll(async () => {
        const { hits } = (await served(address, "/api/hits?all=true")).body;
        return hits.filter((each: typeof hit) => each.isDealtWith).map((each: typeof hit) => each.sighting);
      })
      .toEqual([hit.sighting]);
    expect(faults).toEqual([]);
  });

  it("is ranked by worth; a want is pinned, capped and muted", async () => {
    const { address, page } = await at("/watch");
    await page.getByText("the most worth first").waitFor();
    const entries = async () => (await served(address, "/api/watch")).body.entries;
    const shown = await page.locator("ferrule-watch-item h3").allInnerTexts();
    const texts = (await entries()).map(({ watch }: { watch: { text: string } }) => watch.text);
    expect(shown.map((text) => text.toLowerCase())).toEqual(texts.map((text: string) => text.toLowerCase()));
    await page.getByRole("button", { name: /^Pin / }).last().click();
    await page.getByRole("button", { name: /^Pin /, pressed: true }).waitFor();
    expect((await entries())[0].watch.pinned).toBe(true);
    await page.getByText("Cap and place").first().click();
    await page.getByLabel("Pay at most (EUR)").first().fill("31,50");
    await page
      .getByRole("button", { name: /^Keep cap and place/ })
      .first()
      .click();
    await expect.poll(async () => (await entries())[0].capMinor).toBe(3150);
    await page
      .getByRole("button", { name: /^Mute / })
      .first()
      .click();
    await page.getByRole("button", { name: /^Mute /, pressed: true }).waitFor();
  });

  it("takes a want by hand, with its search words, and lets it go again", async () => {
    const { address, page } = await at("/watch");
    await page.getByRole("button", { name: "Add a want by hand" }).click();
    await page.getByLabel("What kind of part").selectOption("head");
    await page.getByLabel("In your words").fill("a left-handed putter head");
    await page.getByLabel("Club type").selectOption("putter");
    await page.getByLabel("Hand", { exact: true }).selectOption("left");
    await page.getByLabel("Pay at most (EUR)").first().fill("20");
    await page.getByRole("button", { name: "Put it on the list" }).click();
    const item = page.locator("ferrule-watch-item", { hasText: "A left-handed putter head" });
    await item.waitFor();
    const byHand = async () =>
      (await served(address, "/api/watch")).body.entries.filter(
        ({ watch }: { watch: { by: string } }) => watch.by === "hand",
      );
    expect(await byHand()).toMatchObject([
      { watch: { kind: "head", needs: { clubType: "putter", hand: "left" }, capMinor: 2000 } },
    ]);
    await item.getByText("Search words").click();
    expect(await item.locator(".search").innerText()).toContain("putter head");
    await item.getByRole("button", { name: /^Take off the list/ }).click();
    await item.waitFor({ state: "detached" });
    expect(await byHand()).toEqual([]);
  });
});

/** So many that they are not all judged before anybody can press a button. */
const many = 300;
/** Rows that are shown at first. */
const shown = 100;

describe("hundreds of listings at once", () => {
  const things = [
    "Northmoor Ombrel driver head RH",
    "Haldenbach Skerrick driver head RH",
    wanted.split(". ")[0],
  ];
  const text = Array.from(
    { length: many },
    (_, at) => `${things[at % 3]}, lot ${at}, asking ${10 + (at % 50)} EUR`,
  );

  it("show how far they are, are stopped and gone on with, and stand sorted by what they bring", async () => {
    const { address, page, faults } = await at("/listings");
    await page.getByLabel("Paste a listing").fill(text.join("\n\n"));
    await page.getByText("Many at once").click();
    await page.getByRole("button", { name: "What is pasted above is many listings" }).click();
    const bar = page.getByRole("progressbar", { name: "Listings judged" });
    await bar.waitFor();
    expect(await bar.getAttribute("aria-valuemax")).toBe(`${many}`);
    await page.getByRole("button", { name: "Stop" }).click();
    await page.getByRole("button", { name: "Go on" }).click();
    await page.getByText(`All ${many} judged.`).waitFor({ timeout: 90_000 });
    expect(await bar.getAttribute("aria-valuenow")).toBe(`${many}`);
    const id = new URL(page.url()).pathname.split("/").at(-1);
    const { rows } = (await served(address, `/api/batches/${id}?limit=1000`)).body;
    expect(rows.length).toBe(many);
    const nets = rows.map(
      ({ netMinor }: { netMinor: number | null }) => netMinor ?? Number.NEGATIVE_INFINITY,
    );
    expect(nets).toEqual([...nets].sort((one, other) => other - one));
    const links = page.locator(".judged a[href^='/listings/']");
    expect(await links.count()).toBe(shown);
    expect(await links.first().getAttribute("href")).toBe(`/listings/${rows[0].sighting}`);
    expect(await page.locator(".judged .net").first().innerText()).toContain(euros(rows[0].netMinor));
    await page.getByLabel("Only what is on the watchlist").check();
    const hits = rows.filter((row: { hits: string[] }) => row.hits.length > 0).length;
    expect(hits).toBeGreaterThan(0);
    await expect.poll(() => links.count()).toBe(hits);
    await page.getByRole("link", { name: "All listings" }).click();
    await settled(page);
    await page.getByRole("heading", { name: "Brought in together" }).waitFor();
    expect(faults).toEqual([]);
  });

  it("that cannot be taken say why, and nothing is lost", async () => {
    const { page } = await at("/listings");
    await page.getByLabel("Paste a listing").fill("a".repeat(30_000));
    await page.getByText("Many at once").click();
    await page.getByRole("button", { name: "What is pasted above is many listings" }).click();
    await page.getByText(/expected 1 to 5000 listings/).waitFor();
    expect((await page.getByLabel("Paste a listing").inputValue()).length).toBe(30_000);
  });
});
