import { expect, it } from "vitest";
import { formBySize } from "./form-by-size.ts";

// 0.355 taper and 0.370 parallel: marathonsportsagency.blog, 2024-12-09. 0.354 in measured in a 0.350 in bore: greenlanterngolf.com.
it.each([
  { diameterIn: 0.335, form: "parallel" },
  { diameterIn: 0.35, form: "parallel" },
  { diameterIn: 0.354, form: undefined },
  { diameterIn: 0.355, form: "taper" },
  { diameterIn: 0.359, form: "taper" },
  { diameterIn: 0.37, form: "parallel" },
  { diameterIn: 0.294, form: undefined },
])("takes $diameterIn in to be $form", ({ diameterIn, form }) => {
  expect(formBySize({ value: diameterIn, plusMinus: 0.0005, source: "measured" })).toBe(form);
});

it("says nothing of a size nobody has read", () => {
  expect(formBySize(undefined)).toBeUndefined();
});
