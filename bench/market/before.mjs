import { arrivalsOf } from "./arrivals.mjs";
import { chances } from "./chances.mjs";
import { saleResult } from "./sale-results.mjs";
import { asAsked, asEvidence, asListing, dateOf } from "./words.mjs";

/** A quarter of looking before the year begins, and prices noted of what others sold in it. */
const daysBefore = 91;
const pricesNoted = 80;

/** What the user of the tool has written down when the year begins: other listings than those of the year. */
export function writtenBefore(seed, catalogue, costs) {
  const listings = arrivalsOf(seed + 500_000, daysBefore, catalogue);
  const seen = listings.filter(({ day, lastDay }) => lastDay >= day);
  const draw = chances(seed + 600_000);
  const sightings = seen.map((each) => asSighting(each, each.day - daysBefore, "gone"));
  const others = arrivalsOf(seed + 700_000, daysBefore, catalogue).filter(
    ({ goods }) => goods.head?.fault !== "crack",
  );
  const evidence = others.slice(0, pricesNoted).map(({ goods, kind, day }, at) => {
    const shaft = kind === "head" && draw.chance(0.6) ? { flex: "regular", ...aShaft } : goods.shaft;
    const thing = { ...goods, ...(shaft ? { shaft } : {}) };
    const result = saleResult(thing, costs);
    const soldOn = day - daysBefore;
    return asEvidence({ thing, result, soldOn, listedOn: soldOn - result.days }, `before-${at}`, false);
  });
  const asked = seen.map((each) => ({
    ...asAsked(each, each.day - daysBefore),
    id: `asked before ${each.id}`,
  }));
  return { sightings, evidence: [...evidence, ...asked] };
}

/** People note clubs more often than loose heads: most heads that others sold were sold in a club. */
const aShaft = { kind: "shaft", sort: "wood", isGripped: true };

export function asSighting(listing, day, outcome, isAnswered = false) {
  const said = asListing(listing, isAnswered);
  return { id: listing.id, seenOn: dateOf(day), text: listing.id, read: said, listing: said, outcome };
}
