import { describe, expect, it } from "vitest";
import { settingText, settingValueText } from "./setting-words.ts";

describe("a setting in words", () => {
  it.each([
    ["costs.hourValueMinor", "An hour of yours is worth"],
    ["goal.targets.driver.playingLengthIn", "Driver: playing length (in)"],
    ["costs.rates.EUR", "Rates of currencies: EUR"],
    ["costs.parcels.club.massG", "Parcels: club, massG"],
    ["labels.widthMm", "Labels: widthMm"],
    ["other", "other"],
  ])("%s is called %s", (path, text) => expect(settingText(path)).toBe(text));

  it.each<[string, unknown, string]>([
    ["costs.hourValueMinor", 1100, "£11.00"],
    [
      "costs.feeTables",
      [{ name: "an auction site" }, { name: "own counter" }],
      "an auction site, own counter",
    ],
    ["costs.buyerPaysPostage", true, "yes"],
    ["costs.deadlineWeeks", null, "not set"],
    ["goal.targets.driver.swingWeightPoints", 32, "D2.0"],
    ["goal.targets", { driver: { playingLengthIn: 45.25, swingWeightPoints: 32 } }, "Driver 45.25 in D2.0"],
    ["display.lengthUnit", "cm", "cm"],
  ])("%s as %j is %s", (path, value, text) => expect(settingValueText(path, value, "GBP")).toBe(text));
});
