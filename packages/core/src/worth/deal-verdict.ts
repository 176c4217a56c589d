import type { Listing } from "../listing/listing.ts";
import type { DealReason, DealVerdict } from "./deal.ts";

/** What a verdict is made of. */
export interface VerdictFacts {
  readonly listing: Listing;
  readonly askingMinor: number | undefined;
  /** The most to pay by what is known; nothing where no way can be reckoned. */
  readonly mostMinor: number | undefined;
  /** The same if every open question is answered for the best. */
  readonly hopedMinor: number | undefined;
  /** Whether the user has to say something first: a price, or a rate. */
  readonly lacksPrices: boolean;
}

/** An offer under this share of the price asked is not worth the seller's time, nor yours; from memory. */
const leastOfferShare = 0.6;
const leastOfferShareWhereInvited = 0.4;

export interface Verdict {
  readonly verdict: DealVerdict;
  readonly reasons: readonly DealReason[];
}

const because = (verdict: DealVerdict, code: string, text: string): Verdict => ({
  verdict,
  reasons: [{ code, text }],
});

/** One of four words, and why. What nobody knows is asked after, never taken for a yes or a no. */
export function dealVerdict(facts: VerdictFacts): Verdict {
  const { listing, askingMinor, mostMinor, hopedMinor, lacksPrices } = facts;
  if (listing.intent === "wanted")
    return because("leave", "wanted", "Somebody is looking for this; nothing is for sale.");
  if (listing.items.length === 0)
    return because(
      "ask-first",
      "nothing-read",
      "Nothing to buy was found in the words. Say below what it is.",
    );
  if (mostMinor === undefined && hopedMinor === undefined)
    return because(
      lacksPrices ? "ask-first" : "leave",
      lacksPrices ? "no-evidence" : "no-way",
      lacksPrices
        ? "Nobody has told the tool a price to go by yet."
        : "There is nothing useful to do with it.",
    );
  if (listing.intent === "swap" && askingMinor === undefined)
    return because(
      "ask-first",
      "swap",
      "It is offered for something else, not for money: ask whether it can be bought.",
    );
  return priced(facts, mostMinor ?? 0, hopedMinor ?? 0);
}

function priced({ listing, askingMinor }: VerdictFacts, mostMinor: number, hopedMinor: number): Verdict {
  if (askingMinor === undefined) {
    if (mostMinor > 0) return because("offer-up-to", "no-price-asked", "No price is asked, so name yours.");
    return hopedMinor > 0
      ? because(
          "ask-first",
          "unsettled",
          "Whether it is worth anything here hangs on facts that are not said.",
        )
      : because("leave", "no-gain", "It brings less than it costs, even for nothing.");
  }
  if (askingMinor <= mostMinor) return because("buy", "within", "The price asked is within the most to pay.");
  if (askingMinor <= hopedMinor)
    return because(
      "ask-first",
      "unsettled",
      "It is worth the price only if the open questions are answered well.",
    );
  const share = listing.negotiable === true ? leastOfferShareWhereInvited : leastOfferShare;
  if (listing.negotiable === false)
    return because("leave", "firm", "The price is firm, and more than it is worth to this bench.");
  return mostMinor > 0 && mostMinor >= askingMinor * share
    ? because(
        "offer-up-to",
        "over",
        "The price asked is more than it is worth to this bench, but not by far.",
      )
    : because("leave", "far-over", "The price asked is far more than it is worth to this bench.");
}
