import { type Columns, type ColumnType, sortByRank } from "./columns.ts";

/** Columns as listed, in that order; any other is of the type that is left for it. */
export function listColumns(
  types: Readonly<Record<string, ColumnType>>,
  others: (name: string) => ColumnType = () => "open",
): Columns {
  const baseOf = (name: string) => name.replace(/\.\d+$/, "");
  return {
    type: (name) => {
      if (Object.hasOwn(types, name)) return types[name] as ColumnType;
      return baseOf(name) !== name && types[baseOf(name)] === "names" ? "text" : others(name);
    },
    isReading: () => false,
    sort: (names) => sortByRank(names, Object.keys(types), baseOf),
  };
}

export const modelColumns = listColumns({
  id: "text",
  kind: "text",
  maker: "text",
  model: "text",
  aliases: "names",
  clubType: "text",
  adapterFamily: "text",
  year: "number",
});

export const evidenceColumns = listColumns({
  id: "text",
  on: "text",
  what: "text",
  own: "boolean",
  "price.amountMinor": "number",
  "price.currency": "text",
  daysToSell: "number",
  kind: "text",
  modelId: "text",
  maker: "text",
  model: "text",
  year: "number",
  clubType: "text",
  clubNumber: "text",
  hand: "text",
  flex: "text",
  adapter: "text",
  adapterFamily: "text",
  condition: "text",
  cover: "boolean",
  wrench: "boolean",
  note: "text",
});

export const entryColumns = listColumns({
  id: "text",
  on: "text",
  type: "text",
  "amount.amountMinor": "number",
  "amount.currency": "text",
  rate: "number",
  parts: "names",
  club: "text",
  sighting: "text",
  km: "number",
  minutes: "number",
  daysToSell: "number",
  "expected.currency": "text",
  "expected.priceMinor": "number",
  "expected.lowMinor": "number",
  "expected.highMinor": "number",
  "expected.netMinor": "number",
  "expected.daysToSell": "number",
  note: "text",
});

/** Written only: the words themselves and what holds of them now, without what was read from them at first. */
export const sightingColumns = listColumns(
  {
    id: "text",
    seenOn: "text",
    outcome: "text",
    outcomeOn: "text",
    "outcomePrice.amountMinor": "number",
    "outcomePrice.currency": "text",
    verdict: "text",
    "mostToPay.amountMinor": "number",
    "mostToPay.currency": "text",
    place: "text",
    roundTripKm: "number",
    note: "text",
    text: "text",
    "listing.intent": "text",
    "listing.asking.amountMinor": "number",
    "listing.asking.currency": "text",
    "listing.negotiable": "boolean",
  },
  (name) => (/\.(faults|deniedFaults)$/.test(name) ? "words" : "text"),
);
