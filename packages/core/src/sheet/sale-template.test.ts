import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  fillSaleTemplate,
  firstSaleTemplate,
  parseSaleTemplate,
  type SalePlaceholder,
  salePlaceholders,
} from "./sale-template.ts";

const values = Object.fromEntries(salePlaceholders.map((name) => [name, `<${name}>`])) as Record<
  SalePlaceholder,
  string
>;
const filled = (text: string, from = values) => {
  const parsed = parseSaleTemplate(text);
  return parsed.ok ? fillSaleTemplate(parsed.value, from) : parsed.refusals;
};

describe("a template", () => {
  it.each([
    ["{title}", "<title>"],
    ["{ title }!", "<title>!"],
    ["{{title}}", "{title}"],
    ["a {{ b }} c", "a { b } c"],
    ["", ""],
    ["no names", "no names"],
  ])("%j reads %j", (text, words) => {
    expect(filled(text)).toBe(words);
  });

  it.each([
    ["{colour}", "template, line 1", "{colour}"],
    ["one\ntwo {", "template, line 2", "{"],
    ["one }", "template, line 1", "}"],
    ["{}", "template, line 1", "{}"],
    ["{title", "template, line 1", "{"],
  ])("%j is refused at its place with what was got", (text, field, got) => {
    expect(filled(text)).toMatchObject([{ field, got }]);
  });

  it("that a bench begins with names everything", () => {
    const text = filled(firstSaleTemplate);
    for (const name of salePlaceholders) expect(text).toContain(`<${name}>`);
  });

  it("never reads what it was filled with, whatever that holds", () => {
    fc.assert(
      fc.property(fc.string(), (words) => {
        expect(filled("{title}", { ...values, title: words })).toBe(words);
      }),
    );
  });

  it("gives back any words whose braces are doubled", () => {
    fc.assert(
      fc.property(fc.string(), (words) => {
        expect(filled(words.replaceAll("{", "{{").replaceAll("}", "}}"))).toBe(words);
      }),
    );
  });
});
