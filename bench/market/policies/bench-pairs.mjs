import { makesClub } from "../fit.mjs";

const isClub = ({ head, shaft }) => head !== undefined && shaft !== undefined;

/** Everything that these things make a club of with this one, without taking a club apart. */
export function clubsWith(thing, things) {
  if (isClub(thing)) return [];
  const loose = [...things].filter((each) => each !== thing && !isClub(each));
  const all = [thing, ...loose];
  const heads = all.filter(({ head }) => head);
  const shafts = all.filter(({ shaft }) => shaft);
  const adapters = all.filter(({ adapter, shaft }) => adapter && !shaft);
  return heads.flatMap((head) =>
    shafts.flatMap((shaft) => {
      const ways = shaft.adapter ? [{ head, shaft }] : adapters.map((adapter) => ({ head, shaft, adapter }));
      return ways.filter(
        (from) =>
          Object.values(from).includes(thing) &&
          makesClub(head.head, shaft.shaft, (from.adapter ?? shaft).adapter),
      );
    }),
  );
}

/** Builds all that can be built with the hours and the money there are, the newest thing first. */
export function buildAll(ledger, day) {
  for (const thing of [...ledger.things].reverse()) {
    if (!ledger.things.has(thing)) continue;
    const [from] = clubsWith(thing, ledger.things);
    if (from && ledger.canBuild(from)) ledger.build(from, day);
  }
}

/** Sells a club as it is, or throws away what must not be sold; nothing is done when there are no hours. */
export function sellOff(thing, ledger, day, costs) {
  if (thing.head?.fault === "crack") ledger.scrap(thing);
  else if (ledger.canWork(costs.saleMinutes)) ledger.sell(thing, day);
}

/** What to pay at a limit: the price asked, or the limit where offers are invited and the seller takes it; else nothing. */
export function priceUnder(listing, limitMinor) {
  if (listing.askingMinor <= limitMinor) return listing.askingMinor;
  const isTaken = listing.negotiable && limitMinor >= listing.leastMinor;
  return isTaken ? Math.floor(limitMinor) : undefined;
}

/** Whether the words show that it must not be swung. */
export const looksSound = ({ goods: { head }, unsaid }) => head?.fault !== "crack" || unsaid.fault;
