import { typicalClub } from "../class-prices.mjs";
import { buildAll, clubsWith, looksSound, priceUnder, sellOff } from "./bench-pairs.mjs";

/**
 * Buys only what completes a club today, with what is on the bench or with what else is on offer this evening, or is one, where
 * all of it comes to no more than a share of what clubs of the type fetch.
 */
export function completesToday({ share, costs }) {
  return ({ day, open, ledger }) => {
    const sound = open.filter(looksSound);
    for (const listing of sound) if (listing.kind === "donor") buySet([listing], listing.goods.head);
    const loose = sound.filter(({ kind }) => kind !== "donor");
    const offered = new Map(loose.map((listing) => [listing.goods, listing]));
    const all = [...offered.keys(), ...ledger.things];
    const ways = loose.flatMap(({ goods }) => clubsWith(goods, all));
    const priced = ways
      .map((from) => ({ from, set: setOf(from) }))
      .sort((one, other) => one.set.costMinor - other.set.costMinor);
    for (const { from, set } of priced) {
      const isThere = (thing) =>
        ledger.things.has(thing) || (offered.has(thing) && open.includes(offered.get(thing)));
      if (Object.values(from).every(isThere)) buySet(set.listings, from.head.head);
    }
    buildAll(ledger, day);
    for (const thing of [...ledger.things])
      if ((thing.head && thing.shaft) || thing.head?.fault === "crack") sellOff(thing, ledger, day, costs);

    function setOf(from) {
      const listings = Object.values(from).flatMap((thing) => offered.get(thing) ?? []);
      return { listings, costMinor: listings.reduce((sum, each) => sum + costOf(each), 0) };
    }
    function buySet(listings, head) {
      const limitMinor = share * typicalClub(head.model.clubType);
      const costMinor = listings.reduce((sum, each) => sum + costOf(each), 0);
      const [only] = listings;
      const offer = listings.length === 1 ? priceUnder(only, limitMinor - only.postageMinor) : undefined;
      if (offer !== undefined && offer + only.postageMinor <= ledger.cashMinor()) return take(only, offer);
      if (costMinor > limitMinor || costMinor > ledger.cashMinor()) return;
      for (const listing of listings) take(listing, listing.askingMinor);
    }
    function take(listing, price) {
      ledger.buy(listing, price);
      open.splice(open.indexOf(listing), 1);
    }
  };
}

const costOf = ({ askingMinor, postageMinor }) => askingMinor + postageMinor;
