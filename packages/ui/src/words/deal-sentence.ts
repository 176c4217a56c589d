import type { DealVerdict, Money } from "@ferrule/core";
import { moneyText } from "../format/money.ts";
import { dealVerdictWords } from "./deal-words.ts";

interface Said {
  readonly verdict: DealVerdict;
  readonly mostToPay: Money | null;
  readonly asking: Money | null;
}

/** The verdict in a few words with its amount: "Buy it at €45.00", "Offer up to €32.00". */
export function dealSentence({ verdict, mostToPay, asking }: Said): string {
  if (verdict === "buy" && asking) return `Buy it at ${text(asking)}`;
  if (verdict === "buy" && mostToPay) return `Buy it at up to ${text(mostToPay)}`;
  if (verdict === "offer-up-to" && mostToPay) return `Offer up to ${text(mostToPay)}`;
  return dealVerdictWords[verdict];
}

function text({ amountMinor, currency }: Money): string {
  return moneyText(amountMinor, currency);
}
