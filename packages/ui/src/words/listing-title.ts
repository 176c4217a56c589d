import type { Listing, ListingItem } from "@ferrule/core";
import { itemKindWords } from "./item-words.ts";
import { clubTypeWords } from "./part-words.ts";

/** What an item is called: "2 × Northmoor Ombrel driver head". */
export function itemTitle(item: ListingItem): string {
  const name = [item.maker, item.model].filter(Boolean).join(" ");
  const type = item.clubType ? clubTypeWords[item.clubType] : "";
  const number = item.clubType === "driver" || item.clubType === "putter" ? "" : item.clubNumber;
  const kind = item.kind === "club" && type !== "" ? "" : itemKindWords[item.kind];
  const what = lowerAfter(name, [type, number, kind].filter(Boolean).join(" "));
  const isSaid = name.toLowerCase().endsWith(` ${what}`);
  return `${item.quantity > 1 ? `${item.quantity} × ` : ""}${[name, isSaid ? "" : what].filter(Boolean).join(" ")}`;
}

/** "Driver Head" is "Driver head" by itself and "driver head" after a name; numbers such as PW stay as they are. */
function lowerAfter(name: string, what: string): string {
  const lower = what.replace(/\b[A-Z][a-z]+/g, (word) => word.toLowerCase());
  return name === "" ? lower.charAt(0).toUpperCase() + lower.slice(1) : lower;
}

/** A listing in a line: what it offers, else how it begins. */
export function listingTitle(listing: Listing, text: string): string {
  const [first, second, ...rest] = listing.items.map(itemTitle);
  if (first === undefined) return firstWords(text);
  const more = rest.length > 0 ? ` and ${rest.length} more` : "";
  return second === undefined ? first : `${first}, ${second}${more}`;
}

function firstWords(text: string): string {
  const line = text.trim().replace(/\s+/g, " ");
  return line.length > 60 ? `${line.slice(0, 57)} …` : line || "A listing without words";
}
