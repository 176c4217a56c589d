import { describe, expect, it } from "vitest";
import { readLoft } from "./read-loft.ts";
import { checkReader } from "./read-table.test-kit.ts";
import { prepareWords } from "./words.ts";

checkReader(readLoft, [
  ["10.5°", "10.5 = 10.5"],
  ["10.5º RH", "10.5 = 10.5"],
  ["10,5 Grad", "10,5 = 10.5"],
  ["9 deg", "9 = 9"],
  ["9deg.", "9 = 9"],
  ["12*", "12 = 12"],
  ["56* wedge", "56 = 56"],
  ["9.5 degrees", "9.5 = 9.5"],
  ["9.5 degress", "9.5 = 9.5"],
  ["10-degree driver", "10 = 10"],
  ["10½°", "10½ = 10.5"],
  ["18½° RH 42½″", "18½ = 18.5"],
  ["10 1/2 degree", "10 1/2 = 10.5"],
  ["10½ driver", "10½ = 10.5"],
  ["nine degree driver", "nine = 9"],
  ["ten and a half degrees", "ten and a half = 10.5"],
  ["loft: 12", "12 = 12"],
  ["loft 9", "9 = 9"],
  ["loft of 10.5", "10.5 = 10.5"],
  ["12 loft", "12 = 12"],
  ["10,5° degrés", "10,5 = 10.5"],
  ["10.5 grados", "10.5 = 10.5"],
  ["10.5 graden", "10.5 = 10.5"],
  ["driver head only 10.5 RH", "10.5 = 10.5"],
  ["driver head 9.0, RH", "9.0 = 9"],
  ["3 wood 16.5 stiff", "16.5 = 16.5"],
  ["9° (adjustable 7-11)", "9 = 9"],
  ["56 wedge", "56 = 56"],
  ["60° lob", "60 = 60"],
  ["wedge 56, RH", "56 = 56"],
  ["52/56/60 wedges", "52 = 52", "56 = 56", "60 = 60"],
  ["wedges 52, 56 and 60", "52 = 52", "56 = 56", "60 = 60"],
  ["56° 10 bounce", "56 = 56"],
  ["one 9 deg, one 10.5 deg", "9 = 9", "10.5 = 10.5"],
  ["9-12 adjustable"],
  ["9-12° adjustable loft"],
  ["loft adjustable 8.5-11.5"],
  ["adjustable from 8 to 12 degrees"],
  ["105 mph"],
  ["loft 105"],
  ["2 deg upright"],
  ["lie 59°"],
  ["58.5° lie"],
  ["bounce 10°"],
  ["3.5 degree torque"],
  ["+/- 2 degrees"],
  ["+1.5°"],
  ["rated 9.5/10"],
  ["£10.5"],
  ["10.5 inch grip"],
  ["size 10.5 shoes"],
  ["10.50 posted"],
  ["hcp 10.5"],
  ["9,5 €"],
  ["10.5mm"],
  ["12.5 miles away"],
  ["driver 2021"],
]);

describe("a bare number with a half", () => {
  it("is doubted where no club is named near it", () => {
    expect(readLoft(prepareWords("Ombrel 10.5"))[0]).toMatchObject({
      value: 10.5,
      doubt: expect.any(String),
    });
    expect(readLoft(prepareWords("Ombrel driver 10.5"))[0]).not.toHaveProperty("doubt");
  });
});
