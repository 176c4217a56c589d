import { describe, expect, it } from "vitest";
import { qrPath } from "./qr-path.ts";

/** Which modules are dark, from the squares of the path. */
function darkOf(path: string): ReadonlySet<string> {
  return new Set([...path.matchAll(/M(\d+) (\d+)h1v1h-1z/g)].map(([, x, y]) => `${x} ${y}`));
}

// ISO/IEC 18004: version 1 has 21 modules a side and version 3 has 29, four modules around it stay light (5.3.8), and three
// corners have a finder pattern of 7 × 7: a dark frame, a light one, and 3 × 3 dark (5.3.2).
describe("a code to scan", () => {
  it.each([
    ["7K2QX", 21],
    ["https://192.168.1.20:4311/code/7K2QX", 29],
  ])("of %s has %i modules a side and the quiet zone around them", (text, modules) => {
    const { size, path } = qrPath(text);
    const dark = [...darkOf(path)].map((at) => at.split(" ").map(Number));
    expect(size).toBe(modules + 8);
    expect(dark.length).toBeGreaterThan(100);
    expect(Math.min(...dark.flat())).toBe(4);
    expect(Math.max(...dark.flat())).toBe(modules + 3);
  });

  it("has a finder pattern in three corners", () => {
    const { size, path } = qrPath("7K2QX");
    const dark = darkOf(path);
    const far = size - 4 - 7;
    for (const [left, top] of [
      [4, 4],
      [far, 4],
      [4, far],
    ] as const)
      for (let y = 0; y < 7; y += 1)
        for (let x = 0; x < 7; x += 1) {
          const ring = Math.max(Math.abs(x - 3), Math.abs(y - 3));
          expect(dark.has(`${left + x} ${top + y}`), `${left + x} ${top + y}`).toBe(ring !== 2);
        }
  });
});
