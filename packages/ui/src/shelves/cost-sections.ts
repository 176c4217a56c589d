import type { CostSettings } from "@ferrule/core";
import { rateLines, ratesFromLines } from "../form/rate-lines.ts";
import type { RecordField } from "../form/record-field.ts";
import { stepWords } from "../words/step-words.ts";

/** A group of cost settings that are changed together. */
export interface CostSection {
  readonly id: string;
  readonly title: string;
  readonly why?: string;
  /** Opened by the user when wanted. */
  readonly folded?: boolean;
  readonly fields: (costs: CostSettings) => readonly RecordField[];
  readonly opened: (costs: CostSettings) => unknown;
  readonly closed: (record: Readonly<Record<string, unknown>>) => Partial<CostSettings>;
}

const asItIs = { opened: (costs: CostSettings): unknown => costs, closed: (record: object) => record };

const deal: CostSection = {
  id: "deal",
  title: "When a deal is worth it",
  fields: ({ currency }) => [
    { path: "hourValueMinor", label: "An hour of yours is worth", control: "minor", currency, needed: true },
    { path: "leastNetMinor", label: "The least a deal must leave", control: "minor", currency, needed: true },
    {
      path: "mostLossPercent",
      label: "The greatest chance of a loss",
      control: "number",
      unit: "%",
      needed: true,
    },
    {
      path: "holdingPerWeekMinor",
      label: "Keeping one thing for a week costs",
      control: "minor",
      currency,
      needed: true,
    },
    {
      path: "discountPerYearPercent",
      label: "Money must earn in a year",
      control: "number",
      unit: "%",
      needed: true,
    },
    {
      path: "deadlineWeeks",
      label: "Give up waiting after",
      why: "Empty: never.",
      control: "number",
      unit: "weeks",
      empty: null,
    },
    {
      path: "unseenPartWeeks",
      label: "A missing part turns up once in",
      why: "Counts until your log of listings tells better.",
      control: "number",
      unit: "weeks",
      needed: true,
    },
    {
      path: "unpricedPartPercent",
      label: "A missing part costs",
      why: "Of what the club sells for, where no price of such a part is known.",
      control: "number",
      unit: "%",
      needed: true,
    },
    {
      path: "leastOfferPercent",
      label: "Offer no less than",
      why: "Of the price asked. What is worth less to you is left.",
      control: "number",
      unit: "%",
      needed: true,
    },
    {
      path: "leastOfferInvitedPercent",
      label: "Where offers are invited, no less than",
      control: "number",
      unit: "%",
      needed: true,
    },
    {
      path: "farUnderPercent",
      label: "A price is far too low under",
      why: "Of the low end of what its like went for. Ferrule then says to look twice.",
      control: "number",
      unit: "%",
      needed: true,
    },
  ],
  opened: (costs) => ({ ...costs, mostLossPercent: Number((costs.mostLossChance * 100).toFixed(6)) }),
  closed: ({ mostLossPercent, ...record }) => ({ ...record, mostLossChance: Number(mostLossPercent) / 100 }),
};

const fetching: CostSection = {
  id: "fetching",
  title: "Fetching things",
  fields: ({ currency }) => [
    { path: "perKmMinor", label: "A kilometre costs", control: "minor", currency, needed: true },
    { path: "minutesPerKm", label: "A kilometre takes", control: "number", unit: "min", needed: true },
  ],
  ...asItIs,
};

const selling: CostSection = {
  id: "selling",
  title: "Selling and sending",
  fields: ({ currency, feeTables }) => [
    {
      path: "sellsBy",
      label: "You sell by",
      control: "choice",
      choices: Object.fromEntries(feeTables.map(({ id, name }) => [id, name])),
    },
    {
      path: "saleMinutes",
      label: "One sale takes",
      why: "Looking over, pictures, words, packing.",
      control: "number",
      unit: "min",
      needed: true,
    },
    { path: "packagingMinor", label: "Packaging for one parcel", control: "minor", currency, needed: true },
    {
      path: "buyerPaysPostage",
      label: "Who pays the postage",
      control: "choice",
      choices: { yes: "The buyer, on top", no: "It is in the price" },
    },
  ],
  opened: (costs) => ({ ...costs, buyerPaysPostage: costs.buyerPaysPostage ? "yes" : "no" }),
  closed: ({ buyerPaysPostage, ...record }) => ({ ...record, buyerPaysPostage: buyerPaysPostage === "yes" }),
};

const factor = (path: string, label: string): RecordField => ({
  path: `adjustments.${path}`,
  label,
  control: "number",
  needed: true,
});
const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

const adjusting: CostSection = {
  id: "adjusting",
  title: "What changes a price",
  why: "As a factor: 0.8 is a fifth less. The seasons are against the mean of the year. Where there are prices enough, they may move these figures.",
  folded: true,
  fields: () => [
    factor("asNew", "As new, against good"),
    factor("fair", "Fair, against good"),
    factor("poor", "Poor, against good"),
    factor("noCover", "Without its head cover"),
    factor("noWrench", "Without its wrench"),
    factor("askedOverSold", "Asked, against paid"),
    {
      path: "adjustments.fit",
      label: "May prices move these",
      control: "choice",
      choices: { yes: "Yes, with enough of them", no: "No, keep mine" },
    },
    ...months.map((month, at) => factor(`season.${at}`, month)),
  ],
  opened: ({ adjustments }) => ({ adjustments: { ...adjustments, fit: adjustments.fit ? "yes" : "no" } }),
  closed: (record) => {
    const { season, fit, ...rest } = record["adjustments"] as Record<string, unknown>;
    const adjustments = { ...rest, season: Object.values(season as object), fit: fit === "yes" };
    return { adjustments: adjustments as unknown as CostSettings["adjustments"] };
  },
};

const working: CostSection = {
  id: "working",
  title: "Your own figures for the work",
  why: "Left empty, the tool's own figure for the step holds.",
  folded: true,
  fields: ({ currency, work }) =>
    [...new Set([...Object.keys(stepWords), ...Object.keys(work)])].flatMap((step): RecordField[] => [
      {
        path: `work.${step}.minutes`,
        label: `${stepWords[step] ?? step}: time`,
        control: "number",
        unit: "min",
      },
      {
        path: `work.${step}.costMinor`,
        label: `${stepWords[step] ?? step}: materials`,
        control: "minor",
        currency,
      },
    ]),
  opened: (costs) => costs,
  closed: (record) => ({ work: (record["work"] ?? {}) as CostSettings["work"] }),
};

const exchanging: CostSection = {
  id: "exchanging",
  title: "Currencies",
  why: "The books and every verdict are in one currency. Another one counts at the rate typed in here.",
  fields: ({ currency }) => [
    {
      path: "currency",
      label: "The bench's currency",
      why: "Three letters, such as EUR.",
      control: "text",
      needed: true,
    },
    {
      path: "rates",
      label: `What one of another is worth in ${currency}`,
      control: "lines",
      example: "GBP 1.17",
      empty: [],
      write: (value) => rateLines(value as Record<string, number>),
      read: ratesFromLines,
    },
  ],
  opened: (costs) => costs,
  closed: ({ currency, rates }) => ({
    currency: String(currency).toUpperCase(),
    rates: (Array.isArray(rates) ? {} : rates) as CostSettings["rates"],
  }),
};

/** The settings about money, in the order in which they decide. */
export const costSections: readonly CostSection[] = [deal, fetching, selling, exchanging, adjusting, working];
