import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPage, openWorkshop, settled, type Workshop } from "./page.test-kit.ts";
import { viewPaths } from "./view-paths.ts";

/** Turns what follows it round (Unicode Standard Annex 9, 2.2): unless it is shut in, also words of ours. */
const turn = "\u202e";
const hostile = `<img src=x onerror="document.title='taken'"><script>document.title='taken'</script>${turn}${"\u2067"}`;

let workshop: Workshop;
beforeAll(async () => {
  workshop = await openWorkshop();
});
afterAll(() => workshop.close());

async function send(address: string, path: string, body: object): Promise<Record<string, string>> {
  const reply = await fetch(`${address}${path}`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });
  expect([path, reply.status]).toEqual([path, 201]);
  return (await reply.json()) as Record<string, string>;
}

/** Puts hostile words wherever somebody else's words can come to stand. Returns paths of views that show them. */
async function poison(address: string): Promise<string[]> {
  const names = { maker: hostile, model: hostile, note: hostile };
  await send(address, "/api/bench/parts", { id: "X1", kind: "head", clubType: "driver", ...names });
  await send(address, "/api/bench/parts", { id: hostile.slice(-60), kind: "grip", ...names });
  await send(address, "/api/catalogue", { kind: "head", maker: hostile, model: hostile, aliases: [hostile] });
  const price = { amountMinor: 2500, currency: "EUR" };
  await send(address, "/api/evidence", {
    on: "2026-11-02",
    what: "asked",
    price,
    kind: "head",
    maker: hostile,
    note: hostile,
  });
  await send(address, "/api/books", {
    on: "2026-11-02",
    type: "other",
    amount: price,
    club: hostile,
    note: hostile,
  });
  const { code = "" } = await send(address, "/api/devices/offer", {});
  await send(address, "/api/pair", { code, name: hostile.slice(0, 29) + turn });
  const judged = await fetch(`${address}/api/judge`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ text: `${hostile} driver head RH, 20 EUR`, place: hostile, log: true }),
  });
  const { sighting } = (await judged.json()) as { sighting: { id: string } };
  return [
    "/parts/X1",
    "/parts/X1/edit",
    `/listings/${encodeURIComponent(sighting.id)}`,
    ...Object.values(viewPaths),
  ];
}

/** What every page is asked once it stands: elements that words became, and words of ours that they could turn round. */
async function harm(page: Page) {
  return page.evaluate((mark) => {
    const roots: (Document | ShadowRoot)[] = [document];
    for (const root of roots)
      for (const element of root.querySelectorAll("*"))
        if (element.shadowRoot) roots.push(element.shadowRoot);
    const all = roots.flatMap((root) => [...root.querySelectorAll("*")]);
    const became = all.filter(
      (element) =>
        element.matches("img[src=x], iframe, object, embed, [onerror], [onclick], base") ||
        (element.localName === "script" && !element.getAttribute("src")?.startsWith("/")),
    );
    const isShutIn = (element: Element) => {
      const { display, unicodeBidi } = getComputedStyle(element);
      return (
        unicodeBidi.includes("isolate") || unicodeBidi === "plaintext" || !/^(inline|contents)$/.test(display)
      );
    };
    const turned: string[] = [];
    let shown = 0;
    for (const root of roots) {
      const texts = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
      for (let node = texts.nextNode(); node; node = texts.nextNode()) {
        const text = node.textContent ?? "";
        if (text.includes("<img src=x")) shown += 1;
        if (
          !text.includes(mark) ||
          /^(style|script|title|option|textarea)$/i.test(node.parentElement?.localName ?? "")
        )
          continue;
        let box = node.parentElement;
        while (box && !isShutIn(box)) box = box.parentElement;
        // In the box of a listing all words are the seller's own.
        if (box?.matches(".words")) continue;
        const after = (box?.textContent ?? "").split(text).slice(1).join("").trim();
        if (after !== "" && !after.includes(mark))
          turned.push(`${box?.localName}.${box?.className}: ${after.slice(0, 60)}`);
      }
    }
    return {
      became: became.map((element) => element.outerHTML.slice(0, 120)),
      turned: [...new Set(turned)],
      shown,
    };
  }, turn);
}

describe("hostile words", { timeout: 240_000 }, () => {
  it("stay words in every view: no element, no script, no request to anywhere else, and no word of ours turned round", async () => {
    const address = await workshop.openBench();
    const paths = await poison(address);
    const { page, faults } = await openPage(workshop, `${address}/nothing-here`);
    const elsewhere: string[] = [];
    const refused: string[] = [];
    page.on("request", (request) => {
      if (!request.url().startsWith(`${address}/`) && !/^(data|blob):/.test(request.url()))
        elsewhere.push(request.url());
    });
    page.on("console", (message) => {
      if (/Content Security Policy|violates/.test(message.text())) refused.push(message.text());
    });
    const found: [string, unknown][] = [];
    let shownInAll = 0;
    for (const path of paths) {
      await page.goto(`${address}${path}`);
      await settled(page);
      const { became, turned, shown } = await harm(page);
      shownInAll += shown;
      if (became.length + turned.length > 0) found.push([path, { became, turned }]);
      expect(await page.title()).not.toBe("taken");
    }
    expect(shownInAll, "places where the words stand as words").toBeGreaterThan(10);
    expect({ found, elsewhere, refused, faults }).toEqual({
      found: [],
      elsewhere: [],
      refused: [],
      faults: [],
    });
  });

  it("cannot come in by a page of another origin: neither its form, nor its script, nor its frame", async () => {
    const address = await workshop.openBench();
    const before = await (await fetch(`${address}/api/bench`)).text();
    const context = await workshop.browser.newContext();
    const page = await context.newPage();
    // Another port of this machine is another program's page.
    await page.route("http://127.0.0.1:9/**", (route) =>
      route.fulfill({ contentType: "text/html", body: "<!doctype html><title>other</title><p id=said></p>" }),
    );
    await page.goto("http://127.0.0.1:9/");
    const said = await page.evaluate(async (target) => {
      const tries = [
        fetch(`${target}/api/bench`),
        fetch(`${target}/api/bench/parts`, {
          method: "POST",
          mode: "no-cors",
          headers: { "content-type": "text/plain" },
          body: '{"kind":"grip"}',
        }),
        fetch(`${target}/api/bench/parts`, {
          method: "POST",
          headers: { "content-type": "application/json" },
          body: '{"kind":"grip"}',
        }),
        fetch(`${target}/api/bench/resolve`, { mode: "no-cors" }),
      ];
      const results = await Promise.allSettled(tries);
      const frame = document.createElement("iframe");
      frame.src = target;
      document.body.append(frame);
      await new Promise((resolve) => frame.addEventListener("load", resolve));
      return {
        read: results.filter((one) => one.status === "fulfilled" && one.value.type !== "opaque").length,
        framed: frame.contentDocument !== null,
      };
    }, address);
    expect(said).toEqual({ read: 0, framed: false });
    expect(await (await fetch(`${address}/api/bench`)).text()).toBe(before);
    await context.close();
  });
});
