import { execFile } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../../", import.meta.url));
const run = promisify(execFile);

/** The other half of a cycle; of a cycle, the guard names one file. */
const halfCycle = ["findings/round-b.ts", 'export { a as b } from "./round-a.ts";'] as const;

/** Files that break one rule of the layers each, and the name of that rule. */
const bad = [
  ["rules/reads-another.ts", 'export { sameHand } from "./same-hand.ts";', "rules-stand-alone"],
  ["parts/looks-up.ts", 'export { places } from "../graph/shape.ts";', "core-parts-looks-down"],
  ["measure/reads-a-file.ts", 'export { readFileSync } from "node:fs";', "core-touches-no-system"],
  ["findings/round-a.ts", 'export { b as a } from "./round-b.ts";', "no-cycles"],
  ["resolve/knows-a-rule.ts", 'export { rules } from "../rules/index.ts";', "rules-come-as-an-argument"],
  ["listing/knows-worth.ts", 'export { ways } from "../worth/deal.ts";', "core-listing-sees-parts-and-money"],
  ["resolve/reads.ts", 'export { intents } from "../listing/listing.ts";', "core-resolve-looks-down"],
  ["worth/searches.ts", 'export { default as search } from "fuse.js";', "core-needs-only-zod-and-fuse"],
] as const;

// That the tree itself has no violation is the step "layers" of npm test; here the guard is put to the test.
describe("the layers", () => {
  let copy = "";
  let violations: { from: string; rule: { name: string } }[] = [];

  beforeAll(async () => {
    copy = mkdtempSync(join(tmpdir(), "ferrule-layers-"));
    for (const name of ["packages/core", ".dependency-cruiser.cjs", "package.json", "tsconfig.base.json"]) {
      cpSync(join(root, name), join(copy, name), {
        recursive: true,
        filter: (from) => !/[\\/](node_modules|dist)$/.test(from),
      });
    }
    symlinkSync(join(root, "node_modules"), join(copy, "node_modules"));
    symlinkSync(join(root, "packages/core/node_modules"), join(copy, "packages/core/node_modules"));
    for (const [name, code] of [...bad, halfCycle])
      writeFileSync(join(copy, "packages/core/src", name), `${code}\n`);
    const command = join(root, "node_modules/dependency-cruiser/bin/dependency-cruise.mjs");
    const options = ["packages/core/src", "--config", ".dependency-cruiser.cjs", "--output-type", "json"];
    const { stdout } = await run(process.execPath, [command, ...options], {
      cwd: copy,
      maxBuffer: 1e8,
    }).catch((failed: { stdout: string }) => failed);
    violations = JSON.parse(stdout).summary.violations;
  });

  afterAll(() => rmSync(copy, { recursive: true }));

  it.each(bad)("refuses %s", (name, _code, rule) => {
    const names = violations.filter(({ from }) => from.endsWith(`src/${name}`)).map((each) => each.rule.name);
    expect(names).toContain(rule);
  });

  it("refuses nothing else", () => {
    const others = violations.filter(({ from }) => !bad.some(([name]) => from.endsWith(`src/${name}`)));
    expect(others.map(({ from, rule }) => `${from} ${rule.name}`)).toEqual([]);
  });
});

describe("core", () => {
  const source = join(root, "packages/core/src");
  const files = (readdirSync(source, { recursive: true }) as string[]).filter(
    (name) => name.endsWith(".ts") && !/\.test(-kit)?\.ts$/.test(name),
  );

  it("imports nothing but its own files and zod, and fuse.js where models are found", () => {
    const imported = files.flatMap((name) =>
      [...readFileSync(join(source, name), "utf8").matchAll(/\bfrom "([^"]+)"/g)].map(
        ([, from]) => [name, from ?? ""] as const,
      ),
    );
    expect(imported.length).toBeGreaterThan(100);
    const packages = imported.filter(([, from]) => !from.startsWith("."));
    expect(packages.filter(([, from]) => from !== "zod")).toEqual([
      [join("listing", "find-model.ts"), "fuse.js"],
    ]);
  });

  it("reads no clock, no chance and no surroundings", () => {
    const impure = /\b(Date\.now|new Date\(\)|Math\.random|process\.|globalThis|console\.)/;
    expect(files.filter((name) => impure.test(readFileSync(join(source, name), "utf8")))).toEqual([]);
  });
});
