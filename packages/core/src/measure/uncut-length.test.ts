import { expect, test } from "vitest";
import type { Reading } from "../parts/reading.ts";
import { missingLengthFact, uncutLengthIn, uncutLengthInterval, vaguestLengthFact } from "./uncut-length.ts";

const reading = (value: number, plusMinus = 0): Reading => ({ value, plusMinus, source: "measured" });

test("a 42 in shaft over a bottom of bore of 1 in makes a 43 in club (tutelman.com/golf/design/flex4.php)", () => {
  expect(uncutLengthIn({ aloneLengthIn: reading(42), bbgmIn: reading(1), capThicknessIn: reading(0) })).toBe(
    43,
  );
});

test("a head with a quarter of an inch more under its bore makes the club that much longer (Hireko blog 2011-01 BBGM)", () => {
  const club = { aloneLengthIn: reading(44), capThicknessIn: reading(0.125) };
  const shorter = uncutLengthIn({ ...club, bbgmIn: reading(1.25) });
  expect(uncutLengthIn({ ...club, bbgmIn: reading(1.5) })).toBe((shorter ?? 0) + 0.25);
});

test("independent uncertainties add in squares (JCGM 100:2008 eq. 10)", () => {
  const facts = { aloneLengthIn: reading(44, 0.3), bbgmIn: reading(1, 0.4), capThicknessIn: reading(0) };
  const { low, high } = uncutLengthInterval(facts);
  expect(high - low).toBeCloseTo(2 * 1.96 * 0.5, 12);
});

test("a missing reading leaves the length unknown and the interval as wide as the field allows", () => {
  const facts = { aloneLengthIn: reading(44), bbgmIn: reading(1) };
  expect(uncutLengthIn(facts)).toBeUndefined();
  expect(missingLengthFact(facts)).toBe("capThicknessIn");
  expect(uncutLengthInterval(facts)).toEqual({ low: 45, high: 46 });
});

test("the vaguest reading is the one with the widest uncertainty, and a missing one before any", () => {
  expect(
    vaguestLengthFact({
      aloneLengthIn: reading(44, 0.1),
      bbgmIn: reading(1, 0.2),
      capThicknessIn: reading(0),
    }),
  ).toBe("bbgmIn");
  expect(vaguestLengthFact({ aloneLengthIn: reading(44, 0.1), bbgmIn: reading(1, 0.2) })).toBe(
    "capThicknessIn",
  );
});
