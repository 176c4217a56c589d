import type { Entry } from "@ferrule/core";

/** What a line of the books is for. */
export const entryWords: Readonly<Record<Entry["type"], string>> = {
  buy: "Bought",
  sale: "Sold",
  fee: "Fee",
  postage: "Postage",
  trip: "Drive",
  material: "Materials",
  refund: "Money back",
  other: "Something else",
};
