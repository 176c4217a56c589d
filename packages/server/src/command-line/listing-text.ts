import { type Listing, titleOfItem } from "@ferrule/core";
import { columns } from "./columns.ts";
import { moneyText } from "./money-text.ts";
import { wrapped } from "./wrapped.ts";

export interface ReadListing {
  readonly from: string;
  readonly listing: Listing;
}

const intentWords = { sell: "For sale", wanted: "Wanted", swap: "To swap" } as const;
const postageWords = {
  included: "postage included",
  extra: "postage extra, not said how much",
  "collection-only": "collection only",
} as const;

/** What was read from a listing: what is offered, then every fact beside the words that say it. */
export function listingText({ from, listing }: ReadListing, isNamed: boolean, width: number): string {
  return [
    ...(isNamed ? [`${from}:`] : []),
    ...wrapped(termsText(listing), { width }),
    ...listing.items.flatMap((item, at) =>
      wrapped(titleOfItem(item), { width, first: `  ${at}  `, rest: "     " }),
    ),
    ...(listing.items.length === 0 ? ["  Nothing that could be bought was made out."] : []),
    ...(listing.spans.length === 0 ? [] : ["", factColumns(listing, width)]),
    ...doubtLines(listing, width),
  ].join("\n");
}

/** "For sale at 48.00 EUR, open to offers, postage 6.00 EUR". */
export function termsText({ intent, asking, negotiable, postage }: Listing): string {
  const what = intent === null ? "Not said whether it is for sale" : intentWords[intent];
  const price = asking ? `${intent === "sell" ? " at" : ","} ${moneyText(asking)}` : ", no price";
  const offers = negotiable === null ? "" : negotiable ? ", open to offers" : ", no offers";
  const sent = postage === null ? "" : `, ${postageText(postage)}`;
  return `${what}${price}${offers}${sent}`;
}

function postageText(postage: NonNullable<Listing["postage"]>): string {
  return typeof postage === "string" ? postageWords[postage] : `postage ${moneyText(postage)}`;
}

function factColumns(listing: Listing, width: number): string {
  const rows = listing.spans.map(({ field, words }) => [
    field,
    valueText(listing, field),
    JSON.stringify(words),
  ]);
  return columns({ header: ["FACT", "READ AS", "FROM THE WORDS"], rows, indent: 2, width });
}

/** A fault's own name ends its field; any other field is looked up. */
function valueText(listing: Listing, field: string): string {
  const [, list, name] = /\.(faults|deniedFaults)\.([a-z-]+)$/.exec(field) ?? [];
  if (name !== undefined) return list === "faults" ? name : `no ${name}`;
  return shown(field.split(".").reduce<unknown>((value, step) => partOf(value, step), listing));
}

const partOf = (value: unknown, step: string) =>
  typeof value === "object" && value !== null ? (value as Record<string, unknown>)[step] : undefined;

function shown(value: unknown): string {
  if (value === null || value === undefined) return "";
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value !== "object") return String(value);
  if ("amountMinor" in value) return moneyText(value as { amountMinor: number; currency: string });
  return Object.values(value)
    .filter((one) => one !== null)
    .map(shown)
    .join(" ");
}

function doubtLines({ doubts }: Listing, width: number): string[] {
  if (doubts.length === 0) return [];
  return [
    "",
    "Not sure:",
    ...doubts.flatMap(({ text }) => wrapped(text, { width, first: "  - ", rest: "    " })),
  ];
}
