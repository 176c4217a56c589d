import type { ItemKind } from "../listing/catalogue.ts";
import type { CostSettings } from "./cost-settings.ts";
import type { DealLine } from "./deal.ts";
import { feesOn } from "./fee-bill.ts";
import { type Gain, sumOfAlikeGains } from "./gain.ts";
import { leastPostageMinor } from "./postage-quote.ts";
import type { Resale } from "./resale.ts";
import { timeMinor } from "./trip-cost.ts";

/** One thing sold: what is left of its price, how long that takes, and the sum line by line. */
export interface Sale {
  readonly title: string;
  /** What its price rests on. */
  readonly resale: Resale;
  readonly gain: Gain;
  readonly minutes: number;
  readonly days: Extract<Resale, { known: true }>["daysToSell"];
  readonly lines: readonly DealLine[];
  /** Paid whether it sells or not. */
  readonly listingFeeMinor: number;
}

/** A sale at its estimated price, fees, sending and the user's time taken off; nothing where nobody knows a price. */
export function saleOf(title: string, kind: ItemKind, resale: Resale, costs: CostSettings): Sale | undefined {
  if (!resale.known) return undefined;
  const table = costs.feeTables.find(({ id }) => id === costs.sellsBy);
  if (!table) throw new Error(`there is no fee table ${costs.sellsBy}`);
  const parcel = costs.parcels[kind];
  const sendingMinor = (parcel && leastPostageMinor(parcel, costs.services)) ?? 0;
  const paidByBuyer = costs.buyerPaysPostage ? sendingMinor : 0;
  const time = timeMinor(costs.saleMinutes, costs);
  const fees = (priceMinor: number) => feesOn(Math.max(0, priceMinor), paidByBuyer, table).totalMinor;
  const ownSending = sendingMinor - paidByBuyer + costs.packagingMinor;
  const net = (priceMinor: number) => priceMinor - fees(priceMinor) - ownSending - time;
  return {
    title,
    resale,
    gain: { value: net(resale.valueMinor), low: net(resale.lowMinor), high: net(resale.highMinor) },
    minutes: costs.saleMinutes,
    days: resale.daysToSell,
    listingFeeMinor: table.listingMinor,
    lines: [
      { code: "sale", text: `sale of ${title}`, amountMinor: resale.valueMinor },
      { code: "fees", text: `fees (${table.name})`, amountMinor: -fees(resale.valueMinor) },
      {
        code: "sending",
        text: "packaging and postage that the buyer does not pay",
        amountMinor: -ownSending,
      },
      { code: "sale-time", text: "own time to describe, sell and pack", amountMinor: -time },
    ].filter(({ amountMinor }) => amountMinor !== 0),
  };
}

/** What sales bring together. Those that rest on one estimate, such as three of one model, are wrong together. */
export function gainsOfSales(sales: readonly Sale[]): Gain[] {
  const alike = new Map<Resale, Gain[]>();
  for (const { resale, gain } of sales) alike.set(resale, [...(alike.get(resale) ?? []), gain]);
  return [...alike.values()].map(sumOfAlikeGains);
}

/** What costs more to sell than it brings is not sold. */
export const worthSelling = (sales: readonly Sale[]): Sale[] => sales.filter(({ gain }) => gain.value > 0);
