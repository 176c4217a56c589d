import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
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

async function answerTo(url: string, body: object) {
  const { status, body: answer } = await ask(await testApp(), "POST", url, body);
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
});
