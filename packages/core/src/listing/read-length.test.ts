import { describe, expect, it } from "vitest";
import { readLength } from "./read-length.ts";
import { prepareWords } from "./words.ts";

function lengthsIn(text: string): string[] {
  return readLength(prepareWords(text)).map(({ value, start, end }) => {
    const { lengthIn, basis } = value as { lengthIn: number; basis: string };
    return `${text.slice(start, end)} = ${Number(lengthIn.toFixed(3))} ${basis}`;
  });
}

describe("readLength", () => {
  it.each<[string, ...string[]]>([
    ['44.5"', '44.5" = 44.5 unstated'],
    ["44.5″ long", "44.5″ = 44.5 unstated"],
    ["44.5''", "44.5'' = 44.5 unstated"],
    ['44½"', '44½" = 44.5 unstated'],
    ["44 1/2 inches", "44 1/2 inches = 44.5 unstated"],
    ["44-3/4 in", "44-3/4 in = 44.75 unstated"],
    ["44,5 Zoll", "44,5 Zoll = 44.5 unstated"],
    ["45 inch", "45 inch = 45 unstated"],
    ["45in", "45in = 45 unstated"],
    ["33in. Postage £7.20", "33in. = 33 unstated"],
    ["45 ins", "45 ins = 45 unstated"],
    ["forty-five inch", "forty-five inch = 45 unstated"],
    ["forty four and a half inches", "forty four and a half inches = 44.5 unstated"],
    ["35-inch putter", "35-inch = 35 unstated"],
    ["113 cm", "113 cm = 44.488 unstated"],
    ["113cm", "113cm = 44.488 unstated"],
    ["1130mm", "1130mm = 44.488 unstated"],
    ["1,13 m", "1,13 m = 44.488 unstated"],
    ["longueur 113 cm", "113 cm = 44.488 unstated"],
    ["44 pouces", "44 pouces = 44 unstated"],
    ["45 pulgadas", "45 pulgadas = 45 unstated"],
    ["length 44.5", "44.5 = 44.5 unstated"],
    ["length: 44 1/4", "44 1/4 = 44.25 unstated"],
    ["cut to 44", "44 = 44 unstated"],
    ["plays 45", "45 = 45 playing"],
    ['playing length 45.25"', '45.25" = 45.25 playing'],
    ['built to 45.25" playing length', '45.25" = 45.25 playing'],
    ["club length: 45in", "45in = 45 playing"],
    ['overall 45.5"', '45.5" = 45.5 playing'],
    ['44.5" inc adapter', '44.5" = 44.5 with-adapter'],
    ["44.5 including the adaptor", "44.5 = 44.5 with-adapter"],
    ["44 1/2 inches tip to butt including the adapter", "44 1/2 inches = 44.5 with-adapter"],
    ["44.25 with sleeve", "44.25 = 44.25 with-adapter"],
    ["measured with adapter 44.5 in", "44.5 in = 44.5 with-adapter"],
    ["length inc adapter: 44.5", "44.5 = 44.5 with-adapter"],
    ['44" (with Quillon 2 adapter)', '44" = 44 with-adapter'],
    ['43" without adapter', '43" = 43 shaft-alone'],
    ["Länge 113 cm ohne Adapter", "113 cm = 44.488 shaft-alone"],
    ["1130mm bare", "1130mm = 44.488 shaft-alone"],
    ['37" bare shaft', '37" = 37 shaft-alone'],
    ["bare shaft 43.5 inches", "43.5 inches = 43.5 shaft-alone"],
    ['uncut 46", no adapter, never installed', '46" = 46 shaft-alone'],
    ['uncut 46"', '46" = 46 unstated'],
    ["with Quillon 2 adapter, 44.5 inches", "44.5 inches = 44.5 unstated"],
    ["5 wood RH 42½", "42½ = 42.5 unstated"],
    ["RH,45in,w/hc", "45in = 45 unstated"],
    ['45,25" (Spiellänge)', '45,25" = 45.25 playing'],
    ["raw 37.5 inches", "37.5 inches = 37.5 shaft-alone"],
    ['no adapter, 39"', '39" = 39 shaft-alone'],
    ['.370 parallel, bare, 40.0"', '40.0" = 40 shaft-alone'],
    ["1/2 inch over standard"],
    ['+1/2" over'],
    ["2 inches short"],
    ["10.5 inch grip"],
    ["45 in good condition"],
    ["46 in tube"],
    ["tube is 48 inches long"],
    ["box 120 x 15 x 15 cm"],
    ["waist 34 inch"],
    ["plays to 28 handicap"],
    ["plays 36 holes"],
    ["I'm 183 cm tall"],
    ["£44.50"],
    ["asking 44.5"],
    ["standard length"],
    ["460cc"],
    ["45 mph"],
    ["8.5 mm tip"],
  ])("%s", (text, ...reads) => expect(lengthsIn(text)).toEqual(reads));

  it("doubts a bare number that only looks like a length", () => {
    expect(readLength(prepareWords("stiff, 44.5, RH"))).toEqual([
      {
        field: "length",
        value: { lengthIn: 44.5, basis: "unstated" },
        start: 7,
        end: 11,
        doubt: expect.any(String),
      },
    ]);
  });

  it("reads the same of a shouted text", () => {
    expect(lengthsIn("44.5 INCHES INC ADAPTER")).toEqual(["44.5 INCHES = 44.5 with-adapter"]);
  });

  it.each([
    ["3ft 8 long", ["3ft 8 = 44 unstated"]],
    ["length 3' 9\"", ["3' 9\" = 45 unstated"]],
    ['45" playing or close', ['45" = 45 playing']],
    ["my daughter is 4ft 9 tall", []],
  ])("%j", (text, lengths) => expect(lengthsIn(text)).toEqual(lengths));
});
