import type { PartKind } from "../parts/part.ts";
import { askingOf } from "../worth/asking-of.ts";
import { convertedMinor } from "../worth/converted.ts";
import { gettingHere } from "../worth/getting-here.ts";
import { countingIds, type ListingParts, partsOfListing } from "../worth/parts-of-listing.ts";
import type { Sighting } from "../worth/sighting.ts";
import { leftOfListing } from "./left-of-listing.ts";
import type { PlanInput } from "./plan-input.ts";
import type { PlanTrip } from "./plan-model.ts";
import type { StockBundle } from "./stock.ts";

/** A listing that can be bought today, or what is left of it. */
export interface Offer extends StockBundle {
  /** With the listing as it is left. */
  readonly sighting: Sighting;
  readonly priceMinor: number;
  readonly trip: PlanTrip | undefined;
  /** For each item, the things of it that are sold as one: the ids of their parts. */
  readonly things: ListingParts["things"];
}

/** A listing that is left out of the plan, and why. */
export interface LeftOut {
  readonly sighting: string;
  readonly code: "no-price" | "no-rate" | "not-for-sale" | "nothing-read" | "nothing-left" | "no-distance";
  readonly text: string;
}

/** Every open listing as an offer, or with the reason why it cannot be one. */
export function offersOf(input: PlanInput): {
  readonly offers: readonly Offer[];
  readonly leftOut: readonly LeftOut[];
} {
  const offers: Offer[] = [];
  const leftOut: LeftOut[] = [];
  const taken = new Set(input.bench.parts.map(({ id }) => id));
  for (const sighting of input.sightings) {
    if (sighting.outcome !== "open") continue;
    const made = offerOf(sighting, taken, input);
    if ("code" in made) leftOut.push(made);
    else offers.push(made);
  }
  return { offers, leftOut };
}

function offerOf(
  seen: Sighting,
  taken: ReadonlySet<string>,
  { catalogue, costs }: PlanInput,
): Offer | LeftOut {
  const { id } = seen;
  const listing = leftOfListing(seen);
  const sighting = { ...seen, listing };
  const out = (code: LeftOut["code"], text: string): LeftOut => ({ sighting: id, code, text });
  if (seen.listing.items.length === 0) return out("nothing-read", "nothing to buy was found in the words");
  if (listing.items.length === 0) return out("nothing-left", "all of it has been bought");
  if (listing.intent === "wanted" || listing.intent === "swap")
    return out("not-for-sale", "it is not offered for money");
  const asking = askingOf(listing);
  if (!asking)
    return out(
      "no-price",
      listing === seen.listing ? "no price is asked" : "what is left of it has no price",
    );
  const askingMinor = convertedMinor(asking, costs);
  if (askingMinor === undefined) return out("no-rate", `no rate is known for ${asking.currency}`);
  const here = gettingHere({ listing, costs, ...distanceOf(sighting) });
  if (here.isOpen) return out("no-distance", "it has to be fetched, and nobody knows how far it is");
  const { parts, joints, things } = partsOfListing(listing, catalogue, offerIds(id, taken));
  const isFetched = here.minutes > 0;
  return {
    id,
    sighting,
    parts,
    joints,
    things,
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

/** Names for a listing's parts that nothing on the bench has. */
function offerIds(id: string, taken: ReadonlySet<string>): (kind: PartKind) => string {
  const next = countingIds(`offer-${id}`);
  const free = (kind: PartKind): string => {
    const name = next(kind);
    return taken.has(name) ? free(kind) : name;
  };
  return free;
}

const titleMax = 80;

/** What a listing is called in a plan: the first line of its words, else its id. */
export function titleOfOffer({ id, sighting }: Offer): string {
  const line = sighting.text.split("\n").find((each) => each.trim() !== "");
  return line?.trim().slice(0, titleMax) ?? id;
}
