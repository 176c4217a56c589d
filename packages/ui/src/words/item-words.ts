import type { ItemKind } from "@ferrule/core";
import { kindWords } from "./part-words.ts";

/** What a listing can hold. */
export const itemKindWords: Readonly<Record<ItemKind, string>> = { club: "Complete club", ...kindWords };

export const intentWords = { sell: "For sale", wanted: "Wanted", swap: "To swap" } as const;

export const postageWords = {
  included: "Included",
  extra: "Extra, not said how much",
  "collection-only": "Collection only",
  amount: "Extra, this much:",
} as const;

/** What each fact of a listing is called, by its field without the item's number. */
export const listingFieldWords: Readonly<Record<string, string>> = {
  intent: "What it is for",
  asking: "Asking price",
  negotiable: "Open to offers",
  postage: "Postage",
  kind: "What it is",
  quantity: "How many",
  maker: "Maker",
  model: "Model",
  modelId: "Model in the list",
  year: "Year",
  clubType: "Club type",
  clubNumber: "Number",
  loftDeg: "Loft",
  hand: "Hand",
  flex: "Flex",
  shaftMaterial: "Shaft material",
  shaftMassG: "Shaft mass",
  length: "Length",
  tip: "Tip",
  adapter: "Adapter",
  adapterFamily: "Adapter family",
  cover: "Head cover",
  wrench: "Wrench",
  price: "Price of one",
};
