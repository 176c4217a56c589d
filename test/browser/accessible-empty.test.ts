import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { objections, openWithAxe } from "./axe.test-kit.ts";
import { openWorkshop, settled, type Workshop } from "./page.test-kit.ts";

let workshop: Workshop;
beforeAll(async () => {
  workshop = await openWorkshop();
});
afterAll(() => workshop.close());

describe("an empty bench", () => {
  let page: Page;
  let empty: string;
  beforeAll(async () => {
    empty = await workshop.openBench();
    await fetch(`${empty}/api/bench/start-own`, { method: "POST" });
    ({ page } = await openWithAxe(workshop.browser, empty));
  });
  afterAll(() => page.context().close());

  const changing = [
    "/",
    "/plan",
    "/watch",
    "/wants",
    "/questions",
    "/claims",
    "/listings",
    "/books",
    "/sell",
    "/prices",
    "/models",
  ];
  it.each(changing)("has nothing axe objects to at %s", async (path) => {
    await page.goto(`${empty}${path}`);
    await settled(page);
    expect(await objections(page)).toEqual([]);
  });
});
