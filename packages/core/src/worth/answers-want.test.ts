import { expect, it } from "vitest";
import type { CatalogueModel } from "../listing/catalogue.ts";
import type { ListingItem } from "../listing/listing.ts";
import type { Want } from "../resolve/result.ts";
import { answersWant } from "./answers-want.ts";
import { anItem } from "./deal.test-kit.ts";

const want = (kind: Want["kind"], needs: Want["needs"]): Want => ({
  id: "w",
  kind,
  needs,
  text: "",
  completes: [],
  count: 1,
});

const shaftWithAdapter = want("shaft", {
  suits: "wood",
  "adapter.family": "Quillon 2",
  "adapter.hand": "right",
  "length.lengthIn": { atLeast: 44 },
});
const adapter = want("adapter", { family: "Quillon 2", hand: "right", "bore.diameterIn": 0.335 });
const bored = want("shaft", {
  suits: ["wood", "hybrid"],
  "tip.diameterIn": { value: 0.37, source: "measured" },
});
const head = want("head", { clubType: ["driver", "fairway"], "socket.family": "Tarnlock" });

const shaft = (other: Partial<ListingItem>) => anItem({ kind: "shaft", ...other });
const quillon = { adapter: "fitted", adapterFamily: "Quillon 2" } as const;
const inches = (lengthIn: number) => ({ lengthIn, basis: "unstated" as const });
const tip = (diameterIn: number) => ({ diameterIn, form: null });
const catalogued: CatalogueModel = {
  id: "m",
  kind: "head",
  maker: "Haldenbach",
  model: "Skerrick",
  clubType: "driver",
  adapterFamily: "Tarnlock",
};

it.each<[string, ListingItem, Want, boolean]>([
  ["a shaft with the adapter", shaft(quillon), shaftWithAdapter, true],
  [
    "one that is said to suit it, and is long enough",
    shaft({ ...quillon, clubType: "fairway", length: inches(44) }),
    shaftWithAdapter,
    true,
  ],
  ["one that is too short", shaft({ ...quillon, length: inches(43.5) }), shaftWithAdapter, false],
  ["one for irons", shaft({ ...quillon, clubType: "iron" }), shaftWithAdapter, false],
  ["one for the other hand", shaft({ ...quillon, hand: "left" }), shaftWithAdapter, false],
  ["one of another family", shaft({ ...quillon, adapterFamily: "Tarnlock" }), shaftWithAdapter, false],
  ["one of no family that is said", shaft({ adapter: "fitted" }), shaftWithAdapter, false],
  ["one whose adapter is off", shaft({ ...quillon, adapter: "none" }), shaftWithAdapter, false],
  ["a complete club", anItem({ kind: "club", ...quillon }), shaftWithAdapter, false],
  ["a head", anItem(quillon), shaftWithAdapter, false],
  ["an adapter", anItem({ kind: "adapter", adapterFamily: "Quillon 2" }), adapter, true],
  [
    "an adapter of the nominal bore",
    anItem({ kind: "adapter", adapterFamily: "Quillon 2", tip: tip(0.338) }),
    adapter,
    true,
  ],
  [
    "an adapter of another bore",
    anItem({ kind: "adapter", adapterFamily: "Quillon 2", tip: tip(0.35) }),
    adapter,
    false,
  ],
  ["a bare shaft of the size", shaft({ clubType: "hybrid", tip: tip(0.37) }), bored, true],
  ["a bare shaft of no size that is said", shaft({}), bored, true],
  ["a bare shaft of another size", shaft({ tip: tip(0.355) }), bored, false],
  ["a head whose family the catalogue knows", anItem({ modelId: "m" }), head, true],
  ["a head of a type that is not wanted", anItem({ modelId: "m", clubType: "hybrid" }), head, false],
])("%s", (_title, item, wanted, expected) => {
  const model = item.modelId === "m" ? catalogued : undefined;
  expect(answersWant(item, model, wanted)).toBe(expected);
});
