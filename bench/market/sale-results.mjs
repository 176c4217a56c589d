import { feesOn, postageFor } from "../../packages/core/dist/index.js";
import { adapterPrice, clubPrice, headPrice, shaftPrice } from "./class-prices.mjs";

/** From one sale to the next of the same thing; and how long a sale takes. From memory, no published source. */
const priceSpread = 0.15;
const daysMiddle = { club: 14, head: 16, shaft: 18, adapter: 12 };
const daysSpread = 0.8;

/** What a thing is sold as, and whose luck its sale has: of a club and a head the head's. */
export function saleKind({ head, shaft }) {
  if (head && shaft) return "club";
  return head ? "head" : shaft ? "shaft" : "adapter";
}

/** What a thing, put up for sale, will bring and when, whoever sells it; nothing where it must not be sold. */
export function saleResult(thing, costs) {
  const { head, shaft, adapter } = thing;
  const kind = saleKind(thing);
  const level = {
    club: () => clubPrice(head, shaft),
    head: () => headPrice(head),
    shaft: () => shaftPrice(shaft, adapter !== undefined),
    adapter: adapterPrice,
  }[kind]();
  if (level === 0) return undefined;
  const { luck } = head ?? shaft ?? adapter;
  const priceMinor = Math.round(level * Math.exp(priceSpread * luck.price));
  const days = Math.max(1, Math.round(daysMiddle[kind] * Math.exp(daysSpread * luck.days)));
  return { kind, priceMinor, days, leftMinor: priceMinor - costOfSale(kind, priceMinor, costs) };
}

/** Fees and packaging: the buyer pays the postage, on which the fee is taken too. */
function costOfSale(kind, priceMinor, costs) {
  const table = costs.feeTables.find(({ id }) => id === costs.sellsBy);
  const postageMinor = postageFor(costs.parcels[kind], costs.services).priceMinor;
  return feesOn(priceMinor, postageMinor, table).totalMinor + costs.packagingMinor;
}
