import { describe, expect, it } from "vitest";
import { followDenial } from "./denial.ts";

describe("followDenial", () => {
  it.each([
    ["no rust", true],
    ["free of rust", true],
    ["not a spot of rust", true],
    ["without any visible rust", true],
    ["doesn't have any rust", true],
    ["no marks or rust", true],
    ["no marks, chips or rust", true],
    ["keine rust", true],
    ["aucune trace de rust", true],
    ["no marks, one spot of rust", false],
    ["no marks but rust", false],
    ["no marks. rust", false],
    ["no shaft, rust", false],
    ["no\nrust", false],
    ["lots of rust", false],
    ["rust", false],
  ])("in %j the rust is denied: %s", (plain, denied) =>
    expect(followDenial(plain).isDenied(plain.indexOf("rust"))).toBe(denied),
  );

  it("denies what is joined to something denied, unless it is counted", () => {
    const plain = "no zigzag, rust and a dent";
    const { isDenied, deny } = followDenial(plain);
    expect(isDenied(3)).toBe(true);
    deny(9);
    expect(isDenied(11)).toBe(true);
    deny(15);
    expect(isDenied(22)).toBe(false);
  });
});
