import { describe, expect, it } from "vitest";
import { intervalText, lengthIntervalText, swingWeightIntervalText } from "./interval.ts";
import { diameterText, fractionText, lengthText } from "./length.ts";
import { moneyInput, moneyIntervalText, moneyText, parseMoney } from "./money.ts";
import { parseLength } from "./parse-length.ts";
import { parseNumber } from "./parse-number.ts";
import { parseSwingWeight, swingWeightText } from "./swing-weight.ts";
import { daysText, weeksText } from "./time-span.ts";
import { dayText } from "./today.ts";
import { writtenText } from "./written-reading.ts";

// An inch is 25.4 mm exactly (international yard and pound agreement, 1959); the rest is our own way of writing.

describe("a length", () => {
  it.each([
    [45.25, "45 1/4"],
    [44, "44"],
    [0.84375, "27/32"],
    [45.999, "46"],
    [-0.5, "−1/2"],
    [0.01, "0"],
  ])("of %d in is %s to the nearest 1/32", (valueIn, text) => {
    expect(fractionText(valueIn)).toBe(text);
  });

  it("is said in inches with its fraction, or in centimetres", () => {
    expect(lengthText(45.25, "in")).toBe("45.25 in (45 1/4)");
    expect(lengthText(45, "in")).toBe("45 in");
    expect(lengthText(45, "cm")).toBe("114.3 cm");
  });

  it("of a tip keeps the trade's size, with millimetres for those who read centimetres", () => {
    expect(diameterText(0.335, "in")).toBe(".335 in");
    expect(diameterText(0.37, "cm")).toBe(".37 in (9.4 mm)");
  });

  it.each([
    ["45 1/4", 45.25],
    ["45-1/4", 45.25],
    ["45,25", 45.25],
    [".335", 0.335],
    ["27/32", 0.84375],
    ['44 1/2"', 44.5],
    ["114.3 cm", 45],
    ["8.509 mm", 0.335],
    ["-1/2", -0.5],
  ])("typed as %s is %d in", (text, valueIn) => {
    expect(parseLength(text, "in")).toBe(valueIn);
  });

  it("typed without a unit is in the user's own", () => {
    expect(parseLength("114.3", "cm")).toBe(45);
  });

  it.each(["", "long", "45 1/0", "45 in 3", "4 5", "1/2/3"])("typed as “%s” is none", (text) => {
    expect(parseLength(text, "in")).toBeUndefined();
  });
});

describe("an interval", () => {
  it("shows as many decimals as its width bears", () => {
    expect(lengthIntervalText({ value: 45.2049, low: 45.005, high: 45.405 }, "in")).toBe(
      "45.2 in (45.0–45.4)",
    );
    expect(lengthIntervalText({ value: 45, low: 44.8, high: 45.2 }, "cm")).toBe("114.3 cm (113.8–114.8)");
    expect(intervalText({ value: 320.2, low: 314.9, high: 325.6 }, "g", 1)).toBe("320 g (315–326)");
    expect(intervalText({ value: 10.5, low: 9.3, high: 11.7 }, "°", 1)).toBe("10.5° (9.3–11.7)");
  });

  it("around nothing is a single figure, and below zero it is spelled out", () => {
    expect(intervalText({ value: 3, low: 3, high: 3 }, "g", 0)).toBe("3 g");
    expect(intervalText({ value: 0, low: -1.2, high: 1.2 }, "°", 1)).toBe("0.0° (−1.2 to 1.2)");
  });

  it("of a swing weight is said in labels, D0 being 30 points", () => {
    expect(swingWeightIntervalText({ points: 32.3, low: 29.9, high: 34.7 })).toBe("D2.3 (C9.9–D4.7)");
  });
});

describe("a swing weight", () => {
  it("carries into the next letter when rounding reaches it", () => {
    expect(swingWeightText(29.96)).toBe("D0.0");
  });

  it("beyond the letters is a count of points", () => {
    expect(swingWeightText(-3)).toBe("−3.0 points");
  });

  it.each([
    ["D2", 32],
    ["c9.5", 29.5],
    ["D 0", 30],
    ["H1", undefined],
    ["D12", undefined],
    ["2", undefined],
  ])("typed as %s is %s points", (text, points) => {
    expect(parseSwingWeight(text)).toBe(points);
  });
});

describe("money", () => {
  it("is said with the sign of its currency", () => {
    expect(moneyText(2800, "EUR")).toBe("€28.00");
    expect(moneyText(2850, "GBP")).toBe("£28.50");
    expect(moneyText(5, "USD")).toBe("$0.05");
    expect(moneyText(-500, "EUR")).toBe("−€5.00");
  });

  // ISO 4217: the yen has no minor unit.
  it("keeps to the decimals of its currency", () => {
    expect(moneyText(1200, "JPY")).toBe("¥1,200");
    expect(parseMoney("1200", "JPY")).toBe(1200);
    expect(parseMoney("1200.5", "JPY")).toBeUndefined();
    expect(moneyInput(4550, "EUR")).toBe("45.50");
    expect(moneyInput(1200, "JPY")).toBe("1200");
  });

  it("between two ends is said in whole units once the ends lie ten apart", () => {
    expect(moneyIntervalText({ valueMinor: 4520, lowMinor: 3010, highMinor: 6080 }, "EUR")).toBe(
      "€45 (€30–€61)",
    );
    expect(moneyIntervalText({ valueMinor: 450, lowMinor: 400, highMinor: 510 }, "EUR")).toBe(
      "€4.50 (€4.00–€5.10)",
    );
    expect(moneyIntervalText({ valueMinor: 1000, lowMinor: -1500, highMinor: 3500 }, "EUR")).toBe(
      "€10 (−€15 to €35)",
    );
  });

  it.each([
    ["28", 2800],
    ["28.5", 2850],
    ["€ 28,50", 2850],
    ["45,50", 4550],
    ["45.50 €", 4550],
    ["1,250", undefined],
    ["28.505", undefined],
    ["much", undefined],
  ])("typed as %s is %s in minor units", (text, amountMinor) => {
    expect(parseMoney(text)).toBe(amountMinor);
  });
});

describe("a number", () => {
  it("is read with a point or a comma, and nothing else is read as one", () => {
    expect(parseNumber("199,5")).toBe(199.5);
    expect(parseNumber("−3")).toBe(-3);
    expect(parseNumber("1e3")).toBeUndefined();
    expect(parseNumber("")).toBeUndefined();
  });
});

describe("a reading", () => {
  it("is said in its field's unit with its plus-minus, and is nothing where there is none", () => {
    expect(writtenText("massG", { value: 198, plusMinus: 2, source: "stated" }, "in")).toBe("198 g ± 2");
    expect(writtenText("length.lengthIn", 45.25, "cm")).toBe("114.9 cm");
    expect(writtenText("tip.diameterIn", { value: 0.335 }, "in")).toBe(".335 in");
    expect(writtenText("massG", undefined, "in")).toBeUndefined();
  });
});

describe("a time", () => {
  it("is a day by the clock on the wall, or a count of days or weeks", () => {
    expect(dayText(new Date(2026, 0, 5, 23, 59))).toBe("2026-01-05");
    expect(daysText({ value: 20.4, low: 6, high: 60 })).toBe("20 days (6–60)");
    expect(daysText({ value: 3, low: 3, high: 3 })).toBe("3 days");
    expect(weeksText(1)).toBe("1 week");
    expect(weeksText(8.21)).toBe("8.2 weeks");
    expect(weeksText(23.4)).toBe("23 weeks");
  });
});
