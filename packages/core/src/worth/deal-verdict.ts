import type { Listing } from "../listing/listing.ts";
import type { CostSettings } from "./cost-settings.ts";
import type { DealReason, DealVerdict } from "./deal.ts";

/** What a verdict is made of. */
export interface VerdictFacts {
  readonly listing: Pick<Listing, "intent" | "negotiable" | "items">;
  readonly askingMinor: number | undefined;
  /** Whether a price is asked in a currency that has no rate. */
  readonly lacksRate: boolean;
  /** The most to pay by what is known, below nothing where it is not worth having for nothing; left out where no way can be reckoned. */
  readonly mostMinor: number | undefined;
  /** The same if every open question is answered for the best. */
  readonly hopedMinor: number | undefined;
  /** Whether there is something in it that nobody knows a price of. */
  readonly lacksPrices: boolean;
  /** Whether getting it here costs something that nobody has told yet. */
  readonly lacksDistance: boolean;
  /** How far below the price asked an offer may lie. */
  readonly offers: Pick<CostSettings, "leastOfferPercent" | "leastOfferInvitedPercent">;
}

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
  const { listing, askingMinor, lacksRate, mostMinor, hopedMinor, lacksPrices } = facts;
  if (listing.intent === "wanted")
    return because("leave", "wanted", "Somebody is looking for this; nothing is for sale.");
  if (listing.items.length === 0)
    return because(
      "ask-first",
      "nothing-read",
      "Nothing to buy was found in the words. Say below what it is.",
    );
  if (mostMinor === undefined && hopedMinor === undefined)
    return lacksPrices
      ? because("ask-first", "no-evidence", "Nobody has told the tool a price to go by yet.")
      : because("leave", "no-way", "There is nothing to do with it that would bring anything.");
  const most = mostMinor ?? Number.NEGATIVE_INFINITY;
  const hoped = Math.max(most, hopedMinor ?? most);
  if (askingMinor !== undefined) return atPrice(facts, askingMinor, most, hoped);
  if (hoped <= 0 && !lacksPrices)
    return because("leave", "no-gain", "It brings less than it costs, even for nothing.");
  if (listing.intent === "swap" && !lacksRate)
    return because(
      "ask-first",
      "swap",
      "It is offered for something else, not for money: ask whether it can be bought.",
    );
  if (lacksRate)
    return because(
      "ask-first",
      "no-rate",
      "The price is asked in a currency that has no rate yet, so it cannot be compared.",
    );
  return withoutPrice(facts, most, hoped);
}

/** Nobody has named a price. */
function withoutPrice(facts: VerdictFacts, most: number, hoped: number): Verdict {
  if (most > 0)
    return unlessFar(facts, because("offer-up-to", "no-price-asked", "No price is asked, so name yours."));
  if (hoped > 0)
    return because(
      "ask-first",
      "unsettled",
      "Whether it is worth anything here hangs on facts that are not said.",
    );
  return partlyPriced;
}

const partlyPriced = because(
  "ask-first",
  "partly-priced",
  "It is worth the price only if what nobody knows a price of brings enough. Note a price to go by.",
);

function atPrice(facts: VerdictFacts, askingMinor: number, most: number, hoped: number): Verdict {
  const { negotiable } = facts.listing;
  if (askingMinor <= most)
    return unlessFar(facts, because("buy", "within", "The price asked is within the most to pay."));
  if (askingMinor <= hoped)
    return because(
      "ask-first",
      "unsettled",
      "It is worth the price only if the open questions are answered well.",
    );
  if (facts.lacksPrices) return partlyPriced;
  if (most <= 0)
    return because("leave", "no-gain", "It brings less than it costs, or less than you ask of a deal.");
  if (negotiable === false)
    return because("leave", "firm", "The price is firm, and more than it is worth to this bench.");
  const { leastOfferPercent, leastOfferInvitedPercent } = facts.offers;
  const percent = negotiable === true ? leastOfferInvitedPercent : leastOfferPercent;
  if (most < (askingMinor * percent) / 100)
    return because("leave", "far-over", "The price asked is far more than it is worth to this bench.");
  return unlessFar(
    facts,
    because("offer-up-to", "over", "The price asked is more than it is worth to this bench, but not by far."),
  );
}

/** A yes waits until it is known what getting the thing here costs. */
function unlessFar({ lacksDistance }: VerdictFacts, yes: Verdict): Verdict {
  return lacksDistance
    ? because(
        "ask-first",
        "getting-here",
        "It looks worth the price, but what getting it here costs is not known yet.",
      )
    : yes;
}
