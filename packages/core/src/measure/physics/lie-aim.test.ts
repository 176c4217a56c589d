import { expect, test } from "vitest";
import { lieAim } from "./lie-aim.ts";

test("no loft or no lie error means no error of aim, and the error changes sign with the lie", () => {
  expect(lieAim({ loftDeg: 0, lieErrorDeg: 3 })).toBe(0);
  expect(lieAim({ loftDeg: 46, lieErrorDeg: 0 })).toBe(0);
  expect(lieAim({ loftDeg: 46, lieErrorDeg: -1 })).toBeCloseTo(-lieAim({ loftDeg: 46, lieErrorDeg: 1 }), 12);
});
