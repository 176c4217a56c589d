import { describe, expect, it } from "vitest";
import { columns } from "./columns.ts";
import { wrapped } from "./wrapped.ts";

const wide = Number.POSITIVE_INFINITY;

describe("columns", () => {
  it("stand below each other, figures to the right, with no blanks at the ends of lines", () => {
    const text = columns({
      header: ["WAY", "LEAVES", "NOTE"],
      rows: [
        ["build", "-3.50", "a loss"],
        ["leave it", "0.00"],
      ],
      figures: [1],
      indent: 2,
      width: wide,
    });
    expect(text.split("\n")).toEqual([
      "  WAY       LEAVES  NOTE",
      "  build      -3.50  a loss",
      "  leave it    0.00",
    ]);
  });

  it("break the last one under itself where the terminal is narrow", () => {
    const rows = [["club", "a driver with a long shaft and a worn grip"]];
    expect(columns({ rows, width: 30 }).split("\n")).toEqual([
      "club  a driver with a long",
      "      shaft and a worn grip",
    ]);
  });

  it("stay on one line each where the width has no end, as in a pipe", () => {
    const rows = [["club", "word ".repeat(100).trim()]];
    expect(columns({ rows, width: wide }).split("\n")).toHaveLength(1);
  });
});

describe("running text", () => {
  it.each([
    ["a bb ccc", 4, ["a bb", "ccc"]],
    ["abcdefgh ij", 4, ["abcdefgh", "ij"]],
    ["one\ntwo", 80, ["one", "two"]],
    ["", 80, [""]],
  ])("%j is broken at %d", (text, width, lines) => {
    expect(wrapped(text, { width })).toEqual(lines);
  });

  it("begins its lines as it is told", () => {
    expect(wrapped("a b", { width: 3, first: "- ", rest: "  " })).toEqual(["- a", "  b"]);
  });
});
