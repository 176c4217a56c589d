import type { Listing } from "../listing/listing.ts";
import type { Part, PartKind } from "../parts/part.ts";
import { askingOf } from "../worth/asking-of.ts";
import { convertedMinor } from "../worth/converted.ts";
import { gettingHere } from "../worth/getting-here.ts";
import { countingIds, partsOfListing } from "../worth/parts-of-listing.ts";
import type { Sighting } from "../worth/sighting.ts";
import type { PlanInput } from "./plan-input.ts";
import type { PlanTrip } from "./plan-model.ts";
import type { StockBundle } from "./stock.ts";

/** A listing that can be bought today. */
export interface Offer extends StockBundle {
  readonly sighting: Sighting;
  readonly priceMinor: number;
  readonly trip: PlanTrip | undefined;
}

/** A listing that is left out of the plan, and why. */
export interface LeftOut {
  readonly sighting: string;
  readonly code: "no-price" | "no-rate" | "not-for-sale" | "nothing-read" | "no-distance";
  readonly text: string;
}

/** Every open listing as an offer, or with the reason why it cannot be one. */
export function offersOf(input: PlanInput): {
  readonly offers: readonly Offer[];
  readonly leftOut: readonly LeftOut[];
} {
  const offers: Offer[] = [];
  const leftOut: LeftOut[] = [];
  for (const sighting of input.sightings) {
    if (sighting.outcome !== "open") continue;
    const made = offerOf(sighting, input);
    if ("code" in made) leftOut.push(made);
    else offers.push(made);
  }
  return { offers, leftOut };
}

function offerOf(sighting: Sighting, { catalogue, costs }: PlanInput): Offer | LeftOut {
  const { listing, id } = sighting;
  const out = (code: LeftOut["code"], text: string): LeftOut => ({ sighting: id, code, text });
  if (listing.items.length === 0) return out("nothing-read", "nothing to buy was found in the words");
  if (listing.intent === "wanted" || listing.intent === "swap")
    return out("not-for-sale", "it is not offered for money");
  const asking = askingOf(listing);
  if (!asking) return out("no-price", "no price is asked");
  const askingMinor = convertedMinor(asking, costs);
  if (askingMinor === undefined) return out("no-rate", `no rate is known for ${asking.currency}`);
  const here = gettingHere({ listing, costs, ...distanceOf(sighting) });
  if (here.isOpen) return out("no-distance", "it has to be fetched, and nobody knows how far it is");
  const { parts, joints } = partsOfListing(listing, catalogue, offerIds(id));
  const isFetched = here.minutes > 0;
  return {
    id,
    sighting,
    parts,
    joints,
    priceMinor: askingMinor + (isFetched ? 0 : here.moneyMinor),
    trip: isFetched
      ? {
          id: placeOf(sighting),
          moneyMinor: here.moneyMinor,
          minutes: here.minutes,
          timeMinor: here.totalMinor - here.moneyMinor,
        }
      : undefined,
  };
}

const distanceOf = ({ roundTripKm }: Sighting) => (roundTripKm === undefined ? {} : { roundTripKm });

/** Listings at one place are fetched on one drive; without a named place each is a place of its own. */
const placeOf = ({ place, id }: Sighting) => place?.trim().toLowerCase() || `place of ${id}`;

function offerIds(id: string): (kind: PartKind) => string {
  return countingIds(`offer-${id}`);
}

/** The parts of all offers, for asking what they go with. */
export function partsOfOffers(offers: readonly Offer[]): {
  parts: Part[];
  joints: StockBundle["joints"][number][];
} {
  return {
    parts: offers.flatMap(({ parts }) => [...parts]),
    joints: offers.flatMap(({ joints }) => [...joints]),
  };
}

/** A listing in which nothing is offered: the bench is judged by itself. */
export const emptyListing: Listing = {
  intent: null,
  asking: null,
  negotiable: null,
  postage: null,
  items: [],
  spans: [],
  doubts: [],
};
