import type { ListingItem } from "../listing/listing.ts";
import { convertedMinor } from "./converted.ts";
import type { CostSettings, Parcel } from "./cost-settings.ts";
import type { DealLine, DealQuestion } from "./deal.ts";
import type { DealInput } from "./deal-input.ts";
import { judgedCopies } from "./parts-of-listing.ts";
import { postageFor } from "./postage-quote.ts";
import { tripCost } from "./trip-cost.ts";

/** What it costs to get the things here, over their price. */
export interface GettingHere {
  readonly moneyMinor: number;
  readonly minutes: number;
  readonly totalMinor: number;
  readonly lines: readonly DealLine[];
  /** Whether there is a cost that only the user can tell: how far it is, or what a currency is worth. */
  readonly isOpen: boolean;
  readonly questions: readonly DealQuestion[];
  readonly notices: readonly string[];
}

const nothing: GettingHere = {
  moneyMinor: 0,
  minutes: 0,
  totalMinor: 0,
  lines: [],
  isOpen: false,
  questions: [],
  notices: [],
};

/** Postage where the words say it, the own rate for a parcel like it where they do not, and a drive where it has to be fetched. */
export function gettingHere({
  listing,
  costs,
  roundTripKm,
}: Pick<DealInput, "listing" | "costs" | "roundTripKm">): GettingHere {
  const { postage, items } = listing;
  if (postage === "included" || items.length === 0) return nothing;
  if (postage === "collection-only") return fetched(roundTripKm, costs);
  if (typeof postage === "object" && postage !== null) {
    const amountMinor = convertedMinor(postage, costs);
    if (amountMinor !== undefined) return posted(amountMinor, "postage, as said");
    const guess = guessedPostage(items, costs);
    return { ...(guess ?? nothing), isOpen: true, questions: [rateQuestion(postage.currency)] };
  }
  return postedOrFetched(postage === "extra", roundTripKm, items, costs);
}

/** The cheaper of posting it and fetching it, where both can be reckoned. */
function postedOrFetched(
  isPosted: boolean,
  roundTripKm: number | undefined,
  items: readonly ListingItem[],
  costs: CostSettings,
): GettingHere {
  const guess = guessedPostage(items, costs);
  const drive = roundTripKm === undefined ? undefined : fetched(roundTripKm, costs);
  if (drive && (!guess || drive.totalMinor < guess.totalMinor)) return drive;
  if (!guess) return { ...nothing, questions: [postageQuestion(0)], notices: [postageUnknown] };
  return isPosted ? guess : { ...guess, questions: [postageQuestion(guess.totalMinor)] };
}

function posted(amountMinor: number, text: string): GettingHere {
  const lines = amountMinor === 0 ? [] : [{ code: "postage-in", text, amountMinor: -amountMinor }];
  return { ...nothing, moneyMinor: amountMinor, totalMinor: amountMinor, lines };
}

const postageUnknown = "No postage is known for a parcel like this, so none is counted.";

/** By the own rates: all in one parcel where a service takes it, else each thing alone. Nothing where nobody sends one of them. */
function guessedPostage(items: readonly ListingItem[], costs: CostSettings): GettingHere | undefined {
  const parcels = items.flatMap((item) => {
    const parcel = costs.parcels[item.kind];
    return parcel ? [{ parcel, quantity: judgedCopies(item) }] : [];
  });
  if (parcels.length < items.length) return undefined;
  const together = postageFor(oneParcel(parcels), costs.services).priceMinor;
  const alone = parcels.map(({ parcel, quantity }) => {
    const { priceMinor } = postageFor(parcel, costs.services);
    return priceMinor === null ? Number.POSITIVE_INFINITY : priceMinor * quantity;
  });
  const aloneMinor = alone.reduce((sum, price) => sum + price, 0);
  const cheapest = Math.min(together ?? Number.POSITIVE_INFINITY, aloneMinor);
  return Number.isFinite(cheapest) ? posted(cheapest, "postage, taken from your own rates") : undefined;
}

interface Parcels {
  readonly parcel: Parcel;
  readonly quantity: number;
}

/** Everything laid on top of each other: as long and as wide as the greatest, as high and as heavy as all together. */
function oneParcel(parcels: readonly Parcels[]): Parcel {
  const [only] = parcels;
  if (only && parcels.length === 1 && only.quantity === 1) return only.parcel;
  const most = (pick: (parcel: Parcel) => number) => Math.max(...parcels.map(({ parcel }) => pick(parcel)));
  const all = (pick: (parcel: Parcel) => number) =>
    parcels.reduce((sum, { parcel, quantity }) => sum + pick(parcel) * quantity, 0);
  return {
    shape: "box",
    lengthCm: most(({ lengthCm }) => lengthCm),
    widthCm: most(({ widthCm }) => widthCm),
    heightCm: all(({ heightCm }) => heightCm),
    massG: all(({ massG }) => massG),
  };
}

function fetched(roundTripKm: number | undefined, costs: CostSettings): GettingHere {
  if (roundTripKm === undefined) return { ...nothing, isOpen: true, questions: [distanceQuestion] };
  const trip = tripCost({ roundTripKm }, costs);
  return {
    ...nothing,
    moneyMinor: trip.moneyMinor,
    minutes: trip.minutes,
    totalMinor: trip.totalMinor,
    lines: [
      { code: "trip", text: `a drive of ${roundTripKm} km there and back`, amountMinor: -trip.moneyMinor },
      { code: "trip-time", text: "own time on the road", amountMinor: -trip.timeMinor },
    ].filter(({ amountMinor }) => amountMinor !== 0),
  };
}

const distanceQuestion: DealQuestion = {
  to: "you",
  field: "roundTripKm",
  text: "It has to be fetched: how many kilometres is it there and back?",
  swingMinor: 0,
  decides: true,
};

/** Asked of the user when an amount is in a currency without a rate. */
export const rateQuestion = (currency: string): DealQuestion => ({
  to: "you",
  field: `rates.${currency}`,
  text: `What is one ${currency} worth? Type in the rate.`,
  swingMinor: 0,
  decides: true,
});

const postageQuestion = (swingMinor: number): DealQuestion => ({
  to: "seller",
  field: "postage",
  text: "Could you post it, and what would that cost?",
  swingMinor,
  decides: false,
});
