import { expect, it } from "vitest";
import { convertedMinor } from "./converted.ts";

it.each([
  [1234, "EUR", 1234],
  [1000, "USD", 900],
  // 0.5 is rounded away from zero.
  [5, "USD", 5],
  // A currency without minor units: 100 yen at 0.006 are 60 cents.
  [100, "JPY", 60],
  [1000, "GBP", undefined],
])("puts %d of %s into the bench's currency as %s", (amountMinor, currency, expected) => {
  const costs = { currency: "EUR", rates: { USD: 0.9, JPY: 0.006 } };
  expect(convertedMinor({ amountMinor, currency }, costs)).toBe(expected);
});
