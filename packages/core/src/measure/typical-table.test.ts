import { describe, expect, it } from "vitest";
import { fields } from "../parts/fields.ts";
import { shippedTypical } from "./club.test-kit.ts";

const conditions = (row: object) => JSON.stringify({ ...row, value: 0, plusMinus: 0, source: "" });

describe("data/reference/typical.json", () => {
  it("has one row for each field and set of conditions", () => {
    expect(new Set(shippedTypical.map(conditions)).size).toBe(shippedTypical.length);
  });

  it("names a source, or says that there is none, for every row", () => {
    expect(shippedTypical.length).toBeGreaterThan(50);
    for (const { source } of shippedTypical)
      expect(source).toMatch(
        /^from memory|^common practice, no source$|^derived|^arithmetic on|\.com|\.php|Hireko blog/,
      );
  });

  it("keeps every value within the believable range of its field", () => {
    let compared = 0;
    for (const { field, value } of shippedTypical) {
      const meaning = (fields as Record<string, { min: number; max: number }>)[field];
      if (meaning === undefined) continue;
      compared += 1;
      expect(value, field).toBeGreaterThanOrEqual(meaning.min);
      expect(value, field).toBeLessThanOrEqual(meaning.max);
    }
    expect(compared).toBeGreaterThan(50);
  });

  it("has no typical loft, for a loft is the club's own", () => {
    expect(shippedTypical.some(({ field }) => field === "loftDeg")).toBe(false);
  });

  // ralphmaltby.com, weight parameters: 254 g at the 5-iron and 7 g a club.
  it("steps iron heads by 7 g from 254 g at the 5-iron", () => {
    const irons = shippedTypical.filter(
      ({ field, clubType, clubNumber }) =>
        field === "massG" && clubType === "iron" && clubNumber !== undefined && clubNumber !== "PW",
    );
    expect(irons.length).toBe(8);
    for (const { clubNumber, value } of irons) expect(value).toBe(254 + 7 * (Number(clubNumber) - 5));
  });

  // tutelman.com/golf/design/lie2.php, table of usual lengths and lies about 2020.
  it.each([
    ["3", 60],
    ["4", 60.5],
    ["5", 61],
    ["6", 61.5],
  ])("stands a %s-iron at %f degrees", (clubNumber, lieDeg) => {
    expect(
      shippedTypical.find(
        (row) => row.field === "lieDeg" && row.clubType === "iron" && row.clubNumber === clubNumber,
      )?.value,
    ).toBe(lieDeg);
  });
});
