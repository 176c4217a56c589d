import { percentOfMinor, roundMinor } from "../money.ts";
import type { FeeTable } from "./cost-settings.ts";

/** One fee, rounded once. A fee is positive here: it is what is paid. */
export interface FeeLine {
  readonly code: "listing" | "selling" | "payment" | "cash-out";
  readonly text: string;
  readonly amountMinor: number;
}

/** What one sale is charged, line by line, in whole minor units of the bench's currency. */
export interface FeeBill {
  /** Those that come to something. */
  readonly lines: readonly FeeLine[];
  readonly totalMinor: number;
  /** What is paid only when it sells: the total without the listing fee. */
  readonly soldOnlyMinor: number;
}

/**
 * What selling at this price through this place costs. Each line is worked out exactly and rounded once; drawing the money out
 * is charged on whole units, on what the buyer paid less the selling and payment fees (a listing fee is paid beforehand).
 */
export function feesOn(priceMinor: number, postageMinor: number, table: FeeTable): FeeBill {
  const takenMinor = priceMinor + postageMinor;
  const selling = sellingFee(table.onPostage ? takenMinor : priceMinor, table);
  const payment = roundMinor((takenMinor * table.paymentPercent) / 100 + table.paymentFixedMinor);
  const leftMinor = Math.max(0, takenMinor - selling - payment);
  const soldLines: FeeLine[] = [
    { code: "selling", text: `selling fee of ${table.name}`, amountMinor: selling },
    { code: "payment", text: "fee for taking the payment", amountMinor: payment },
    {
      code: "cash-out",
      text: "fee for drawing the money out",
      amountMinor: percentOfMinor(leftMinor, table.cashOutPercent),
    },
  ];
  const soldOnlyMinor = soldLines.reduce((sum, { amountMinor }) => sum + amountMinor, 0);
  const listing: FeeLine = {
    code: "listing",
    text: `listing fee of ${table.name}, sold or not`,
    amountMinor: table.listingMinor,
  };
  return {
    lines: [listing, ...soldLines].filter(({ amountMinor }) => amountMinor !== 0),
    totalMinor: table.listingMinor + soldOnlyMinor,
    soldOnlyMinor,
  };
}

function sellingFee(baseMinor: number, table: FeeTable): number {
  const exact = tieredFee(baseMinor, table) + table.fixedMinor;
  return roundMinor(table.capMinor === null ? exact : Math.min(exact, table.capMinor));
}

/** Each tier's percent of the part of the base that lies in the tier; over the last bound nothing more is charged. */
function tieredFee(baseMinor: number, { tiers }: FeeTable): number {
  let hundredths = 0;
  let fromMinor = 0;
  for (const { upToMinor, percent } of tiers) {
    const toMinor = Math.min(baseMinor, upToMinor ?? baseMinor);
    hundredths += Math.max(0, toMinor - fromMinor) * percent;
    fromMinor = Math.max(fromMinor, toMinor);
  }
  return hundredths / 100;
}
