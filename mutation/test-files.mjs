import { readdirSync } from "node:fs";
import { join } from "node:path";

/** The tests that mutants have to get past: those of core that are quick enough to be run thousands of times. */
const folders = [
  ...["rules", "measure", "worth", "plan", "findings", "graph", "sheet"].map(
    (name) => `packages/core/src/${name}`,
  ),
  "test/explain",
  "test/reference",
];

/** Draws so many numbers that a mutant which never ends would be noticed only after minutes. */
const tooLong = ["propagation-against-drawing.test.ts"];

/** Their paths, from the root of the checkout. */
export function testFiles(root) {
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true })
      .filter((name) => name.endsWith(".test.ts") && !tooLong.includes(name))
      .sort()
      .map((name) => join(folder, name)),
  );
}
