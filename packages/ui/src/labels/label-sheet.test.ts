import { describe, expect, it } from "vitest";
import { type LabelSetup, labelPage, labelPages, labelPresets } from "./label-sheet.ts";

const preset = (at: number) => labelPresets[at]?.setup as LabelSetup;

describe("labels on paper", () => {
  // How many go on a sheet is printed on its pack, and stands in the preset's name: common practice, no source.
  it.each([
    [0, 3, 7],
    [1, 5, 13],
    [2, 3, 10],
    [3, 1, 1],
  ])("of preset %i are %i across and %i down", (at, columns, rows) =>
    expect(labelPage(preset(at))).toMatchObject({ columns, rows }),
  );

  it("lie in the middle where no edge is given", () => {
    const page = labelPage(preset(0));
    expect(page?.leftMm).toBeCloseTo((210 - 3 * 63.5 - 2 * 2.5) / 2, 9);
    expect(page?.topMm).toBeCloseTo((297 - 7 * 38.1) / 2, 9);
  });

  it("begin where they are told to, and then as many fit as are left", () => {
    const page = labelPage({ ...preset(0), leftMm: 20, topMm: 30 });
    expect(page).toMatchObject({ leftMm: 20, topMm: 30, columns: 2, rows: 6 });
  });

  it("are none where the label is wider than the paper", () =>
    expect(labelPage({ ...preset(0), widthMm: 220 })).toBeUndefined());

  it("fill page by page, after the places that are used", () => {
    const page = {
      ...(labelPage(preset(0)) as NonNullable<ReturnType<typeof labelPage>>),
      columns: 2,
      rows: 2,
    };
    expect(labelPages(["a", "b", "c"], page, 0)).toEqual([["a", "b", "c"]]);
    expect(labelPages(["a", "b", "c"], page, 3)).toEqual([
      [null, null, null, "a"],
      ["b", "c"],
    ]);
    expect(labelPages([], page, 0)).toEqual([]);
  });
});
