import {
  type Entry,
  entriesOfPurchase,
  entryPartsMax,
  type Joint,
  type Listing,
  type ListingParts,
  type Money,
  type Part,
  partsOfListing,
  type Refusal,
  type Sighting,
  tripCost,
} from "@ferrule/core";
import { namedParts } from "../bench/named-parts.ts";
import { newId } from "../bench/new-id.ts";
import { rateRefusals } from "../bench/rates.ts";
import { done, type Outcome, problem } from "../errors.ts";
import type { Tables } from "../store/tables.ts";
import { expectationOf, type Market } from "./expectation.ts";
import { writeEntries } from "./write-entries.ts";

export interface BuyRequest {
  readonly paid: Money;
  readonly rate?: number;
  readonly on: string;
  /** Which items of the listing, by their place in it; all that have not been bought yet where left out. */
  readonly items?: readonly number[];
  readonly roundTripKm?: number;
  readonly minutes?: number;
  readonly postage?: Money;
}

export interface Bought {
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly entries: readonly Entry[];
  readonly sighting: Sighting;
}

/**
 * Puts what was bought of a sighting's listing on the bench and in the books, all of it or nothing; one undo takes it back.
 * What was paid is shared by the items' own prices where each has one, else evenly over the parts, and no minor unit is lost.
 */
export function buyListing(tables: Tables, market: Market, id: string, request: BuyRequest): Outcome<Bought> {
  return tables.together(
    () => {
      const sighting = tables.sightings.get(id)?.value;
      if (sighting === undefined) return problem("not-found", `There is no sighting "${id}" in the log`);
      const before = boughtBefore(tables, sighting);
      if (before.size > 0 && before.size >= sighting.listing.items.length) return problem("already-bought");
      const places = request.items ?? placesOf(sighting.listing).filter((place) => !before.has(place));
      const again = againRefusals(places, before);
      if (again.length > 0)
        return problem("already-bought", "Some of these things have been bought already", again);
      const listing = boughtOf(sighting.listing, places);
      const refusals = [
        ...intentRefusals(sighting.listing),
        ...itemRefusals(sighting.listing, request.items),
        ...sizeRefusals(listing, market),
        ...moneyRefusals(request, market),
      ];
      if (refusals.length > 0) return problem("bad-request", "The purchase was not taken", refusals);
      return done(
        takeOver(tables, market, sighting, { ...request, listing, bought: [...before, ...places] }),
      );
    },
    { what: "listing-bought" },
  );
}

const placesOf = ({ items }: Listing) => items.map((_item, place) => place);

/**
 * The items that have been bought, whatever has been made of the outcome since. A sighting that does not say which, but that
 * the books have a purchase of, was bought whole.
 */
function boughtBefore(tables: Tables, { id, listing, outcome, boughtItems }: Sighting): ReadonlySet<number> {
  if (boughtItems !== undefined && outcome !== "bought") return new Set(boughtItems);
  const isInBooks = () =>
    tables.entries.all().some(({ value }) => value.type === "buy" && value.sighting === id);
  return new Set(outcome === "bought" || isInBooks() ? placesOf(listing) : []);
}

function againRefusals(places: readonly number[], before: ReadonlySet<number>): Refusal[] {
  return places.flatMap((place, at) =>
    before.has(place)
      ? [
          {
            field: `items.${at}`,
            got: `${place}, bought already`,
            expected: "an item that has not been bought",
          },
        ]
      : [],
  );
}

function intentRefusals({ intent }: Listing): Refusal[] {
  if (intent !== "wanted") return [];
  const got = "the words of somebody who is looking for it";
  return [{ field: "listing.intent", got, expected: "a listing in which something is for sale" }];
}

function boughtOf(listing: Listing, places: readonly number[]): Listing {
  return { ...listing, items: listing.items.filter((_item, at) => places.includes(at)) };
}

function itemRefusals({ items }: Listing, chosen: BuyRequest["items"]): Refusal[] {
  if (items.length === 0)
    return [{ field: "items", got: "a listing without items", expected: "a listing that offers something" }];
  const expected = `places in the listing, each once, from 0 to ${items.length - 1}`;
  if (chosen?.length === 0) return [{ field: "items", got: "none", expected }];
  return (chosen ?? []).flatMap((place, at) =>
    place < items.length && chosen?.indexOf(place) === at
      ? []
      : [{ field: `items.${at}`, got: String(place), expected }],
  );
}

/** All of a purchase is one line of the books, which holds so many parts and no more. */
function sizeRefusals({ items, ...rest }: Listing, { catalogue }: Market): Refusal[] {
  const oneOfEach = { ...rest, items: items.map((item) => ({ ...item, quantity: 1 })) };
  const ofItem = [...partsOfListing(oneOfEach, catalogue).itemOf.values()];
  const count = ofItem.reduce((sum, at) => sum + (items[at]?.quantity ?? 0), 0);
  if (count <= entryPartsMax) return [];
  const expected = `${entryPartsMax} parts or fewer: buy it in several goes, or put fewer of it in the listing`;
  return [{ field: "items", got: `${count} parts`, expected }];
}

function moneyRefusals({ paid, rate, postage }: BuyRequest, { costs }: Market): Refusal[] {
  const postageRate = postage?.currency === paid.currency ? rate : undefined;
  return [
    ...rateRefusals(paid.currency, rate, costs),
    ...(postage ? rateRefusals(postage.currency, postageRate, costs, "postage.currency") : []),
  ];
}

/** A purchase that nothing speaks against: what is bought now, and the places of all that have been bought with it. */
interface Purchase extends BuyRequest {
  readonly listing: Listing;
  readonly bought: readonly number[];
}

function takeOver(
  tables: Tables,
  market: Market,
  sighting: Sighting,
  { listing, bought: boughtItems, ...request }: Purchase,
): Bought {
  const { on } = request;
  const drafts = draftsOf(tables, market, listing);
  const purchase = { ...request, ...tripOf(request, market), sighting: sighting.id };
  const { entries, paidPerPart } = entriesOfPurchase(
    {
      ...purchase,
      partIds: drafts.parts.map(({ id }) => id),
      weights: weightsOf(listing, drafts),
      expected: drafts.things.flat().length === 1 ? expectationOf(drafts.parts, market) : undefined,
    },
    market.costs,
  );
  const paidFor = new Map(paidPerPart.map(({ part, share }) => [part, share]));
  const parts = drafts.parts.map((part) => ({ ...part, paid: paidFor.get(part.id), acquiredOn: on }));
  for (const part of parts) tables.parts.insert(part);
  const joints = drafts.joints.map((joint) => insertJoint(tables, joint));
  const written = writeEntries(tables, entries);
  const bought = afterPurchase(
    tables,
    sighting,
    [...boughtItems].sort((a, b) => a - b),
    on,
  );
  tables.sightings.replace(sighting.id, bought);
  tables.deletions.push({
    added: { parts: ids(parts), joints: ids(joints), entries: ids(written) },
    changed: { sightings: [{ id: sighting.id, fields: outcomeOf(sighting) }] },
  });
  return { parts, joints, entries: written, sighting: bought };
}

/** What becomes of a sighting: it is open for the rest, and bought when all of it is, for what all its purchases came to. */
function afterPurchase(tables: Tables, sighting: Sighting, boughtItems: number[], on: string): Sighting {
  if (boughtItems.length < sighting.listing.items.length)
    return { ...sighting, outcome: "open", boughtItems };
  const { outcomePrice: _before, ...rest } = sighting;
  const paid = tables.entries
    .all()
    .flatMap(({ value }) => (value.type === "buy" && value.sighting === sighting.id ? value.amount : []));
  const [first] = paid;
  const isOneCurrency = paid.every(({ currency }) => currency === first?.currency);
  const amountMinor = Math.abs(paid.reduce((sum, each) => sum + each.amountMinor, 0));
  const price = first && isOneCurrency ? { outcomePrice: { ...first, amountMinor } } : {};
  return { ...rest, outcome: "bought", outcomeOn: on, boughtItems, ...price };
}

/** The parts under ids that the bench has free and that the books do not name. */
function draftsOf(tables: Tables, { catalogue }: Market, listing: Listing): ListingParts {
  const given = new Set(namedParts(tables));
  const idFor = (kind: Part["kind"]) => {
    const id = newId(kind, (taken) => given.has(taken) || tables.parts.get(taken) !== undefined);
    given.add(id);
    return id;
  };
  return partsOfListing(listing, catalogue, idFor, ({ quantity }) => quantity);
}

/** The minutes of a trip go by its distance where nobody says. */
function tripOf({ roundTripKm, minutes }: BuyRequest, { costs }: Market): Pick<BuyRequest, "minutes"> {
  if (roundTripKm === undefined || minutes !== undefined) return { minutes };
  return { minutes: tripCost({ roundTripKm }, costs).minutes };
}

/** Each part's weight: its share of its item's price where every item is priced apart; else all parts weigh alike. */
function weightsOf({ items }: Listing, { parts, itemOf }: ListingParts): number[] | undefined {
  const counts = new Map<number, number>();
  for (const { id } of parts) {
    const item = itemOf.get(id) as number;
    counts.set(item, (counts.get(item) ?? 0) + 1);
  }
  const prices = items.map(({ price, quantity }) => (price ? price.amountMinor * quantity : undefined));
  const currencies = new Set(items.map(({ price }) => price?.currency));
  if (prices.includes(undefined) || currencies.size > 1) return undefined;
  return parts.map(({ id }) => {
    const item = itemOf.get(id) as number;
    return (prices[item] as number) / (counts.get(item) as number);
  });
}

function insertJoint(tables: Tables, joint: Joint): Joint & { id: string } {
  const named = { ...joint, id: newId("joint", (taken) => tables.joints.get(taken) !== undefined) };
  tables.joints.insert(named);
  return named;
}

function outcomeOf({ outcome, outcomeOn, outcomePrice, boughtItems }: Sighting) {
  return {
    outcome,
    outcomeOn: outcomeOn ?? null,
    outcomePrice: outcomePrice ?? null,
    boughtItems: boughtItems ?? null,
  };
}

function ids(things: readonly { readonly id?: string }[]): string[] {
  return things.map(({ id }) => id as string);
}
