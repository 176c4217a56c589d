import { describe, expect, it } from "vitest";
import type { CatalogueModel } from "../listing/catalogue.ts";
import type { ListingItem } from "../listing/listing.ts";
import { aListing, anItem } from "./deal.test-kit.ts";
import { partsOfListing } from "./parts-of-listing.ts";

const catalogue: CatalogueModel[] = [
  {
    id: "ombrel",
    kind: "head",
    maker: "Northmoor",
    model: "Ombrel",
    clubType: "driver",
    adapterFamily: "Quillon 2",
  },
];

const made = (...items: ListingItem[]) => partsOfListing(aListing(items), catalogue);
const joined = (items: ListingItem[]) =>
  made(...items).joints.map(({ type, parts }) => `${type} ${parts.join(" ")}`);
const part = (kind: string, item: ListingItem) => made(item).parts.find((each) => each.kind === kind);

describe("the parts behind a listing", () => {
  it("are four, and three joints, for a club whose adapter family is known", () => {
    const club = anItem({
      kind: "club",
      maker: "Northmoor",
      model: "Ombrel",
      modelId: "ombrel",
      hand: "left",
    });
    expect(made(club).parts).toEqual([
      {
        id: "listing-head",
        kind: "head",
        maker: "Northmoor",
        model: "Ombrel",
        clubType: "driver",
        hand: "left",
        socket: { type: "receiver", family: "Quillon 2" },
      },
      { id: "listing-adapter", kind: "adapter", family: "Quillon 2", hand: "left" },
      { id: "listing-shaft", kind: "shaft", suits: "wood" },
      { id: "listing-grip", kind: "grip" },
    ]);
    expect(joined([club])).toEqual([
      "screwed listing-head listing-adapter",
      "bonded listing-adapter listing-shaft",
      "gripped listing-shaft listing-grip",
    ]);
  });

  it.each<[string, Partial<ListingItem>, string[]]>([
    [
      "a club of no known family",
      { kind: "club" },
      ["bonded listing-head listing-shaft", "gripped listing-shaft listing-grip"],
    ],
    [
      "a club of a family, said to have no adapter",
      { kind: "club", adapterFamily: "Tarnlock", adapter: "none" },
      ["gripped listing-shaft listing-grip"],
    ],
    [
      "a shaft with its adapter",
      { kind: "shaft", adapter: "fitted" },
      ["bonded listing-adapter listing-shaft"],
    ],
    ["a shaft", { kind: "shaft", adapter: "none" }, []],
    ["a head that comes with an adapter", { adapter: "fitted" }, []],
    ["a wrench", { kind: "wrench" }, []],
  ])("of %s are joined as they come", (_title, item, joints) => {
    expect(joined([anItem(item)])).toEqual(joints);
  });

  it.each<[Partial<ListingItem>, string]>([
    [{ kind: "club" }, "head shaft grip"],
    [{ kind: "club", cover: true, wrench: true }, "head shaft grip cover wrench"],
    [{ kind: "club", cover: false, wrench: null }, "head shaft grip"],
    [{ adapter: "fitted", wrench: true }, "head adapter wrench"],
    [{ kind: "shaft", adapter: "fitted" }, "shaft adapter"],
    [{ kind: "adapter" }, "adapter"],
    [{ kind: "grip" }, "grip"],
    [{ kind: "cover", cover: true }, "cover"],
    [{ kind: "wrench", wrench: true }, "wrench"],
  ])("of %o are %s", (item, kinds) => {
    expect(
      made(anItem(item))
        .parts.map(({ kind }) => kind)
        .join(" "),
    ).toBe(kinds);
  });

  it("state nothing that neither the words nor the catalogue say", () => {
    expect(made(anItem()).parts).toEqual([{ id: "listing-head", kind: "head" }]);
    expect(made(anItem({ modelId: "unheard-of" })).parts).toEqual([{ id: "listing-head", kind: "head" }]);
  });

  it("have a bore where a head's size is said, and a receiver of no family where an adapter is", () => {
    expect(part("head", anItem({ tip: { diameterIn: 0.335, form: null } }))).toMatchObject({
      socket: { type: "bore", diameterIn: 0.335 },
    });
    expect(part("head", anItem({ adapter: "fitted" }))).toMatchObject({ socket: { type: "receiver" } });
  });

  it("take the length that is said of a club for its playing length, and of a shaft as it is said", () => {
    const length = { lengthIn: 45.5, basis: "unstated" as const };
    expect(part("shaft", anItem({ kind: "club", length }))).toMatchObject({
      length: { lengthIn: 45.5, basis: "playing" },
    });
    expect(part("shaft", anItem({ kind: "shaft", length }))).toMatchObject({ length });
  });
});

describe("faults and denied faults", () => {
  it("go to the part of a club that they are faults of", () => {
    const faults = ["sky-mark", "dent-shaft", "grip-worn", "adapter-damaged", "rust"] as const;
    const { parts } = made(
      anItem({
        kind: "club",
        adapterFamily: "Tarnlock",
        faults: [...faults],
        deniedFaults: ["crack", "bent-shaft"],
      }),
    );
    const told = parts.map(({ kind, faults, deniedFaults }) => [kind, faults, deniedFaults]);
    expect(told).toEqual([
      ["head", ["sky-mark", "rust"], ["crack"]],
      ["adapter", ["adapter-damaged"], undefined],
      ["shaft", ["dent-shaft"], ["bent-shaft"]],
      ["grip", ["grip-worn"], undefined],
    ]);
  });

  it("that name no place belong to the thing itself", () => {
    for (const kind of ["head", "shaft", "adapter", "grip"] as const)
      expect(part(kind, anItem({ kind, faults: ["other"] }))).toMatchObject({ faults: ["other"] });
  });
});

describe("several things", () => {
  it("are made one by one, each known by its item", () => {
    const { parts, itemOf, things } = made(anItem({ quantity: 2 }), anItem({ kind: "shaft" }));
    expect(parts.map(({ id }) => id)).toEqual(["listing-head", "listing-head-2", "listing-shaft"]);
    expect([...itemOf.values()]).toEqual([0, 0, 1]);
    expect(things).toEqual([[["listing-head"], ["listing-head-2"]], [["listing-shaft"]]]);
  });

  it("are the clubs of a set as one thing, without the loft that is said of the whole", () => {
    const { parts, joints, things } = made(
      anItem({ kind: "club", clubType: "iron", clubNumber: "8-PW", loftDeg: 36 }),
    );
    const heads = parts.filter(({ kind }) => kind === "head");
    expect(heads).toMatchObject([{ clubNumber: "8" }, { clubNumber: "9" }, { clubNumber: "PW" }]);
    expect(heads.every((head) => !("loftDeg" in head))).toBe(true);
    expect(parts).toHaveLength(9);
    expect(joints).toHaveLength(6);
    expect(things.map((copies) => copies.map((ids) => ids.length))).toEqual([[9]]);
  });

  it("are all of them for whoever asks for all", () => {
    const listing = aListing([anItem({ quantity: 999 }), anItem({ kind: "grip", quantity: 61 })]);
    const { parts, things } = partsOfListing(listing, catalogue, undefined, ({ quantity }) => quantity);
    expect(things.map(({ length }) => length)).toEqual([999, 61]);
    expect(new Set(parts.map(({ id }) => id)).size).toBe(1060);
  });

  it("are as many as a judgement counts where nobody asks for all", () => {
    const { things } = made(
      anItem({ quantity: 999 }),
      anItem({ kind: "club", clubType: "iron", clubNumber: "3-PW", quantity: 50 }),
    );
    expect(things.map(({ length }) => length)).toEqual([60, 7]);
  });
});
