import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { commands } from "./commands.ts";
import { exitWords } from "./exit-code.ts";
import { commonOptions } from "./parse-given.ts";
import { ferrule } from "./terminal.test-kit.ts";

const page = readFileSync(new URL("../../../../docs/command-line.md", import.meta.url), "utf8");
const names = commands.map(({ name }) => name);

describe("the help", () => {
  it("names every command and every exit code", async () => {
    const { exit, out, err } = await ferrule(["help"]);
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    for (const name of names) expect(out).toMatch(new RegExp(`^  ${name} `, "m"));
    for (const [code, words] of exitWords)
      expect(out).toMatch(new RegExp(`^  ${code} +${words.slice(0, 12)}`, "m"));
  });

  it.each(commands)("of $name says its options, its exit codes and its examples", async (command) => {
    const { exit, out } = await ferrule(["help", command.name]);
    expect(exit).toBe(0);
    for (const option of Object.keys({ ...command.options, ...commonOptions }))
      expect(out).toContain(`--${option}`);
    for (const [code] of command.exits) expect(out).toMatch(new RegExp(`^  ${code}  `, "m"));
    for (const { line } of command.examples) expect(out).toContain(`  ${line}\n`);
    expect(command.examples.every(({ line }) => line.includes(`ferrule ${command.name}`))).toBe(true);
  });

  it.each([["--help"], ["-h"]])("is the same by %s", async (option) => {
    expect(await ferrule([option])).toEqual(await ferrule(["help"]));
    expect(await ferrule(["judge", "nothing.txt", option])).toEqual(await ferrule(["help", "judge"]));
    expect(await ferrule(["backup", option])).toEqual(await ferrule(["help", "backup"]));
  });

  it("keeps its prose within a narrow terminal", async () => {
    const { out } = await ferrule(["help"], { width: 60 });
    expect(out.split("\n").filter((line) => line.length > 60)).toEqual([]);
  });
});

describe("docs/command-line.md", () => {
  it.each(commands)("describes $name with every option", ({ name, options }) => {
    const [, section = ""] = page.split(`## ${name}\n`);
    const own = section.split("\n## ")[0] ?? "";
    const missing = Object.keys(options).filter((option) => !own.includes(`--${option}`));
    expect({ isThere: own !== "", missing }).toEqual({ isThere: true, missing: [] });
  });

  it("has every exit code", () => {
    const codes = [...page.matchAll(/^\| (\d+) \|/gm)].map(([, code]) => Number(code));
    expect(codes).toEqual(exitWords.map(([code]) => code));
  });
});
