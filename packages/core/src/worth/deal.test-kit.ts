import { emptyItem } from "../listing/empty-item.ts";
import type { Listing, ListingItem } from "../listing/listing.ts";
import type { CostSettings } from "./cost-settings.ts";
import { plainAdjustments } from "./resale.test-kit.ts";
import type { Resale } from "./resale.ts";
import type { Sale } from "./sale.ts";

/** An item of which the words say nothing but what it is. */
export function anItem(other: Partial<ListingItem> = {}): ListingItem {
  return { ...emptyItem("head"), ...other };
}

export function aListing(items: readonly ListingItem[], other: Partial<Listing> = {}): Listing {
  return {
    intent: "sell",
    asking: null,
    negotiable: null,
    postage: "included",
    items: [...items],
    spans: [],
    doubts: [],
    ...other,
  };
}

export const euros = (amountMinor: number) => ({ amountMinor, currency: "EUR" });

/** Costs of round figures: a tenth to the place that sells, an hour at 12, nothing for waiting. */
export const plainCosts: CostSettings = {
  currency: "EUR",
  rates: { USD: 0.9 },
  hourValueMinor: 1200,
  leastNetMinor: 500,
  mostLossChance: 0.3,
  feeTables: [
    {
      id: "tenth",
      name: "a place that takes a tenth",
      listingMinor: 0,
      tiers: [{ upToMinor: null, percent: 10 }],
      fixedMinor: 0,
      capMinor: null,
      onPostage: false,
      paymentPercent: 0,
      paymentFixedMinor: 0,
      cashOutPercent: 0,
    },
  ],
  sellsBy: "tenth",
  services: [
    {
      id: "parcel",
      name: "parcel by post",
      priceMinor: 700,
      maxMassG: 2000,
      maxLengthCm: 105,
      maxLengthPlusGirthCm: null,
      maxLengthPlusTwoDiametersCm: null,
      maxVolumeM3: null,
      kgPerM3: null,
    },
  ],
  parcels: {
    head: { shape: "box", lengthCm: 20, widthCm: 15, heightCm: 15, massG: 400 },
    club: { shape: "box", lengthCm: 120, widthCm: 15, heightCm: 15, massG: 900 },
    grip: { shape: "box", lengthCm: 30, widthCm: 5, heightCm: 5, massG: 100 },
  },
  packagingMinor: 100,
  buyerPaysPostage: true,
  perKmMinor: 30,
  minutesPerKm: 1.5,
  work: {},
  saleMinutes: 10,
  holdingPerWeekMinor: 0,
  discountPerYearPercent: 0,
  deadlineWeeks: null,
  leastOfferPercent: 60,
  leastOfferInvitedPercent: 40,
  farUnderPercent: 60,
  unpricedPartPercent: 30,
  unseenPartWeeks: 8,
  adjustments: plainAdjustments,
};

/** What a thing would sell for, made up. */
export function aResale(valueMinor: number, lowMinor = valueMinor, highMinor = valueMinor): Resale {
  return {
    known: true,
    currency: "EUR",
    valueMinor,
    lowMinor,
    highMinor,
    sigmaLog: 0.2,
    daysToSell: { value: 10, low: 2, high: 40 },
    effectiveCount: 1,
    basis: [],
    adjustments: [],
  };
}

export function aSale(value: number, low = value, high = value, resale = aResale(value)): Sale {
  return {
    title: "a thing",
    resale,
    gain: { value, low, high },
    minutes: 10,
    days: { value: 10, low: 2, high: 40 },
    listingFeeMinor: 0,
    lines: [{ code: "sale", text: "sale of a thing", amountMinor: Math.round(value) }],
  };
}
