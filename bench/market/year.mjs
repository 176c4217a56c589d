import { headPrice } from "./class-prices.mjs";
import { makesClub } from "./fit.mjs";
import { openLedger } from "./ledger.mjs";
import { saleResult } from "./sale-results.mjs";

/**
 * One policy through one year. On the last evening everyone builds what fits and puts up all that can be sold, and waits for
 * the money, so that nobody is better or worse off for what is still on the bench.
 */
export async function livedYear(policy, { listings, days, start, costs, work }) {
  const ledger = openLedger({ ...start, costs, work });
  const gone = new Set();
  for (let day = 0; day < days; day += 1) {
    const sales = ledger.settle(day);
    const open = listings.filter(
      (each) => each.day <= day && each.lastDay >= day && !gone.has(each.id) && each.lastDay >= each.day,
    );
    const buy = (listing, priceMinor) => {
      gone.add(listing.id);
      return ledger.buy(listing, priceMinor);
    };
    await policy({ day, open, ledger: { ...ledger, buy }, sales });
  }
  return { ...closed(ledger, days, costs), startMinor: start.cashMinor };
}

function closed(ledger, day, costs) {
  const stockMinor = ledger.stockMinor();
  const partsLeft = ledger.things.size;
  clear(ledger, day, costs);
  ledger.settle(Number.POSITIVE_INFINITY);
  const { state, counts, sold } = ledger;
  const revenueMinor = sold.reduce((sum, { result }) => sum + result.leftMinor, 0);
  const cashNetMinor = revenueMinor - state.boughtMinor - state.materialMinor;
  const hours = state.minutes / 60;
  return {
    netMinor: Math.round(cashNetMinor - hours * costs.hourValueMinor),
    ...{ cashNetMinor, cashMinor: state.cashMinor, hours, stockMinor, partsLeft },
    ...counts,
    ...{ boughtMinor: state.boughtMinor, materialMinor: state.materialMinor, revenueMinor },
    perHourMinor: hours > 0 ? Math.round(cashNetMinor / hours) : 0,
  };
}

/** Hours are not short once the year is over: they are counted all the same. */
function clear(ledger, day, costs) {
  ledger.settle(day);
  ledger.endOfYear();
  for (const from of pairsOf(ledger.things)) ledger.build(from, day);
  for (const thing of [...ledger.things]) {
    const result = saleResult(thing, costs);
    const isWorth = result && result.leftMinor > (costs.saleMinutes * costs.hourValueMinor) / 60;
    if (isWorth) ledger.sell(thing, day);
    else ledger.scrap(thing);
  }
}

/** The dearest heads first, each on a shaft that has its adapter where there is one. */
function pairsOf(things) {
  const free = new Set(things);
  const loose = (kind) => [...free].filter((thing) => thing[kind] && !(thing.head && thing.shaft));
  const heads = loose("head").sort((one, other) => headPrice(other.head) - headPrice(one.head));
  return heads.flatMap((head) => {
    const fits = (shaft, adapter) => makesClub(head.head, shaft.shaft, adapter.adapter);
    const shafts = loose("shaft");
    const fitted = shafts.find((shaft) => shaft.adapter && fits(shaft, shaft));
    const adapters = loose("adapter").filter((thing) => !thing.shaft);
    const bare = shafts
      .filter((shaft) => !shaft.adapter)
      .flatMap((shaft) => adapters.map((adapter) => ({ shaft, adapter })))
      .find(({ shaft, adapter }) => fits(shaft, adapter));
    const found = fitted ? { head, shaft: fitted } : bare && { head, ...bare };
    if (!found) return [];
    for (const thing of Object.values(found)) free.delete(thing);
    return [found];
  });
}
