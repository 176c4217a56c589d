import { clubPrice, typicalClub } from "../class-prices.mjs";
import { buildAll, clubsWith, looksSound, priceUnder, sellOff } from "./bench-pairs.mjs";

/** A head is judged as that of a club with an ordinary shaft. */
const ordinary = { flex: "regular" };
/** What is known of each head without looking further: nothing, its type, or what clubs of its model fetch on the average. */
const worths = {
  all: () => typicalClub("driver"),
  type: ({ model }) => typicalClub(model.clubType),
  model: (head) => clubPrice({ ...head, fault: "none" }, ordinary),
};

/**
 * Buys every head under a fixed price, and whatever completes one of its heads under another; sells what has found no partner
 * for so many days. The prices are shares of a worth: the same for all heads, for all of a type, or for all of a model.
 */
export function fixedPrice({ headShare, shaftShare, patienceDays, by, costs }) {
  const worth = worths[by];
  return ({ day, open, ledger }) => {
    for (const listing of open.filter(looksSound)) {
      const limitMinor = limitFor(listing, ledger);
      const price = priceUnder(listing, limitMinor - listing.postageMinor);
      if (price !== undefined && price > 0 && price + listing.postageMinor <= ledger.cashMinor())
        ledger.buy(listing, price);
    }
    buildAll(ledger, day);
    for (const thing of [...ledger.things])
      if (day - thing.on >= patienceDays || thing.head?.fault === "crack") sellOff(thing, ledger, day, costs);
  };

  function limitFor({ kind, goods }, ledger) {
    if (kind === "donor") return 0;
    if (kind === "head") return headShare * worth(goods.head);
    const completed = clubsWith(goods, ledger.things).map(({ head }) => worth(head.head));
    return (kind === "fitted" ? 1 : 0.5) * shaftShare * Math.max(0, ...completed);
  }
}
