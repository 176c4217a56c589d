import type { ListingItem } from "../listing/listing.ts";
import { convertedMinor } from "./converted.ts";
import type { CostSettings } from "./cost-settings.ts";
import type { DealLine, DealQuestion } from "./deal.ts";
import type { DealInput } from "./deal-input.ts";
import { postageFor } from "./postage-quote.ts";
import { tripCost } from "./trip-cost.ts";

/** What it costs to get the things here, over their price. */
export interface GettingHere {
  readonly moneyMinor: number;
  readonly minutes: number;
  readonly totalMinor: number;
  readonly lines: readonly DealLine[];
  readonly questions: readonly DealQuestion[];
  readonly notices: readonly string[];
}

const nothing: GettingHere = {
  moneyMinor: 0,
  minutes: 0,
  totalMinor: 0,
  lines: [],
  questions: [],
  notices: [],
};

/** Postage where the words say it, the own rate for a parcel like it where they do not, and a drive where it has to be fetched. */
export function gettingHere({ listing, costs, roundTripKm }: DealInput): GettingHere {
  const { postage } = listing;
  if (postage === "included") return nothing;
  if (postage === "collection-only") return fetched(roundTripKm, costs);
  if (typeof postage === "object" && postage !== null) {
    const amountMinor = convertedMinor(postage, costs);
    return amountMinor === undefined
      ? { ...guessedPostage(listing.items, costs), questions: [rateQuestion(postage.currency)] }
      : posted(amountMinor, "postage, as said");
  }
  const guess = guessedPostage(listing.items, costs);
  const drive = roundTripKm === undefined ? undefined : fetched(roundTripKm, costs);
  if (drive && drive.totalMinor < guess.totalMinor) return drive;
  return postage === "extra" ? guess : { ...guess, questions: [postageQuestion(guess.totalMinor)] };
}

function posted(amountMinor: number, text: string): GettingHere {
  const lines = amountMinor === 0 ? [] : [{ code: "postage-in", text, amountMinor: -amountMinor }];
  return { ...nothing, moneyMinor: amountMinor, totalMinor: amountMinor, lines };
}

/** One parcel, of the largest thing. Something nobody sends costs nothing here, and says so. */
function guessedPostage(items: readonly ListingItem[], costs: CostSettings): GettingHere {
  const prices = items.flatMap(({ kind }) => {
    const parcel = costs.parcels[kind];
    return (parcel && postageFor(parcel, costs.services).priceMinor) ?? [];
  });
  const notices =
    prices.length === 0 && items.length > 0
      ? ["No postage is known for a parcel of this kind, so none is counted."]
      : [];
  return { ...posted(Math.max(0, ...prices), "postage, taken from your own rates"), notices };
}

function fetched(roundTripKm: number | undefined, costs: CostSettings): GettingHere {
  if (roundTripKm === undefined) return { ...nothing, questions: [distanceQuestion] };
  const trip = tripCost({ roundTripKm }, costs);
  return {
    moneyMinor: trip.moneyMinor,
    minutes: trip.minutes,
    totalMinor: trip.totalMinor,
    lines: [
      { code: "trip", text: `a drive of ${roundTripKm} km there and back`, amountMinor: -trip.moneyMinor },
      { code: "trip-time", text: "own time on the road", amountMinor: -trip.timeMinor },
    ].filter(({ amountMinor }) => amountMinor !== 0),
    questions: [],
    notices: [],
  };
}

const distanceQuestion: DealQuestion = {
  to: "you",
  field: "roundTripKm",
  text: "It has to be fetched: how many kilometres is it there and back?",
  swingMinor: 0,
  decides: false,
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
