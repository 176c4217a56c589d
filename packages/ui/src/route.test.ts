import { describe, expect, it } from "vitest";
import { hrefs, routeFrom } from "./route.ts";

describe("an address", () => {
  it("leads back to what it was made from, odd names included", () => {
    expect(routeFrom(hrefs.part("H 1/ä"))).toEqual({ view: "part", id: "H 1/ä" });
    expect(routeFrom(hrefs.club({ head: "H1", id: "H1+A1+S1+G1" }))).toEqual({
      view: "club",
      head: "H1",
      id: "H1+A1+S1+G1",
    });
    const pair = { head: "H1", shaft: "S1", adapter: null };
    expect(routeFrom(hrefs.refusal(pair))).toEqual({ view: "refusal", ...pair });
    expect(routeFrom(hrefs.listing("listing-1"))).toEqual({ view: "listing", id: "listing-1" });
    expect(routeFrom(hrefs.listing("many"))).toEqual({ view: "listing", id: "many" });
    expect(routeFrom(hrefs.batch("batch-1"))).toEqual({ view: "batch", id: "batch-1" });
    expect(routeFrom(hrefs.sell(["H/1", "A1", "S1", "G1", "C1"]))).toEqual({
      view: "sell",
      parts: ["H/1", "A1", "S1", "G1", "C1"],
    });
    expect(routeFrom(hrefs.sell([]))).toEqual({ view: "sell", parts: [] });
    const of = { table: "labels-printed", id: "c/1 ü" };
    expect(routeFrom(hrefs.history(of.table, of.id))).toEqual({ view: "history", of });
    expect(routeFrom("/history")).toEqual({ view: "history" });
  });

  it("that is badly written or unknown leads nowhere, without an exception", () => {
    expect(routeFrom("/%E0%A4%A")).toEqual({ view: "nowhere" });
    expect(routeFrom("/parts")).toEqual({ view: "nowhere" });
  });
});
