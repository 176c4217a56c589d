import { describe, expect, it } from "vitest";
import { aListing, anItem, euros } from "../worth/deal.test-kit.ts";
import { modelFinder } from "../worth/model-finder.ts";
import type { Watch } from "./watch.ts";
import { watchIndex } from "./watch-index.ts";

const watch = (more: Partial<Watch> = {}): Watch => ({
  ...{ id: "w1", kind: "shaft", needs: { suits: "wood", "adapter.family": "Quillon 2" } },
  ...{ text: "a shaft", by: "bench" },
  ...more,
});
const shaft = anItem({ kind: "shaft", clubType: "driver", adapter: "fitted", adapterFamily: "Quillon 2" });
const matches = (watches: Watch[], items = [shaft], more: object = {}, place?: string) =>
  watchIndex(watches, modelFinder([]), { currency: "EUR", rates: {} })(aListing(items, more), place);

describe("a listing held against the watchlist", () => {
  it("is a hit where an item is what is wanted, at what is asked for it alone", () => {
    expect(matches([watch()], [shaft], { asking: euros(3000) })).toEqual([
      { watch: watch(), item: 0, priceMinor: 3000 },
    ]);
    expect(matches([watch()], [anItem(), shaft], { asking: euros(3000) })).toMatchObject([
      { item: 1, priceMinor: null },
    ]);
  });

  it.each([
    ["of another family", watch({ needs: { "adapter.family": "Tarnlock" } })],
    ["of another kind", watch({ kind: "head", needs: {} })],
    ["that is muted", watch({ muted: true })],
    ["elsewhere", watch({ place: "the mill" })],
  ])("is no hit for a want %s", (_what, wanted) => {
    expect(matches([wanted])).toEqual([]);
  });

  it("is a hit where it is, however the place is written; and for a want that names no family", () => {
    expect(matches([watch({ place: "The Mill" })], [shaft], {}, " the mill")).toHaveLength(1);
    expect(matches([watch({ needs: { suits: "wood" } })])).toHaveLength(1);
  });

  it("is no hit where it only looks for something", () => {
    expect(matches([watch()], [shaft], { intent: "wanted" })).toEqual([]);
  });
});
