import fc from "fast-check";
import { expect, it } from "vitest";
import { letterPx } from "./letter-px.ts";
import { placeAround } from "./place-around.ts";

const picture = { left: 0, right: 300, top: 0, bottom: 200 };

it("writes to the right of a point, and to the left where the right is the edge", () => {
  const [first, second] = placeAround(
    [
      { xPx: 100, yPx: 100, label: "here" },
      { xPx: 290, yPx: 50, label: "there" },
    ],
    picture,
  );
  expect(first).toMatchObject({ anchor: "start" });
  expect(second).toMatchObject({ anchor: "end" });
});

it("never writes one label over another or out of the picture; one that has no place has none", () => {
  const point = fc.record({
    xPx: fc.integer({ min: 5, max: 295 }),
    yPx: fc.integer({ min: 5, max: 195 }),
    label: fc.string({ minLength: 1, maxLength: 16 }),
  });
  fc.assert(
    fc.property(fc.array(point, { maxLength: 14 }), (points) => {
      const boxes = placeAround(points, picture).flatMap((place, at) => {
        if (!place) return [];
        const long = (points[at]?.label.length ?? 0) * letterPx;
        const left = place.xPx - { start: 0, middle: long / 2, end: long }[place.anchor];
        return [{ left, right: left + long, top: place.yPx - 10, bottom: place.yPx + 2 }];
      });
      for (const [at, one] of boxes.entries()) {
        expect(one.left >= 0 && one.right <= 300).toBe(true);
        for (const other of boxes.slice(at + 1))
          expect(
            one.right <= other.left ||
              other.right <= one.left ||
              one.bottom <= other.top ||
              other.bottom <= one.top,
          ).toBe(true);
      }
    }),
  );
});

it("leaves a label out where points crowd", () => {
  const crowd = Array.from({ length: 12 }, () => ({ xPx: 150, yPx: 100, label: "the same place" }));
  expect(placeAround(crowd, picture).filter((place) => place === undefined).length).toBeGreaterThan(0);
});
