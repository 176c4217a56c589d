import type { CostSettings, FeeTable } from "@ferrule/core";
import type { ShelfKind } from "../components/shelf-list.ts";
import type { RecordField } from "../form/record-field.ts";
import { tierLines, tiersFromLines } from "../form/tier-lines.ts";
import { moneyText } from "../format/money.ts";
import { newName } from "./new-name.ts";

/** The places to sell and what each costs. `save` keeps the changed list. */
export function feeShelf(costs: CostSettings, save: (feeTables: FeeTable[]) => Promise<unknown>): ShelfKind {
  const { currency, feeTables, sellsBy } = costs;
  return {
    word: "place to sell",
    many: "places to sell",
    undoable: false,
    emptyText: "At least one is needed.",
    title: ({ name }: FeeTable) => name,
    facts: (table: FeeTable) => [
      table.id === sellsBy && "you sell here",
      tierLines(table.tiers, currency).replaceAll("\n", ", "),
      table.fixedMinor > 0 && `${moneyText(table.fixedMinor, currency)} a sale`,
      table.listingMinor > 0 && `${moneyText(table.listingMinor, currency)} to list`,
      table.capMinor !== null && `at most ${moneyText(table.capMinor, currency)}`,
      table.paymentPercent > 0 && `${table.paymentPercent} % for the payment`,
      table.cashOutPercent > 0 && `${table.cashOutPercent} % to draw it out`,
    ],
    fields: () => feeFields(currency),
    opened: (table: FeeTable | undefined) =>
      table ? { ...table, onPostage: table.onPostage ? "yes" : "no" } : { ...noFees, onPostage: "no" },
    closed: (record, table: FeeTable | undefined) => ({
      ...record,
      onPostage: record["onPostage"] === "yes",
      id:
        table?.id ??
        newName(
          String(record["name"]),
          feeTables.map(({ id }) => id),
        ),
    }),
    add: (table) => save([...feeTables, table as FeeTable]),
    put: (id, table) => save(feeTables.map((one) => (one.id === id ? (table as FeeTable) : one))),
    remove: (id) => save(feeTables.filter((one) => one.id !== id)),
  };
}

const noFees = {
  listingMinor: 0,
  tiers: [{ upToMinor: null, percent: 0 }],
  fixedMinor: 0,
  paymentPercent: 0,
  paymentFixedMinor: 0,
  cashOutPercent: 0,
};

function feeFields(currency: string): readonly RecordField[] {
  const amount = (path: string, label: string): RecordField => ({
    path,
    label,
    control: "minor",
    currency,
    needed: true,
  });
  const percent = (path: string, label: string): RecordField => ({
    path,
    label,
    control: "number",
    unit: "%",
    needed: true,
  });
  return [
    { path: "name", label: "What it is", control: "text", needed: true, wide: true },
    {
      path: "tiers",
      label: "Share of the price",
      why: "One tier a line; each share is taken of the part of the price inside its tier.",
      control: "lines",
      example: "5 % up to 25.00\n1 % of the rest",
      needed: true,
      write: (value) => tierLines(value as FeeTable["tiers"], currency),
      read: (text) => tiersFromLines(text, currency),
    },
    amount("fixedMinor", "For each sale, on top"),
    {
      path: "capMinor",
      label: "Never more than",
      why: "Share and fixed part together. Empty: no limit.",
      control: "minor",
      currency,
      empty: null,
    },
    amount("listingMinor", "For listing it, sold or not"),
    {
      path: "onPostage",
      label: "Share is taken of the postage too",
      control: "choice",
      choices: { yes: "Yes", no: "No" },
    },
    percent("paymentPercent", "For taking the payment"),
    amount("paymentFixedMinor", "For taking the payment, fixed"),
    percent("cashOutPercent", "For drawing the money out"),
  ];
}
