import fc from "fast-check";
import { expect, it } from "vitest";
import { placeLines } from "./dimension-lines.ts";
import { letterPx } from "./letter-px.ts";

it("puts the label between the arrows where it has room, else on a side that has it", () => {
  const [wide, left, right] = placeLines(
    [
      { fromPx: 0, toPx: 300, label: "wide" },
      { fromPx: 280, toPx: 290, label: "at the right" },
      { fromPx: 2, toPx: 12, label: "at the left" },
    ],
    300,
  );
  expect(wide).toMatchObject({ anchor: "middle", labelPx: 150 });
  expect(left).toMatchObject({ anchor: "end", labelPx: 272 });
  expect(right).toMatchObject({ anchor: "start", labelPx: 20 });
});

it("never lets two measures of a row meet, nor a label leave the picture, on a phone as on a wide screen", () => {
  const line = fc.tuple(
    fc.integer({ min: 0, max: 300 }),
    fc.integer({ min: 1, max: 300 }),
    fc.integer({ min: 3, max: 26 }),
  );
  fc.assert(
    fc.property(fc.array(line, { maxLength: 9 }), fc.integer({ min: 296, max: 1200 }), (raw, widthPx) => {
      const lines = raw.map(([from, long, letters]) => ({
        fromPx: Math.min(from, widthPx - 2),
        toPx: Math.min(from + long, widthPx),
        label: "x".repeat(letters),
      }));
      const places = placeLines(lines, widthPx);
      for (const [at, one] of places.entries()) {
        expect(one.span[0]).toBeGreaterThanOrEqual(0);
        expect(one.span[1]).toBeLessThanOrEqual(widthPx);
        for (const other of places.slice(at + 1))
          if (one.row === other.row)
            expect(one.span[1] <= other.span[0] || other.span[1] <= one.span[0]).toBe(true);
        const longPx = (lines[at]?.label.length ?? 0) * letterPx;
        expect(one.span[1] - one.span[0]).toBeGreaterThanOrEqual(longPx);
      }
    }),
  );
});
