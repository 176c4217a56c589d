import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { readReference } from "../../packages/server/src/reference-files.ts";
import { ask, testApp } from "./server.test-kit.ts";

const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");

/** Lines run on as they are read, so that a sentence is found wherever it is broken. */
const prose = readme.replace(/\s+/g, " ");

/** The body of the one curl example in README.md that posts to this address. */
function bodyPostedTo(url: string) {
  const found = readme.match(
    new RegExp(`curl -s http://127\\.0\\.0\\.1:4310${url} [^']*'[^']*' -d '([^']*)'`),
  );
  if (found?.[1] === undefined) throw new Error(`README.md posts nothing to ${url}`);
  return JSON.parse(found[1]);
}

/** What README.md says between two of its own phrases. */
function saidAfter(phrase: string, end: string): string {
  const from = prose.indexOf(phrase);
  const to = prose.indexOf(end, from + phrase.length);
  if (from < 0 || to < 0) throw new Error(`README.md no longer says "${phrase} … ${end}"`);
  return prose.slice(from + phrase.length, to);
}

/** The tables of the checkout, the costs that a new bench starts from among them. */
const reference = readReference(fileURLToPath(new URL("../../data", import.meta.url)));

async function answerTo(url: string, body: object) {
  const { status, body: answer } = await ask(await testApp({ reference }), "POST", url, body);
  expect(status).toBe(200);
  return answer;
}

describe("the examples in README.md", () => {
  it("refuse the left-handed adapter in the words that are quoted", async () => {
    const answer = await answerTo("/api/resolve", bodyPostedTo("/api/resolve"));
    const quoted = saidAfter('`nearMisses[0].proof.text` begins: "', '"');
    expect(answer.clubs).toEqual([]);
    expect(answer.nearMisses[0].proof.text.slice(0, quoted.length)).toBe(quoted);
  });

  it("make the club that is described once the adapter is right-handed", async () => {
    const body = bodyPostedTo("/api/resolve");
    const adapter = body.parts.find(({ kind }: { kind: string }) => kind === "adapter");
    adapter.hand = "right";
    const { clubs } = await answerTo("/api/resolve", body);
    expect(clubs).toHaveLength(1);
    expect(clubs[0].verdict).toBe("fits");
    expect(clubs[0].work.map(({ step }: { step: string }) => step)).toEqual(["screw-in"]);
    const { value, low, high } = clubs[0].estimates.playingLengthIn;
    expect(saidAfter("its playing length comes out at ", ", because")).toBe(
      `${value.toFixed(1)} in with an interval from ${low.toFixed(1)} to ${high.toFixed(1)}`,
    );
  });

  it("estimate the 5-iron at the figures that are stated", async () => {
    const { playingLengthIn, swingWeight, massG } = await answerTo(
      "/api/estimate",
      bodyPostedTo("/api/estimate"),
    );
    const span = ({ low, high }: { low: number; high: number }, digits: number) =>
      `${low.toFixed(digits)} to ${high.toFixed(digits)}`;
    expect(`Playing length ${saidAfter("Playing length ", ". Each estimate")}`).toBe(
      `Playing length ${playingLengthIn.value.toFixed(1)} in (${span(playingLengthIn, 1)}), ` +
        `swing weight ${swingWeight.label} (${span(swingWeight, 1)} points, where D0 is 30), ` +
        `mass ${massG.value.toFixed(0)} g (${span(massG, 0)})`,
    );
  });

  it("read the facts that are listed, each where it stands in the text", async () => {
    const body = bodyPostedTo("/api/read");
    const { spans, items, ...listing } = await answerTo("/api/read", body);
    expect(listing).toEqual({
      intent: "sell",
      asking: { amountMinor: Number(saidAfter("For sale at ", " minor")), currency: "EUR" },
      negotiable: true,
      postage: { amountMinor: Number(saidAfter("negotiable, postage ", ";")), currency: "EUR" },
      doubts: [],
    });
    expect(items).toMatchObject([
      {
        kind: "head",
        maker: "Northmoor",
        model: "Ombrel",
        clubType: "driver",
        loftDeg: 10.5,
        hand: "right",
        faults: [saidAfter("`faults` ", ",")],
        deniedFaults: [saidAfter("`deniedFaults` ", ".")],
        cover: null,
        adapterFamily: null,
      },
    ]);
    for (const { start, end, words } of spans) expect(body.text.slice(start, end)).toBe(words);
  });

  it("judge the listing at the figures that are stated", async () => {
    const { deal, sighting } = await answerTo("/api/judge", bodyPostedTo("/api/judge"));
    const units = (minor: number) => (minor / 100).toFixed(2);
    const { resale } = deal.items[0].clubs[0];
    expect(deal.verdict).toBe(saidAfter("With the first costs the verdict is `", "`"));
    expect(deal.mostToPay.currency).toBe("EUR");
    expect(units(deal.mostToPay.amountMinor)).toBe(saidAfter("and `mostToPay` ", " EUR"));
    expect(saidAfter("the club should bring ", ", since")).toBe(
      `${units(resale.valueMinor)} EUR (${units(resale.lowMinor)} to ${units(resale.highMinor)}`,
    );
    const [{ net, mostToPayMinor, lines }] = deal.alternatives;
    expect(units(net.valueMinor + deal.asking.amountMinor)).toBe(saidAfter("would bring alone: ", " EUR"));
    expect(mostToPayMinor).toBe(deal.mostToPay.amountMinor);
    expect(lines.map(({ code }: { code: string }) => code)).toEqual(
      expect.arrayContaining(["fees", "sending", "sale-time", "work-time", "shelf", "postage-in"]),
    );
    expect(sighting).toBeNull();
  });

  it("judge it otherwise at the lower price, and without a price to go by", async () => {
    const body = bodyPostedTo("/api/judge");
    const cheap = await answerTo("/api/judge", { ...body, text: body.text.replace("50 euros", "20 euros") });
    expect(cheap.deal.verdict).toBe(saidAfter("At 20 euros the verdict is `", "`"));
    const most = saidAfter("and at ", " the chance");
    const atMost = await answerTo("/api/judge", {
      ...body,
      text: body.text.replace("50 euros", `${most} euros`),
    });
    const said = Number(saidAfter(`${most} the chance of a loss is the `, " that"));
    expect(atMost.deal.alternatives[0].lossChance).toBeCloseTo(said, 3);
    const { deal } = await answerTo("/api/judge", { ...body, evidence: [] });
    expect(deal.verdict).toBe(saidAfter('With `"evidence": []` it is `', "`"));
    expect(deal.mostToPay).toBeNull();
    expect(deal.questions[0]).toMatchObject({ to: "you", field: "resale" });
    expect(deal.questions[0].text).toContain("sell for");
  });
});
