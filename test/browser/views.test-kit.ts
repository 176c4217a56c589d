import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { objections, openWithAxe } from "./axe.test-kit.ts";
import { openWorkshop, settled, type Workshop } from "./page.test-kit.ts";
import { viewPaths } from "./view-paths.ts";

/** Checks that every view, in light and in dark, is as good for everybody at one width of the screen. */
export function describeViews(width: number, height: number): void {
  describe(`in light and dark at ${width} px`, () => {
    let workshop: Workshop;
    let address: string;
    let page: Page;
    let faults: readonly string[];
    beforeAll(async () => {
      workshop = await openWorkshop();
      address = await workshop.openBench();
      ({ page, faults } = await openWithAxe(workshop.browser, address, { viewport: { width, height } }));
    });
    afterAll(() => workshop.close());

    async function isGood(): Promise<void> {
      expect(await objections(page)).toEqual([]);
      expect(await sidewaysPx(page)).toBeLessThanOrEqual(0);
      expect(faults).toEqual([]);
    }

    it.each(Object.entries(viewPaths))(
      "%s has nothing axe objects to and does not scroll sideways",
      async (_name, path) => {
        await page.goto(`${address}${path}`);
        await settled(page);
        await isGood();
      },
    );

    it("a form with refused fields and everything opened is as good", async () => {
      await page.goto(`${address}/add`);
      await page.getByLabel("Shaft", { exact: true }).check();
      await page.getByText("Everything else").click();
      await page.getByText("How sure?").first().click();
      await page.getByLabel("Mass (g)").fill("much");
      await page.getByRole("button", { name: "Put it on the bench" }).click();
      await page.getByText(/Got "much"/).waitFor();
      await isGood();
    });

    it("an import with a bad row is as good", async () => {
      await page.goto(`${address}/exchange`);
      await page.getByLabel("Or paste it here").fill("kind,id,massG\ngrip,A LONG NAME,heavy\n");
      await page.getByRole("button", { name: "Try it" }).click();
      await page.getByRole("row", { name: /Line 2/ }).waitFor();
      await isGood();
    });

    it("a listing that was just pasted, with everything opened, is as good", async () => {
      await page.goto(`${address}/listings`);
      await settled(page);
      await page
        .getByLabel("Paste a listing")
        .fill(
          "Northmoor Ombrel driver head 10.5 RH, one dent, 2 Vexholm Reedlace 60 shafts stiff .335, 45 EUR ono, p&p 6 EUR",
        );
      await page.getByRole("button", { name: "Read it" }).click();
      await page.locator(".verdict[aria-busy='false'] ferrule-deal-mark").waitFor();
      await settled(page);
      await page.getByRole("button", { name: "I bought it" }).click();
      await page.getByRole("textbox", { name: "Loft of item 1" }).fill("steep");
      await page.getByText('Got "steep"').waitFor();
      await openAll(page);
      await isGood();
    });

    it("the plan with everything opened, and with a limit that leaves nothing, is as good", async () => {
      await page.goto(`${address}/plan`);
      await planned(page);
      await openAll(page);
      await page.getByLabel("At least for an hour").fill("much");
      await page.getByText("An amount is expected").waitFor();
      await isGood();
      await page.getByRole("slider", { name: /Your hours/ }).press("Home");
      await page.getByText("Nothing is known to bring money").waitFor();
      await isGood();
    });

    it("the watchlist with a hit, everything opened and a refused want is as good", async () => {
      const words = "Vexholm Reedlace 60 wood shaft 44.5 in with Quillon 2 adapter RH, 25 EUR, postage 5 EUR";
      await fetch(`${address}/api/judge`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({ text: words }),
      });
      await page.goto(`${address}/watch`);
      await page
        .getByRole("button", { name: /^Dealt with/ })
        .first()
        .waitFor();
      await page.getByText("the most worth first").waitFor();
      await openAll(page);
      await page.getByRole("button", { name: "Add a want by hand" }).click();
      await page.getByRole("button", { name: "Put it on the list" }).click();
      await page.getByText("This is needed.").waitFor();
      await isGood();
    });

    it("many listings at once, judged, are as good", async () => {
      const text = ["Northmoor Ombrel driver head RH 30 EUR", "Orvane Quernby driver head 25 EUR"].join(
        "\n\n",
      );
      await page.goto(`${address}/listings`);
      await settled(page);
      await page.getByLabel("Paste a listing").fill(text);
      await openAll(page);
      await page.getByRole("button", { name: "What is pasted above is many" }).click();
      await page.getByText("All 2 judged.").waitFor();
      await isGood();
    });

    it("forms of the books and the costs with refused fields are as good", async () => {
      await page.goto(`${address}/books`);
      await settled(page);
      await page.getByRole("button", { name: "Add a line" }).click();
      await page.getByLabel("How much (EUR)").fill("much");
      await page.getByRole("button", { name: "Add the line" }).click();
      await page.getByText(/Got "much"/).waitFor();
      await isGood();
      await page.goto(`${address}/costs`);
      await settled(page);
      await page.getByRole("button", { name: "Change an auction site" }).click();
      await openAll(page);
      await page.getByRole("button", { name: "More" }).click();
      await isGood();
    });

    it("one verdict in full, with the parts being narrowed, is as good", async () => {
      await page.goto(address);
      await settled(page);
      await page.getByRole("button", { name: /Unsettled$/ }).click();
      await page.getByText("Narrow it down").click();
      await isGood();
    });
  });
}

/** Opens everything that can be unfolded, whatever it is in. */
async function openAll(page: Page): Promise<void> {
  await page.locator("details").evaluateAll((all) => {
    for (const one of all) (one as HTMLDetailsElement).open = true;
  });
}

/** Waits until a plan stands there and no other is being worked out. */
async function planned(page: Page): Promise<void> {
  await page.locator("section[aria-busy='false'] .figures").waitFor();
  await settled(page);
}

async function sidewaysPx(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
}
