import type { ItemKind, ListingItem } from "@ferrule/core";
import { itemKindWords } from "../words/item-words.ts";
import {
  basisWords,
  clubTypeWords,
  flexWords,
  formWords,
  handWords,
  materialWords,
} from "../words/part-words.ts";

/** Facts of an item that have a control of their own; faults are asked for apart. */
export type ItemField = Exclude<keyof ListingItem, "faults" | "deniedFaults">;

/** How a fact of an item is corrected. */
export type ItemControl =
  | { readonly control: "text" | "length" | "tip" | "money" | "model" | "yes-no" }
  | { readonly control: "number"; readonly unit?: string }
  | {
      readonly control: "choice";
      readonly choices: Readonly<Record<string, string>>;
      readonly needed?: boolean;
    };

const { either: _either, ...oneHand } = handWords;
export const tipForms = formWords;
export const lengthBasisWords = basisWords;

export const itemControls: Readonly<Record<ItemField, ItemControl>> = {
  kind: { control: "choice", choices: itemKindWords, needed: true },
  quantity: { control: "number" },
  maker: { control: "text" },
  model: { control: "text" },
  modelId: { control: "model" },
  year: { control: "number" },
  clubType: { control: "choice", choices: clubTypeWords },
  clubNumber: { control: "text" },
  loftDeg: { control: "number", unit: "°" },
  hand: { control: "choice", choices: oneHand },
  flex: { control: "choice", choices: flexWords },
  shaftMaterial: { control: "choice", choices: materialWords },
  shaftMassG: { control: "number", unit: "g" },
  length: { control: "length" },
  tip: { control: "tip" },
  adapter: { control: "choice", choices: { fitted: "On it", none: "None" } },
  adapterFamily: { control: "text" },
  cover: { control: "yes-no" },
  wrench: { control: "yes-no" },
  price: { control: "money" },
};

const named: readonly ItemField[] = ["kind", "clubType", "maker", "model"];
const ofHeads: readonly ItemField[] = [
  "clubNumber",
  "loftDeg",
  "hand",
  "adapter",
  "adapterFamily",
  "cover",
  "wrench",
];
const ofShafts: readonly ItemField[] = ["flex", "shaftMaterial", "shaftMassG", "length"];

/** What decides most about each kind of thing, in the order a buyer asks for it. */
const first: Readonly<Record<ItemKind, readonly ItemField[]>> = {
  club: [...named, "clubNumber", "loftDeg", "hand", ...ofShafts, "adapterFamily", "cover", "wrench"],
  head: [...named, ...ofHeads],
  shaft: ["kind", "maker", "model", ...ofShafts, "tip", "adapter", "adapterFamily"],
  adapter: ["kind", "adapterFamily", "hand", "tip", "maker", "model"],
  grip: ["kind", "maker", "model"],
  cover: ["kind", "clubType", "maker", "model"],
  wrench: ["kind", "adapterFamily", "maker"],
};

/** The facts to show at once: those that decide most, and any other that was read. */
export function fieldsToShow(item: ListingItem): { first: readonly ItemField[]; rest: readonly ItemField[] } {
  const all = Object.keys(itemControls) as ItemField[];
  const isRead = (field: ItemField) => item[field] !== null && !(field === "quantity" && item.quantity === 1);
  const shown = [
    ...first[item.kind],
    ...all.filter((field) => !first[item.kind].includes(field) && isRead(field)),
  ];
  return { first: shown, rest: all.filter((field) => !shown.includes(field)) };
}
