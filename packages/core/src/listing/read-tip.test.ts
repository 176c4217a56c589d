import { describe, expect, it } from "vitest";
import { readTip } from "./read-tip.ts";
import { prepareWords } from "./words.ts";

function tipsIn(text: string): string[] {
  return readTip(prepareWords(text)).map(({ value }) => {
    const { diameterIn, form } = value as { diameterIn: number | null; form: string | null };
    return `${diameterIn === null ? "-" : Number(diameterIn.toFixed(4))} ${form ?? "-"}`;
  });
}

describe("readTip", () => {
  it.each<[string, ...string[]]>([
    [".335", "0.335 -"],
    [".335 tip", "0.335 -"],
    ['0.335"', "0.335 -"],
    ['0.370" for hybrids', "0.37 -"],
    ["0,335 Spitze", "0.335 -"],
    ["335 tip", "0.335 -"],
    ["tip: 335", "0.335 -"],
    ["tip size .350", "0.35 -"],
    ["tip diameter 0.355 in", "0.355 -"],
    [".35 tip", "0.35 -"],
    ["tip .37", "0.37 -"],
    ["8.5mm tip", "0.335 -"],
    ["tip 8.5 mm", "0.335 -"],
    ["Spitze 8,5 mm", "0.335 -"],
    ["8.9mm tip", "0.35 -"],
    ["9.0mm tip", "0.355 -"],
    ["9 mm tip", "0.355 -"],
    ["9.4 mm", "0.37 -"],
    ["9.2 mm tip", "0.3622 -"],
    ["370 parallel", "0.37 parallel"],
    ["370 parallel tip", "0.37 parallel"],
    [".370 parallel", "0.37 parallel"],
    ["tip .350 parallel", "0.35 parallel"],
    [".355 taper", "0.355 taper"],
    [".355 taper hosels", "0.355 taper"],
    ['.355" tapered tip', "0.355 taper"],
    ["taper tip .355", "0.355 taper"],
    ["parallel tip, .370", "0.37 parallel"],
    ["hosel .335 parallel", "0.335 parallel"],
    ["hosel .355 taper", "0.355 taper"],
    [".335 bore", "0.335 -"],
    ["335 bore", "0.335 -"],
    ["paralel 370", "0.37 parallel"],
    ["taper tip", "- taper"],
    ["parallel tipped", "- parallel"],
    ["a .335 and a .350", "0.335 -", "0.35 -"],
    [".600 butt"],
    ["butt .580"],
    [".370 ferrules"],
    ["£335"],
    ["335cc head"],
    ["335 yards"],
    ["0.35 euro"],
    ["tapered grip"],
    ["9 mm wrench"],
    ["10.5° loft"],
    ["£4.335"],
    ["58R core"],
    ["call 0355 370 335"],
  ])("%s", (text, ...tips) => {
    expect(tipsIn(text)).toEqual(tips);
    expect(tipsIn(text.toUpperCase())).toEqual(tips);
  });

  it("marks the words that say it", () => {
    const text = "stiff, 370 parallel tip, RH";
    const [{ start, end } = { start: 0, end: 0 }] = readTip(prepareWords(text));
    expect(text.slice(start, end)).toBe("370 parallel tip");
  });
});
