import { existsSync, readdirSync, readFileSync } from "node:fs";
import { type Rule, rules } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { plainFormats } from "../../packages/core/src/explain/plain-teller.ts";
import { joinKinds } from "../../packages/core/src/graph/shape.ts";
import { fields } from "../../packages/core/src/parts/fields.ts";
import { reference } from "../reference-tables.ts";

const root = new URL("../../", import.meta.url);
const source = new URL("packages/core/src/rules/", root);
const pages = new URL("docs/rules/", root);
const text = (name: string, folder: URL) => readFileSync(new URL(name, folder), "utf8");

const generator: {
  rulePageHead: (rule: Rule, core: { fields: typeof fields; plainFormats: typeof plainFormats }) => string;
  ruleIndexTable: (rules: readonly Rule[]) => string;
  withGenerated: (page: string, generated: string) => string;
} = await import(new URL("scripts/rule-pages.mjs", root).href);

const apart = ["index.ts", "rule.ts"];
const ruleFiles = readdirSync(source).filter(
  (name) => name.endsWith(".ts") && !/\.test(-kit)?\.ts$/.test(name) && !apart.includes(name),
);
const ids = rules.map(({ id }) => id);

/** The lines under a heading, up to the next one, without the empty ones. */
function linesUnder(heading: string, page: string): string[] {
  const [, rest = ""] = page.split(`\n${heading}\n`);
  const [body = ""] = rest.split(/\n## /);
  return body.split("\n").filter((line) => line.trim() !== "");
}

describe("the rules", () => {
  it("are the files of the folder, each by its own name and with its own test", () => {
    expect([...ids].sort()).toEqual(ruleFiles.map((name) => name.replace(/\.ts$/, "")).sort());
    expect(ids.filter((id) => !text(`${id}.ts`, source).includes(`id: "${id}"`))).toEqual([]);
    expect(ids.filter((id) => !existsSync(new URL(`${id}.test.ts`, source)))).toEqual([]);
  });

  it("say where they come from", () => {
    expect(rules.filter(({ source }) => source.title.trim() === "").map(({ id }) => id)).toEqual([]);
  });

  it("ask in whole sentences", () => {
    const questions = rules.flatMap(({ id, ask }) =>
      Object.entries(ask).map(([name, words]) => ({ id, name, words })),
    );
    expect(questions.filter(({ words }) => !/^[A-Z].*[.?]$/.test(words))).toEqual([]);
  });
});

describe("the pages of the rules", () => {
  it("are one for each rule and the index", () => {
    const names = readdirSync(pages).filter((name) => name !== "README.md");
    expect(names.sort()).toEqual(ids.map((id) => `${id}.md`).sort());
  });

  it.each(ids)("%s says why, and when it is wrong", (id) => {
    const page = text(`${id}.md`, pages);
    expect(page.startsWith(`# ${id}\n`)).toBe(true);
    expect(linesUnder("## Why", page).length).toBeGreaterThanOrEqual(3);
    expect(linesUnder("## When this rule is wrong", page).length).toBeGreaterThanOrEqual(3);
  });

  it.each(rules.map((rule) => [rule.id, rule] as const))(
    "%s is up to date with its rule (npm run docs)",
    (id, rule) => {
      const page = text(`${id}.md`, pages);
      const head = generator.rulePageHead(rule, { fields, plainFormats });
      expect(head).not.toMatch(/undefined|NaN|\[object/);
      // Once its old head is taken out, a page takes the new one and is the page as it stands.
      const bare = page.replace(/(<!-- generated -->)[\s\S]*(<!-- \/generated -->)/, "$1\n$2");
      expect(generator.withGenerated(bare, head)).toBe(page);
    },
  );

  it("are listed in the order of judging", () => {
    expect(text("README.md", pages)).toContain(`\n${generator.ruleIndexTable(rules)}\n`);
  });
});

describe("the work that rules and joints ask for", () => {
  const asked = ruleFiles.flatMap((name) => {
    const code = text(name, source);
    const chosen = [...code.matchAll(/\bconst step = ([^;]*);/g)].flatMap(([, choice = ""]) => [
      ...choice.matchAll(/"([a-z-]+)"/g),
    ]);
    return [...code.matchAll(/\bstep: "([a-z-]+)"/g), ...chosen].map(([, step = ""]) => step);
  });
  const reached = new Set([...asked, ...joinKinds.flatMap(({ make, undo }) => [make, undo])]);
  const rows = reference.work.map(({ step }) => step);

  it("has a row in the work table", () => {
    expect(asked.length).toBeGreaterThan(8);
    expect([...reached].filter((step) => !rows.includes(step))).toEqual([]);
  });

  it("has a row for every caution", () => {
    const known = reference.cautions.map(({ code }) => code);
    const named = reference.work.flatMap(({ cautions }) => cautions);
    expect(named.filter((code) => !known.includes(code))).toEqual([]);
  });

  it("reaches every row, but for those that the index of the rules names", () => {
    const named = linesUnder("## Steps that nothing asks for", text("README.md", pages)).join(" ");
    const listed = [...named.matchAll(/`([a-z-]+)`/g)].map(([, step]) => step);
    expect(rows.filter((step) => !reached.has(step)).sort()).toEqual(listed.sort());
  });
});
