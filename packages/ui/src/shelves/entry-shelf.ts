import type { CostSettings, Entry, Money } from "@ferrule/core";
import type { ShelfKind } from "../components/shelf-list.ts";
import { keptFields } from "../form/kept-fields.ts";
import type { RecordField } from "../form/record-field.ts";
import { moneyText } from "../format/money.ts";
import { countText, numberText } from "../format/number.ts";
import { dayText } from "../format/today.ts";
import { tradeApi } from "../trade-api.ts";
import { entryWords } from "../words/entry-words.ts";
import { currencyChoices } from "./currency-choices.ts";

/** The lines of the books, as they are listed and typed in. Money out is kept negative; the form asks which way it went. */
export function entryShelf(costs: CostSettings): ShelfKind {
  const { all: _all, patch: _patch, importFile: _importFile, ...calls } = tradeApi.books;
  return {
    word: "line",
    undoable: true,
    emptyText:
      "Buying from a listing and selling from the bench write their lines here by themselves. Anything else can be added.",
    title: (entry: Entry) =>
      `${entryWords[entry.type]} ${moneyText(entry.amount.amountMinor, entry.amount.currency)}`,
    facts: (entry: Entry) => [
      entry.on,
      entry.club,
      entry.parts?.join(", "),
      entry.km !== undefined && `${numberText(entry.km, 1)} km`,
      entry.minutes !== undefined && `${numberText(entry.minutes, 0)} min`,
      entry.daysToSell !== undefined && `for sale ${countText(entry.daysToSell, "day")}`,
      entry.note,
    ],
    fields: (entry: Entry | undefined) => entryFields(costs, entry),
    opened: (entry: Entry | undefined) =>
      entry
        ? { ...entry, way: entry.amount.amountMinor < 0 ? "out" : "in", currency: entry.amount.currency }
        : { type: "material", way: "out", on: dayText(new Date()), currency: costs.currency },
    closed: ({ way, currency, ...record }, entry: Entry | undefined) => ({
      ...keptFields(entry, entryFields(costs, entry)),
      ...record,
      amount: signed(record["amount"] as Money, way === "out", String(currency)),
    }),
    table: "entries",
    ...calls,
  };
}

function signed({ amountMinor }: Money, isOut: boolean, currency: string): Money {
  return { amountMinor: isOut && amountMinor !== 0 ? -amountMinor : amountMinor, currency };
}

function entryFields(costs: CostSettings, entry: Entry | undefined): readonly RecordField[] {
  const currency = entry?.amount.currency ?? costs.currency;
  return [
    { path: "type", label: "What for", control: "choice", choices: entryWords },
    { path: "way", label: "Which way", control: "choice", choices: { out: "Money out", in: "Money in" } },
    { path: "amount", label: "How much", control: "money", currency, needed: true },
    { path: "currency", label: "Currency", control: "choice", choices: currencyChoices(costs, currency) },
    {
      path: "rate",
      label: `Worth of one in ${costs.currency}`,
      why: "For another currency only.",
      control: "number",
    },
    { path: "on", label: "On", control: "date", needed: true },
    { path: "club", label: "For which club", control: "text" },
    { path: "parts", label: "For which parts", why: "Names on the bench, with commas.", control: "names" },
    { path: "km", label: "Driven", control: "number", unit: "km" },
    { path: "minutes", label: "Time spent", control: "number", unit: "min" },
    { path: "daysToSell", label: "Days for sale", control: "number" },
    { path: "note", label: "Note", control: "note" },
  ];
}
