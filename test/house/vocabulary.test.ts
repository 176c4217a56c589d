import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { fields } from "@ferrule/core";
import { expect, it } from "vitest";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** The unit of a field by how its name ends; frequency is named by its unit alone. */
const unitOf: readonly (readonly [ending: RegExp, unit: string])[] = [
  [/In$/, "in"],
  [/G$/, "g"],
  [/Deg$/, "deg"],
  [/Cm3$/, "cm3"],
  [/^cpm$/, "cpm"],
];

it("ends the name of every numeric field of a part in its unit", () => {
  const wrong = Object.entries(fields).filter(([path, { unit }]) => {
    const name = path.split(".").at(-1) ?? "";
    return unitOf.find(([ending]) => ending.test(name))?.[1] !== unit;
  });
  expect(wrong.map(([path]) => path)).toEqual([]);
});

// Written in pieces, so that this file does not find itself. Place-holders are shouted: "todo" is Spanish for "all".
const placeHolder = new RegExp(`\\b(TO${"DO"}|FIX${"ME"})\\b`);
const forbidden = new RegExp(
  [
    "\\blo" + "rem\\b",
    "(^|[\\s\"'`(=])/(wo" + "rk|tm" + "p|ro" + "ot)/",
    "\\bregis" + "try\\.[a-z]+\\.[a-z]",
  ].join("|"),
  "im",
);

const isForbidden = (text: string) => placeHolder.test(text) || forbidden.test(text);

function filesUnder(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory())
      return /^(node_modules|dist|dist-page)$/.test(name) ? [] : filesUnder(path);
    return /\.(ts|mjs|cjs|js|json|css|html|svg|md|txt|yaml|yml|tsbuildinfo)$/.test(name) ? [path] : [];
  });
}

it("has no place-holder, no path of one machine and no host that packages come from in its files", () => {
  const files = ["packages", "data", "docs", "test", "scripts", "bench"].flatMap((name) =>
    filesUnder(join(root, name)),
  );
  expect(files.length).toBeGreaterThan(200);
  expect(
    files.filter((path) => isForbidden(readFileSync(path, "utf8"))).map((path) => relative(root, path)),
  ).toEqual([]);
});

it("would find each of them", () => {
  const samples = [
    "// TO" + "DO: later",
    "FIX" + "ME",
    "Lo" + "rem ipsum",
    '"/tm' + 'p/x"',
    "regis" + "try.example.org",
  ];
  expect(samples.filter((sample) => !isForbidden(sample))).toEqual([]);
  expect(isForbidden("a rule/work table, the root/stem of it, todo junto")).toBe(false);
});
