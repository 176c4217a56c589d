import { describe, expect, it } from "vitest";
import type { Part } from "../parts/part.ts";
import { mayWait } from "./may-wait.ts";
import type { MeaningfulUse } from "./meaningful-use.ts";
import type { Offer } from "./offers.ts";
import type { StockType } from "./stock.ts";

/** So many of a head (H…) or a shaft (S…) on the bench, or one that a listing of this price offers. */
const type = (id: string, { count = 1, offer }: { count?: number; offer?: string } = {}): StockType => {
  const parts = [{ id, kind: id.startsWith("H") ? "head" : "shaft" } as Part];
  const instances = Array.from({ length: offer ? 1 : count }, () => ({ parts, bundle: offer }));
  return { id, parts, joints: [], instances };
};
const build = (head: string, shaft: string, netMinor = 100) =>
  ({ do: "build", parts: [head, shaft], netMinor, club: { head, shaft } }) as unknown as MeaningfulUse;
const offer = (id: string, priceMinor: number) => ({ id, priceMinor }) as Offer;

const waiting = (types: StockType[], builds: MeaningfulUse[], offers: Offer[] = []) =>
  types.filter(mayWait(types, builds, offers)).map(({ id }) => id);

describe("what may wait", () => {
  it("is what makes no club today", () => {
    expect(waiting([type("H1"), type("S1")], [])).toEqual(["H1", "S1"]);
  });

  it("is neither of two that make a club", () => {
    expect(waiting([type("H1"), type("S1")], [build("H1", "S1")])).toEqual([]);
  });

  it("is any of those that could be the one left over", () => {
    const builds = [build("H1", "S1"), build("H2", "S1")];
    expect(waiting([type("H1"), type("H2"), type("S1")], builds)).toEqual(["H1", "H2"]);
    expect(waiting([type("H1", { count: 2 }), type("S1", { count: 3 })], [build("H1", "S1")])).toEqual([
      "S1",
    ]);
  });

  it("is none where giving way makes room for all", () => {
    const builds = [build("H1", "S1"), build("H1", "S2"), build("H2", "S1")];
    expect(waiting([type("H1"), type("H2"), type("S1"), type("S2")], builds)).toEqual([]);
  });

  it("does not wait for what can be bought at a price that the club bears, and waits beside one that it does not", () => {
    const types = [type("S1"), type("H1", { offer: "L1" })];
    expect(waiting(types, [build("H1", "S1", 100)], [offer("L1", 99)])).toEqual([]);
    expect(waiting(types, [build("H1", "S1", 100)], [offer("L1", 100)])).toEqual(["S1"]);
  });

  it("is of two on offer the head", () => {
    const types = [type("H1", { offer: "L1" }), type("S1", { offer: "L2" })];
    expect(waiting(types, [build("H1", "S1", 100)], [offer("L1", 80), offer("L2", 80)])).toEqual(["H1"]);
  });
});
