import type { Fault, Listing, ListingItem, Money, Postage } from "@ferrule/core";
import type { LengthUnit } from "../format/length.ts";
import { lengthInput } from "../format/length-input.ts";
import { moneyInput, parseMoney } from "../format/money.ts";
import { parseLength } from "../format/parse-length.ts";
import { parseNumber } from "../format/parse-number.ts";
import { faultWords } from "../words/part-words.ts";
import { type ItemField, itemControls } from "./item-fields.ts";

/** What stands in the controls of a listing, word for word, by the field's path: `items.0.loftDeg`, `items.0.length:basis`. */
export type ListingDraft = Readonly<Record<string, string>>;

/** How the page writes lengths and money where the words gave no currency. */
export interface Writing {
  readonly lengthUnit: LengthUnit;
  readonly currency: string;
}

/** The words that describe a listing. */
export function draftFromListing(listing: Listing, writing: Writing): ListingDraft {
  const draft: Record<string, string> = {
    intent: listing.intent ?? "",
    negotiable: yesNo(listing.negotiable),
    ...moneyWords("asking", listing.asking, writing),
    ...postageWords(listing.postage, writing),
  };
  listing.items.forEach((item, at) => {
    Object.assign(draft, itemWords(item, `items.${at}`, writing));
  });
  return draft;
}

function itemWords(item: ListingItem, at: string, writing: Writing): ListingDraft {
  const draft: Record<string, string> = {};
  for (const field of Object.keys(itemControls) as ItemField[])
    Object.assign(draft, fieldWords(item, field, `${at}.${field}`, writing));
  for (const fault of item.faults) draft[`${at}.faults.${fault}`] = "there";
  for (const fault of item.deniedFaults) draft[`${at}.faults.${fault}`] = "not-there";
  return draft;
}

function fieldWords(item: ListingItem, field: ItemField, path: string, writing: Writing): ListingDraft {
  switch (field) {
    case "length":
      return {
        [path]: item.length ? lengthInput(item.length.lengthIn, writing.lengthUnit) : "",
        [`${path}:basis`]: item.length?.basis ?? "unstated",
      };
    case "tip":
      return { [path]: String(item.tip?.diameterIn ?? ""), [`${path}:form`]: item.tip?.form ?? "" };
    case "price":
      return moneyWords(path, item.price, writing);
    case "cover":
    case "wrench":
      return { [path]: yesNo(item[field]) };
    default:
      return { [path]: String(item[field] ?? "") };
  }
}

function yesNo(value: boolean | null): string {
  return value === null ? "" : value ? "yes" : "no";
}

function moneyWords(path: string, money: Money | null, { currency }: Writing): ListingDraft {
  const used = money?.currency ?? currency;
  return { [path]: money ? moneyInput(money.amountMinor, used) : "", [`${path}:currency`]: used };
}

function postageWords(postage: Postage | null, writing: Writing): ListingDraft {
  const amount = typeof postage === "object" ? postage : null;
  const word = typeof postage === "string" ? postage : amount ? "amount" : "";
  return { postage: word, ...moneyWords("postage:amount", amount, writing) };
}

/**
 * The listing that the words describe. What cannot be read keeps what stood before, and is named in `slips` by its path, with
 * what was expected. Spans and doubts stay as they were.
 */
export function listingFromDraft(
  draft: ListingDraft,
  before: Listing,
  writing: Writing,
): { readonly listing: Listing; readonly slips: Readonly<Record<string, string>> } {
  const slips: Record<string, string> = {};
  const reader = new DraftReader(draft, slips, writing);
  const listing: Listing = {
    ...before,
    intent: reader.choice("intent") as Listing["intent"],
    asking: reader.money("asking", before.asking),
    negotiable: reader.yesNo("negotiable"),
    postage: reader.postage(before.postage),
    items: before.items.map((item, at) => reader.item(`items.${at}`, item)),
  };
  return { listing, slips };
}

/** Reads one draft, and collects what it could not read. */
class DraftReader {
  readonly #draft: ListingDraft;
  readonly #slips: Record<string, string>;
  readonly #writing: Writing;

  constructor(draft: ListingDraft, slips: Record<string, string>, writing: Writing) {
    this.#draft = draft;
    this.#slips = slips;
    this.#writing = writing;
  }

  choice(path: string): string | null {
    return this.#text(path) || null;
  }

  yesNo(path: string): boolean | null {
    const text = this.#text(path);
    return text === "" ? null : text === "yes";
  }

  money(path: string, before: Money | null): Money | null {
    const currency = this.#text(`${path}:currency`) || this.#writing.currency;
    const amountMinor = this.#read(
      path,
      before?.amountMinor ?? null,
      (text) => parseMoney(text, currency),
      "an amount, such as 45 or 45,50",
    );
    return amountMinor === null ? null : { amountMinor, currency };
  }

  postage(before: Postage | null): Postage | null {
    const word = this.#text("postage");
    if (word !== "amount") return (word || null) as Postage | null;
    return this.money("postage:amount", typeof before === "object" ? before : null) ?? "extra";
  }

  item(at: string, before: ListingItem): ListingItem {
    const number = (field: "year" | "loftDeg" | "shaftMassG", low: number, high: number) =>
      this.#number(`${at}.${field}`, before[field], low, high);
    return {
      ...before,
      kind: this.choice(`${at}.kind`) as ListingItem["kind"],
      quantity: this.#whole(`${at}.quantity`, before.quantity, 1, 999) ?? 1,
      maker: this.choice(`${at}.maker`),
      model: this.choice(`${at}.model`),
      modelId: this.choice(`${at}.modelId`),
      year: number("year", 1900, 2200),
      clubType: this.choice(`${at}.clubType`) as ListingItem["clubType"],
      clubNumber: this.choice(`${at}.clubNumber`),
      loftDeg: number("loftDeg", 0, 90),
      hand: this.choice(`${at}.hand`) as ListingItem["hand"],
      flex: this.choice(`${at}.flex`) as ListingItem["flex"],
      shaftMaterial: this.choice(`${at}.shaftMaterial`) as ListingItem["shaftMaterial"],
      shaftMassG: number("shaftMassG", 0, 400),
      length: this.#length(`${at}.length`, before.length),
      tip: this.#tip(`${at}.tip`, before.tip),
      adapter: this.choice(`${at}.adapter`) as ListingItem["adapter"],
      adapterFamily: this.choice(`${at}.adapterFamily`),
      cover: this.yesNo(`${at}.cover`),
      wrench: this.yesNo(`${at}.wrench`),
      faults: this.#faults(at, "there"),
      deniedFaults: this.#faults(at, "not-there"),
      price: this.money(`${at}.price`, before.price),
    };
  }

  #text(path: string): string {
    return this.#draft[path]?.trim() ?? "";
  }

  #read<T>(
    path: string,
    before: T | null,
    read: (text: string) => T | undefined,
    expected: string,
  ): T | null {
    const text = this.#text(path);
    if (text === "") return null;
    const value = read(text);
    if (value !== undefined) return value;
    this.#slips[path] = `Got "${text}", expected ${expected}.`;
    return before;
  }

  #number(path: string, before: number | null, low: number, high: number): number | null {
    const within = (text: string) => {
      const value = parseNumber(text);
      const isWhole = !path.endsWith(".year") || Number.isInteger(value);
      return value !== undefined && value > low && value <= high && isWhole ? value : undefined;
    };
    return this.#read(path, before, within, `a number up to ${high}`);
  }

  #whole(path: string, before: number, low: number, high: number): number | null {
    const within = (text: string) => {
      const value = parseNumber(text);
      return Number.isInteger(value) && Number(value) >= low && Number(value) <= high ? value : undefined;
    };
    return this.#read(path, before, within, `a whole number from ${low} to ${high}`);
  }

  #length(path: string, before: ListingItem["length"]): ListingItem["length"] {
    const read = (text: string) => within(parseLength(text, this.#writing.lengthUnit), 80);
    const lengthIn = this.#read(
      path,
      before?.lengthIn ?? null,
      read,
      "a length, such as 45, 45 1/4 or 115 cm",
    );
    const basis = (this.#text(`${path}:basis`) || "unstated") as NonNullable<ListingItem["length"]>["basis"];
    return lengthIn === null ? null : { lengthIn, basis };
  }

  #tip(path: string, before: ListingItem["tip"]): ListingItem["tip"] {
    const read = (text: string) => within(parseLength(text, "in"), 1);
    const diameterIn = this.#read(path, before?.diameterIn ?? null, read, "a tip, such as .335 or 8.5 mm");
    const form = this.choice(`${path}:form`) as NonNullable<ListingItem["tip"]>["form"];
    return diameterIn === null && form === null ? null : { diameterIn, form };
  }

  #faults(at: string, answer: string): Fault[] {
    return (Object.keys(faultWords) as Fault[]).filter(
      (fault) => this.#text(`${at}.faults.${fault}`) === answer,
    );
  }
}

function within(value: number | undefined, most: number): number | undefined {
  return value !== undefined && value > 0 && value <= most ? value : undefined;
}
