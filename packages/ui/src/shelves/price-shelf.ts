import type { CatalogueModel, CostSettings, Evidence, Money } from "@ferrule/core";
import type { ShelfKind } from "../components/shelf-list.ts";
import { keptFields } from "../form/kept-fields.ts";
import type { RecordField } from "../form/record-field.ts";
import { moneyText } from "../format/money.ts";
import { countText } from "../format/number.ts";
import { dayText } from "../format/today.ts";
import { tradeApi } from "../trade-api.ts";
import { conditionWords, pricedWords } from "../words/deal-words.ts";
import { itemKindWords } from "../words/item-words.ts";
import { clubTypeWords, flexWords, handWords } from "../words/part-words.ts";
import { currencyChoices } from "./currency-choices.ts";

const { either: _either, ...oneHand } = handWords;

/** Prices that were asked or paid, as they are listed and typed in. */
export function priceShelf(costs: CostSettings, models: readonly CatalogueModel[]): ShelfKind {
  const { all: _all, patch: _patch, importFile: _importFile, ...calls } = tradeApi.evidence;
  const modelChoices = Object.fromEntries(models.map(({ id, maker, model }) => [id, `${maker} ${model}`]));
  return {
    word: "price",
    undoable: true,
    emptyText:
      "Note what things like yours were sold at, or were asked for. Five of one model say a good deal; one says something.",
    title: (row: Evidence) => titleOf(row),
    facts: (row: Evidence) => factsOf(row),
    fields: (row: Evidence | undefined) => priceFields(costs, modelChoices, row),
    opened: (row: Evidence | undefined) =>
      row
        ? { ...row, currency: row.price.currency }
        : { kind: "club", what: "sold", on: dayText(new Date()), currency: costs.currency },
    closed: ({ currency, ...record }, row: Evidence | undefined) => ({
      ...keptFields(row, priceFields(costs, modelChoices, row)),
      ...record,
      price: { ...(record["price"] as Money), currency },
    }),
    table: "evidence",
    ...calls,
  };
}

function titleOf({ maker, model, kind, clubType, clubNumber }: Evidence): string {
  const what = kind === "club" && clubType ? clubTypeWords[clubType] : itemKindWords[kind];
  const name = [maker, model].filter(Boolean).join(" ");
  const type = kind === "head" && clubType ? `${clubTypeWords[clubType]} head` : what;
  return [name || undefined, clubNumber, name === "" ? type : type.toLowerCase()].filter(Boolean).join(" ");
}

function factsOf(row: Evidence): (string | undefined | false)[] {
  return [
    `${pricedWords[row.what].toLowerCase()} ${moneyText(row.price.amountMinor, row.price.currency)}`,
    row.on,
    row.own && "own sale",
    row.condition && conditionWords[row.condition].toLowerCase(),
    row.daysToSell !== undefined && `in ${countText(row.daysToSell, "day")}`,
    row.hand && oneHand[row.hand].toLowerCase(),
    row.flex && flexWords[row.flex].toLowerCase(),
    row.cover === false && "no head cover",
    row.wrench === false && "no wrench",
    row.note,
  ];
}

function priceFields(
  costs: CostSettings,
  modelChoices: Readonly<Record<string, string>>,
  row: Evidence | undefined,
): readonly RecordField[] {
  const currency = row?.price.currency ?? costs.currency;
  const notKnown = (choices: Readonly<Record<string, string>>) => ({ "": "Not known", ...choices });
  return [
    { path: "kind", label: "What", control: "choice", choices: itemKindWords },
    { path: "price", label: "Price, without postage", control: "money", currency, needed: true },
    { path: "currency", label: "Currency", control: "choice", choices: currencyChoices(costs, currency) },
    { path: "what", label: "It was", control: "choice", choices: { sold: "Sold at that", asked: "Asked" } },
    { path: "on", label: "On", control: "date", needed: true },
    { path: "maker", label: "Maker", control: "text" },
    { path: "model", label: "Model", control: "text" },
    { path: "modelId", label: "Model in the list", control: "choice", choices: notKnown(modelChoices) },
    { path: "clubType", label: "Club type", control: "choice", choices: notKnown(clubTypeWords) },
    { path: "clubNumber", label: "Number", control: "text" },
    { path: "condition", label: "Condition", control: "choice", choices: notKnown(conditionWords) },
    { path: "hand", label: "Hand", control: "choice", choices: notKnown(oneHand) },
    { path: "flex", label: "Flex", control: "choice", choices: notKnown(flexWords) },
    {
      path: "adapter",
      label: "Adapter on it",
      control: "choice",
      choices: notKnown({ fitted: "Yes", none: "No" }),
    },
    { path: "adapterFamily", label: "Adapter family", control: "text" },
    { path: "year", label: "Year of the model", control: "number" },
    { path: "cover", label: "With its head cover", control: "yes-no" },
    { path: "wrench", label: "With its wrench", control: "yes-no" },
    { path: "daysToSell", label: "Days it took to sell", control: "number" },
    { path: "own", label: "Your own sale", control: "yes-no" },
    { path: "note", label: "Note", control: "note" },
  ];
}
