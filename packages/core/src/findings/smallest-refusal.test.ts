import { expect, it } from "vitest";
import { doesNotFit, fits, unsettled } from "./outcome.ts";
import { smallestRefusal } from "./smallest-refusal.ts";

interface Facts {
  readonly a?: number;
  readonly b?: number;
  readonly c?: number;
}

const refusesOnTwo = ({ a, b, c }: Facts) =>
  [a, b, c].filter((value) => value === 1).length >= 2
    ? doesNotFit("two", ["a", "b", "c"])
    : unsettled("fewer", "a");

it("names only facts without which nothing is refused", () => {
  expect(smallestRefusal(refusesOnTwo, { a: 1, b: 1, c: 1 }).because).toEqual(["b", "c"]);
});

it("keeps the facts it may not leave out", () => {
  expect(smallestRefusal(refusesOnTwo, { a: 1, b: 1, c: 1 }, ["a"]).because).toEqual(["a", "c"]);
});

it("passes any other outcome unchanged", () => {
  expect(smallestRefusal(() => fits("fine"), { a: 1 })).toEqual(fits("fine"));
});
