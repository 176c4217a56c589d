import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { resolveBench, rules } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { reference } from "../reference-tables.ts";
import { benchFrom } from "./bench-notation.ts";
import { cases } from "./cases.ts";
import { rendered } from "./render.ts";

const golden = (name: string) => new URL(`golden/${name}.txt`, import.meta.url);
const isUpdating = process.env.UPDATE === "1";

/** The bench as it was written, and all that is said of it. */
function spoken(lines: readonly string[]): string {
  const result = resolveBench(benchFrom(lines.join("\n")), rules, reference);
  if (!result.ok) throw new Error(JSON.stringify(result.refusals));
  return `${lines.join("\n")}\n${rendered(result.resolution)}\n`;
}

// The wording is our own; there is no published source to hold it to. UPDATE=1 rewrites the texts, to be read before they are kept.
describe("what is said of a small bench", () => {
  it("is never rewritten on the build machine", () => {
    expect(isUpdating && Boolean(process.env.CI)).toBe(false);
  });

  it.each(Object.entries(cases))("%s", (name, lines) => {
    const text = spoken(lines);
    expect(text).not.toMatch(/undefined|NaN|\[object|\{\w+\}/);
    if (isUpdating && !process.env.CI) writeFileSync(golden(name), text);
    expect(existsSync(golden(name)), "no text is kept for this case").toBe(true);
    expect(text).toBe(readFileSync(golden(name), "utf8"));
  });

  it("is kept for these benches and no others", () => {
    const kept = readdirSync(new URL("golden/", import.meta.url));
    expect(kept.sort()).toEqual(
      Object.keys(cases)
        .map((name) => `${name}.txt`)
        .sort(),
    );
  });
});
