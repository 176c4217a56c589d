import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** A name that a door lets out, and the text it is declared in. */
interface Export {
  readonly name: string;
  readonly file: string;
  readonly text: string;
}

const passedOn = /^export (?:type )?\{([^}]*)\} from "(\.[^"]+)";$/gm;
const declared = /^export (?:async )?(?:function\*?|const|interface|type|class) (\w+)/gm;
const comment = /\/\*(?:(?!\*\/)[\s\S])*\*\//g;

/** What a door passes on from other files, by the name it has there. */
function passedOnBy(door: string): Export[] {
  const from = (file: string) => join(dirname(door), file);
  return [...read(door).matchAll(passedOn)].flatMap(([, names = "", file = ""]) => {
    const text = read(from(file));
    return namesIn(names).map((name) => ({ name, file: from(file), text }));
  });
}

function declaredIn(file: string): Export[] {
  const text = read(file);
  return [...text.matchAll(declared)].map(([, name = ""]) => ({ name, file, text }));
}

function namesIn(list: string): string[] {
  const entries = list.split(",").map((entry) => entry.trim());
  return entries.filter((entry) => entry !== "").map((entry) => entry.replace(/^type | as \w+$/g, ""));
}

function read(file: string): string {
  return readFileSync(join(root, file), "utf8");
}

/** The docstring that stands directly before a declaration, without its stars; `undefined` where there is none. */
function docstringOf(name: string, text: string): string | undefined {
  const declaration = new RegExp(
    `^/\\*\\*((?:(?!\\*/)[\\s\\S])*)\\*/\\nexport (?:async )?(?:function\\*?|const|interface|type|class) ${name}\\b`,
    "m",
  );
  return declaration
    .exec(text)?.[1]
    ?.replace(/^ \* ?/gm, "")
    .trim();
}

/** A line or two can hardly say anything in fewer words. */
const fewestWords = 4;

function withoutDocstring(exports: readonly Export[]): string[] {
  const says = ({ name, text }: Export) => (docstringOf(name, text)?.split(/\s+/).length ?? 0) >= fewestWords;
  return exports.filter((each) => !says(each)).map(({ name, file }) => `${name} of ${file}`);
}

describe("the public door of core", () => {
  const door = "packages/core/src/index.ts";
  const exports = passedOnBy(door);

  it("lets nothing out that has no docstring directly before its declaration", () => {
    expect(exports.length).toBeGreaterThan(250);
    expect(withoutDocstring(exports)).toEqual([]);
  });

  it("only passes on names of its own files, so that every one of them was looked at", () => {
    expect(read(door).replace(comment, "").replace(passedOn, "").trim()).toBe("");
  });
});

describe("the public door of the server", () => {
  const door = "packages/server/src/app.ts";

  it("lets nothing out that has no docstring directly before its declaration", () => {
    const own = declaredIn(door);
    expect(own.map(({ name }) => name)).toContain("buildApp");
    const kept =
      read(door)
        .replace(passedOn, "")
        .match(/^export\b/gm) ?? [];
    expect(own.length).toBe(kept.length);
    expect(withoutDocstring([...passedOnBy(door), ...own])).toEqual([]);
  });
});

describe("looking for a docstring", () => {
  const doc = "/** What a thing weighs, in grams. */";
  const told = `${doc}\nexport const massG = 1;\n`;

  it("finds one of one line and one of several", () => {
    expect(docstringOf("massG", told)).toBe("What a thing weighs, in grams.");
    const several = "/**\n * What a thing\n * weighs.\n */\nexport async function weigh() {}\n";
    expect(docstringOf("weigh", several)).toBe("What a thing\nweighs.");
  });

  it.each([
    ["before another declaration", `${told}export const lengthIn = 2;\n`],
    ["apart by an empty line", `${doc}\n\nexport const lengthIn = 2;\n`],
    ["with one star only", `${doc.replace("/**", "/*")}\nexport const lengthIn = 2;\n`],
    ["before a longer name", `${doc}\nexport const lengthInAll = 2;\n`],
  ])("takes none that stands %s", (_where, text) => {
    expect(docstringOf("lengthIn", text)).toBeUndefined();
    expect(withoutDocstring([{ name: "lengthIn", file: "made-up.ts", text }])).toEqual([
      "lengthIn of made-up.ts",
    ]);
  });
});
