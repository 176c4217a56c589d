import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPage, openWorkshop, settled, type Workshop } from "./page.test-kit.ts";
import { viewPaths } from "./view-paths.ts";

/** What may take the focus of a page, wherever it stands, and what has been reached so far. */
interface Walk {
  /** How many things there are to come to. */
  readonly count: number;
  readonly left: () => readonly string[];
  /** What had the focus and did not show it. */
  readonly unmarked: () => readonly string[];
}
declare const walk: Walk;

/** Stops beyond one for each thing: a date has several within it, and after the last of a page comes the browser's own. */
const moreStops = 15;

describe("with the keyboard alone, and with motion reduced", () => {
  let workshop: Workshop;
  let address: string;
  let page: Page;
  beforeAll(async () => {
    workshop = await openWorkshop();
    address = await workshop.openBench();
    ({ page } = await openPage(workshop, address, {
      viewport: { width: 1280, height: 900 },
      reducedMotion: "reduce",
    }));
  });
  afterAll(() => workshop.close());

  it.each(Object.entries(viewPaths))(
    "%s: Tab comes to all of it and shows where it is, and nothing moves by itself",
    async (_name, path) => {
      await page.goto(`${address}${path}`);
      await settled(page);
      expect(await page.evaluate(movingElements)).toEqual([]);
      const count = await page.evaluate(beginWalk);
      for (let press = 0; press < count + moreStops; press += 1) await page.keyboard.press("Tab");
      expect(await page.evaluate(() => walk.left())).toEqual([]);
      expect(await page.evaluate(() => walk.unmarked())).toEqual([]);
    },
  );
});

/** What has a transition, an animation or a scroll that takes time. Runs in the page. */
function movingElements(): string[] {
  const all = (root: Document | ShadowRoot): Element[] =>
    [...root.querySelectorAll("*")].flatMap((one) => [one, ...(one.shadowRoot ? all(one.shadowRoot) : [])]);
  const seconds = (text: string) => Math.max(...text.split(",").map(Number.parseFloat));
  const styled = all(document).filter((one) => {
    const { transitionDuration, animationDuration, scrollBehavior } = getComputedStyle(one);
    return seconds(transitionDuration) > 0 || seconds(animationDuration) > 0 || scrollBehavior === "smooth";
  });
  const running = document.getAnimations().map(() => "an animation");
  return [...styled.map(({ localName }) => localName), ...running];
}

/** Lists what can be pressed, typed into or followed, and strikes off what the focus comes to. Runs in the page. */
function beginWalk(): number {
  const wanted = "a[href], button, input, select, textarea, summary, [tabindex], [contenteditable]";
  const all = (root: Document | ShadowRoot): HTMLElement[] =>
    [...root.querySelectorAll<HTMLElement>("*")].flatMap((one) => [
      one,
      ...(one.shadowRoot ? all(one.shadowRoot) : []),
    ]);
  const isOneOfMany = (one: HTMLElement) =>
    one instanceof HTMLInputElement && one.type === "radio" && one.name !== "";
  const can = all(document).filter(
    (one) =>
      one.matches(wanted) &&
      one.tabIndex >= 0 &&
      !one.matches(":disabled") &&
      one.checkVisibility({ visibilityProperty: true }),
  );
  const nameOf = (one: HTMLElement) =>
    `${one.localName} ${(one.getAttribute("aria-label") || one.textContent || one.id).trim().slice(0, 50)}`;
  const reached = new Set<HTMLElement>();
  const isMarked = (one: HTMLElement) => {
    const { outlineStyle, outlineWidth } = getComputedStyle(one);
    return outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 1;
  };
  const answered = (one: HTMLElement): boolean =>
    reached.has(one) ||
    // Of radio buttons with one name, Tab comes to one and the arrows to the others.
    (isOneOfMany(one) &&
      [...reached].some(
        (other) => isOneOfMany(other) && (other as HTMLInputElement).name === (one as HTMLInputElement).name,
      ));
  const unmarked = new Set<string>();
  // Where the focus goes from one thing of a component to the next, nobody outside of it hears.
  const roots = [document, ...all(document).flatMap((one) => one.shadowRoot ?? [])];
  for (const root of roots)
    root.addEventListener("focusin", (event) => {
      const on = event.composedPath()[0] as HTMLElement;
      if (!isMarked(on)) unmarked.add(nameOf(on));
      reached.add(on);
    });
  (globalThis as unknown as { walk: Walk }).walk = {
    count: can.length,
    left: () => can.filter((one) => one.isConnected && !answered(one)).map(nameOf),
    unmarked: () => [...unmarked],
  };
  return can.length;
}
