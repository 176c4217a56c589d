import type { Money, Sighting } from "@ferrule/core";
import { dayText } from "../format/today.ts";
import type { BuyRequest } from "../trade-api.ts";

/** What the purchase most likely was, by what the listing says: today, at what was asked, with the postage and the drive. */
export function likelyPurchase({ listing, roundTripKm }: Sighting): Partial<BuyRequest> {
  const paid = likelyPaid(listing);
  const postage =
    typeof listing.postage === "object" && listing.postage !== null ? listing.postage : undefined;
  return {
    on: dayText(new Date()),
    ...(paid && { paid }),
    ...(postage && { postage }),
    ...(roundTripKm !== undefined && { roundTripKm }),
  };
}

/** What was asked is the likeliest price that was paid. */
export function likelyPaid({ asking }: Sighting["listing"]): Money | undefined {
  return asking ?? undefined;
}
