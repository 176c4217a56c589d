import { describe, expect, it } from "vitest";
import { figuresOrWords, numberOf } from "./number-words.ts";

function numbersIn(plain: string): number[] {
  return Array.from(plain.matchAll(new RegExp(figuresOrWords, "g")), ([words]) => numberOf(words));
}

describe("numbers as sellers write them", () => {
  it.each<[string, number[]]>([
    ["44", [44]],
    ["44.5", [44.5]],
    ["44,5", [44.5]],
    ["44.25", [44.25]],
    ["44 1/2", [44.5]],
    ["44-1/2", [44.5]],
    ["44 3/4", [44.75]],
    ["44 and 3/4", [44.75]],
    ["44 & 1/2", [44.5]],
    ["44½", [44.5]],
    ["44 ½", [44.5]],
    ["43⅞", [43.875]],
    ["44 and a half", [44.5]],
    ["44 and three quarters", [44.75]],
    ["forty five", [45]],
    ["forty-five", [45]],
    ["fourty four and a half", [44.5]],
    ["nine", [9]],
    ["ten and a half", [10.5]],
    ["fourteen", [14]],
    ["thirty-six", [36]],
    ["9, 10 and 12", [9, 10, 12]],
    ["1130", [1130]],
  ])("%s is %j", (plain, values) => expect(numbersIn(plain)).toEqual(values));

  it.each(["07700900123", "1.2.3", "1/2", "often", "bone"])("%s is no number", (plain) =>
    expect(numbersIn(plain)).toEqual([]),
  );
});
