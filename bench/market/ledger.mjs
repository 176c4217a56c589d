import { makesClub } from "./fit.mjs";
import { saleResult } from "./sale-results.mjs";

/** A grip out of the box, for a shaft that comes without. */
export const gripMinor = 300;
const cureDays = 1;

/**
 * Money, parts and hours of one policy. It refuses what cannot be: buying without the money, using a part that is not there,
 * working more hours in a week than there are, making a club of what makes none.
 */
export function openLedger({ cashMinor, minutesPerWeek, costs, work }) {
  const steps = new Map(work.map((row) => [row.step, row]));
  /** Things on the bench: parts that hold together, and what was paid for them. */
  const things = new Set();
  const state = {
    cashMinor,
    minutes: 0,
    weekMinutes: 0,
    week: 0,
    boughtMinor: 0,
    materialMinor: 0,
    isOver: false,
  };
  const underWay = [];
  const sold = [];
  const counts = { bought: 0, built: 0, soldLoose: 0, scrapped: 0 };

  function spendMinutes(minutes) {
    if (!state.isOver && state.weekMinutes + minutes > minutesPerWeek)
      throw new Error("there are no hours left this week");
    state.weekMinutes += minutes;
    state.minutes += minutes;
  }

  function take(thing) {
    if (!things.delete(thing)) throw new Error("that is not on the bench");
  }

  function buy(listing, priceMinor) {
    const totalMinor = priceMinor + listing.postageMinor;
    if (priceMinor < listing.leastMinor) throw new Error("the seller does not take so little");
    if (totalMinor > state.cashMinor) throw new Error("there is no money for it");
    state.cashMinor -= totalMinor;
    state.boughtMinor += totalMinor;
    counts.bought += 1;
    const thing = { ...listing.goods, paidMinor: totalMinor, on: listing.day };
    things.add(thing);
    return thing;
  }

  /** The steps that make a club of two or three things: a complete club gives its head or its shaft. */
  function stepsFor({ head, shaft, adapter }) {
    const names = [];
    if (head.shaft) names.push("unscrew");
    if (shaft.head && shaft !== head) names.push("unscrew");
    if (!shaft.adapter) names.push("clean-tip", "bond-tip");
    if (!shaft.shaft.isGripped) names.push("grip-on");
    names.push("screw-in");
    const rows = names.map((name) => steps.get(name));
    const minutes = rows.reduce((sum, row) => sum + row.minutes, 0);
    const grip = shaft.shaft.isGripped ? 0 : gripMinor;
    const materialMinor = rows.reduce((sum, row) => sum + row.costMinor, 0) + grip;
    return { minutes, materialMinor, waits: adapter !== undefined };
  }

  const canWork = (minutes) => state.weekMinutes + minutes <= minutesPerWeek;
  /** Whether there are hours and money to build this today. */
  function canBuild(from) {
    const { minutes, materialMinor } = stepsFor(from);
    return canWork(minutes + costs.saleMinutes) && materialMinor <= state.cashMinor;
  }

  /** Builds a club and puts it up for sale; what is left of a club that was taken apart stays. */
  function build(from, day) {
    const { head, shaft, adapter } = from;
    const fitted = shaft.adapter ?? adapter?.adapter;
    if (!fitted || !makesClub(head.head, shaft.shaft, fitted)) throw new Error("these make no club");
    if (head === shaft) throw new Error("it is a club already");
    const { minutes, materialMinor, waits } = stepsFor(from);
    if (!state.isOver && materialMinor > state.cashMinor)
      throw new Error("there is no money for the materials");
    spendMinutes(minutes + costs.saleMinutes);
    state.cashMinor -= materialMinor;
    state.materialMinor += materialMinor;
    for (const thing of new Set([head, shaft, adapter].filter(Boolean))) take(thing);
    const left = [];
    if (head.shaft) left.push(without(head, "head"));
    if (shaft.head) left.push(without(shaft, "shaft"));
    for (const thing of left) things.add(thing);
    const club = { head: head.head, shaft: { ...shaft.shaft, isGripped: true }, adapter: fitted };
    counts.built += 1;
    putUp(club, day + (waits ? cureDays : 0));
    return { club, left };
  }

  /** What is left of a complete club when its head, or its shaft with the adapter on it, has gone: half of what was paid. */
  function without(thing, gone) {
    const half = Math.round(thing.paidMinor / 2);
    if (gone === "head") return { shaft: thing.shaft, adapter: thing.adapter, paidMinor: half, on: thing.on };
    return { head: thing.head, paidMinor: half, on: thing.on };
  }

  /** Takes a complete club apart. */
  function part(thing) {
    if (!thing.head || !thing.shaft) throw new Error("it is not a club");
    spendMinutes(steps.get("unscrew").minutes);
    take(thing);
    const pieces = [without(thing, "head"), without(thing, "shaft")];
    for (const piece of pieces) things.add(piece);
    return pieces;
  }

  function sell(thing, day) {
    spendMinutes(costs.saleMinutes);
    take(thing);
    counts.soldLoose += 1;
    putUp(thing, day);
  }

  /** What must not be swung is thrown away. */
  function scrap(thing) {
    take(thing);
    counts.scrapped += 1;
  }

  function putUp(thing, day) {
    const result = saleResult(thing, costs);
    if (!result) throw new Error("it must not be sold to be swung");
    underWay.push({ thing, result, listedOn: day, soldOn: day + result.days });
  }

  /** The money of what has been sold by this day comes in; a new week has new hours. */
  function settle(day) {
    const week = Math.floor(day / 7);
    if (week !== state.week) Object.assign(state, { week, weekMinutes: 0 });
    const done = underWay.filter(({ soldOn }) => soldOn <= day);
    for (const sale of done) {
      underWay.splice(underWay.indexOf(sale), 1);
      state.cashMinor += sale.result.leftMinor;
      sold.push(sale);
    }
    return done;
  }

  /** After it hours and money for materials are not short any more. */
  function endOfYear() {
    state.isOver = true;
  }

  return {
    ...{ things, underWay, sold, counts, state },
    ...{ buy, build, part, sell, scrap, settle, endOfYear, canBuild, canWork },
    cashMinor: () => state.cashMinor,
    stockMinor: () => [...things].reduce((sum, { paidMinor }) => sum + paidMinor, 0),
  };
}
