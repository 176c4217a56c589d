import { solvePlan } from "../../packages/core/dist/index.js";
import { makesClub } from "./fit.mjs";
import { gripMinor } from "./ledger.mjs";
import { saleResult } from "./sale-results.mjs";

/**
 * The most that anybody could have made of the year who knew beforehand all that would be offered, what each seller would take
 * and what each sale would bring, and who was never short of money or hours: one plan over the whole year. Its bound is the
 * ceiling. Loose adapters of a class count as alike and sell like the luckiest of them, which can only raise it.
 */
export async function ceilingOf({ listings, costs, work }, solver, seconds = 60) {
  const seen = listings.filter(({ day, lastDay, goods }) => lastDay >= day && goods.head?.fault !== "crack");
  const model = modelOf(seen, costs, new Map(work.map((row) => [row.step, row])));
  const options = { seconds, relativeGap: 0.001, now: () => performance.now() };
  const { netMinor, boundMinor, gap } = await solvePlan(model, solver, options);
  return { netMinor, boundMinor, gap };
}

/**
 * The same for somebody who knows all that will be offered and at what price it can be had, but of each sale only what things of
 * its class fetch on the average: the most that anybody could count on, since the luck of a sale is in nobody's hands.
 */
export function ceilingWithoutLuck(year, solver) {
  const average = (part) => ({ ...part, luck: { price: 0, days: 0 } });
  const listings = year.listings.map((listing) => ({
    ...listing,
    goods: Object.fromEntries(Object.entries(listing.goods).map(([place, part]) => [place, average(part)])),
  }));
  return ceilingOf({ ...year, listings }, solver);
}

const classOf = ({ family, sort, hand }) => `adapter ${family} ${sort} ${hand}`;

function modelOf(listings, costs, steps) {
  const goods = listings.map((each) => each.goods);
  const resources = [...new Set(goods.flatMap(namesIn))].map((id) => ({ id, count: 0 }));
  const desk = {
    costs,
    steps,
    goods,
    timeMinor: (minutes) => Math.round((minutes * costs.hourValueMinor) / 60),
  };
  return {
    resources,
    bundles: listings.map(({ id, leastMinor, postageMinor, goods: sold }) => ({
      id,
      gives: namesIn(sold).map((resource) => ({ resource, count: 1 })),
      priceMinor: leastMinor + postageMinor,
      minutes: 0,
      timeMinor: 0,
    })),
    trips: [],
    limits: { budgetMinor: null, minutes: null, mostOfKind: {} },
    uses: [...sales(desk), ...clubs(desk)].filter(({ netMinor }) => netMinor > 0),
  };
}

/** A loose adapter is one of its class; a part that is joined to others goes by its own name. */
function namesIn({ head, shaft, adapter }) {
  return [head?.id, shaft?.id, adapter && !shaft ? classOf(adapter) : undefined].filter(Boolean);
}

const taking = (names) => names.map((resource) => ({ resource, count: 1 }));

function use(id, names, { leftMinor }, names2, { costs, steps, timeMinor }, isGripped = true) {
  const rows = names2.map((name) => steps.get(name));
  const minutes = rows.reduce((sum, row) => sum + row.minutes, costs.saleMinutes);
  const materialMinor = rows.reduce((sum, row) => sum + row.costMinor, isGripped ? 0 : gripMinor);
  const netMinor = leftMinor - materialMinor - timeMinor(minutes);
  return { id, takes: taking(names), netMinor, minutes, outlayMinor: materialMinor };
}

function sales(desk) {
  const { goods, costs } = desk;
  const luckiest = new Map();
  const whole = goods.flatMap((thing) => {
    const { head, shaft, adapter } = thing;
    const sold = (one, steps = []) =>
      use(`sell ${namesIn(one).join("+")}`, namesIn(one), saleResult(one, costs), steps, desk);
    if (head && shaft) return [sold(thing), sold({ head }, ["unscrew"]), sold({ shaft, adapter })];
    if (!adapter || shaft) return [sold(thing)];
    const best = luckiest.get(classOf(adapter));
    const one = sold(thing);
    if (!best || one.netMinor > best.netMinor) luckiest.set(classOf(adapter), one);
    return [];
  });
  return [...whole, ...luckiest.values()];
}

function clubs(desk) {
  const { goods, costs } = desk;
  const heads = goods.filter(({ head }) => head);
  const shafts = goods.filter(({ shaft }) => shaft);
  const classes = new Map(
    goods.flatMap(({ adapter, shaft }) => (adapter && !shaft ? [[classOf(adapter), adapter]] : [])),
  );
  return heads.flatMap((one) =>
    shafts.flatMap((other) => {
      if (one === other) return [];
      const { head } = one;
      const { shaft } = other;
      const adapter = other.adapter ?? classes.get(classOf({ ...head, sort: shaft.sort }));
      if (!adapter || !makesClub(head, shaft, adapter)) return [];
      const names = [head.id, shaft.id, ...(other.adapter ? [] : [classOf(adapter)])];
      const steps = [
        ...(one.shaft ? ["unscrew"] : []),
        ...(other.head ? ["unscrew"] : []),
        ...(other.adapter ? [] : ["clean-tip", "bond-tip"]),
        ...(shaft.isGripped ? [] : ["grip-on"]),
        "screw-in",
      ];
      return [
        use(
          `build ${names.join("+")}`,
          names,
          saleResult({ head, shaft }, costs),
          steps,
          desk,
          shaft.isGripped,
        ),
      ];
    }),
  );
}
