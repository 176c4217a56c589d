import {
  type Condition,
  convertMinor,
  type Entry,
  type Evidence,
  entriesOfSale,
  feesOn,
  type Money,
  type Part,
  type Refusal,
  safetyStops,
  sharePerPart,
} from "@ferrule/core";
import { newId } from "../bench/new-id.ts";
import { type Rates, rateRefusals } from "../bench/rates.ts";
import { isSold } from "../bench/unsold.ts";
import { done, type Outcome, problem } from "../errors.ts";
import type { Deletion } from "../store/deletions.ts";
import type { Tables } from "../store/tables.ts";
import { attributeCosts } from "./attribute-costs.ts";
import { expectationOf, type Market } from "./expectation.ts";
import { saleSubject } from "./sale-subject.ts";
import { writeEntries } from "./write-entries.ts";

export interface SellRequest {
  readonly parts: readonly string[];
  readonly club?: string;
  readonly price: Money;
  readonly rate?: number;
  readonly on: string;
  readonly daysToSell?: number;
  readonly fees?: Money;
  readonly postage?: Money;
  readonly condition?: Condition;
  readonly note?: string;
  /** Sold as broken, and the buyer told that it is not to be swung. */
  readonly notToBeSwung?: boolean;
}

export interface Sold {
  /** The lines written for the sale: the price, and fees and postage where there were any. */
  readonly entries: readonly Entry[];
  readonly parts: readonly Part[];
  /** The sale as a noted price; nothing for a lot, which says what none of its things is worth, nor for what is broken. */
  readonly evidence: Evidence | null;
}

/**
 * Marks parts as sold for one price, which they share by what was paid for each, and writes the sale down in the books and in
 * the evidence, all of it or nothing; one undo takes it back.
 */
export function sellParts(tables: Tables, market: Market, request: SellRequest): Outcome<Sold> {
  return tables.together(
    () => {
      const found = request.parts.map((id) => tables.parts.get(id)?.value);
      const parts = found.filter((part) => part !== undefined);
      const refusals = [...partRefusals(request.parts, found), ...moneyRefusals(request, market.costs)];
      if (refusals.length > 0) return problem("bad-request", "The sale was not taken", refusals);
      const sold = parts.findIndex(isSold);
      const unsafe = unsafeRefusals(parts, request.notToBeSwung === true);
      if (unsafe.length > 0) return problem("unsafe", undefined, unsafe);
      if (sold >= 0) return problem("already-sold", undefined, [soldRefusal(sold, parts[sold] as Part)]);
      return done(settle(tables, market, request, parts));
    },
    { what: "parts-sold" },
  );
}

function partRefusals(ids: readonly string[], found: readonly (Part | undefined)[]): Refusal[] {
  return ids.flatMap((id, at) => {
    const isRepeated = ids.indexOf(id) !== at;
    if (found[at] !== undefined && !isRepeated) return [];
    const expected = "the id of a part on the bench, each once";
    return [{ field: `parts.${at}`, got: JSON.stringify(id), expected }];
  });
}

/** A broken thing may be sold as broken; a club with it may not be sold at all until somebody clears the fault. */
function unsafeRefusals(parts: readonly Part[], isSoldAsBroken: boolean): Refusal[] {
  const isClub = ["head", "shaft"].every((kind) => parts.some((part) => part.kind === kind));
  if (isSoldAsBroken && !isClub) return [];
  return safetyStops(parts).map(({ part, fault }) => ({
    field: `parts.${parts.findIndex(({ id }) => id === part)}`,
    got: `${JSON.stringify(part)}, ${fault}`,
    expected: isClub
      ? "no fault of safety in a club: clear it with a note on the part's inspection, or take the club apart"
      : "no fault of safety, unless it is sold as broken and not to be swung (notToBeSwung)",
  }));
}

function soldRefusal(at: number, { id, soldOn }: Part): Refusal {
  const got = `${JSON.stringify(id)}, sold${soldOn === undefined ? "" : ` on ${soldOn}`} already`;
  return { field: `parts.${at}`, got, expected: "a part that has not been sold" };
}

function moneyRefusals({ price, rate, fees, postage }: SellRequest, rates: Rates): Refusal[] {
  const other = (money: Money | undefined, field: string) => {
    const known = money?.currency === price.currency ? rate : undefined;
    return money ? rateRefusals(money.currency, known, rates, `${field}.currency`) : [];
  };
  return [...rateRefusals(price.currency, rate, rates), ...other(fees, "fees"), ...other(postage, "postage")];
}

function settle(tables: Tables, market: Market, request: SellRequest, parts: readonly Part[]): Sold {
  const { price, on, club } = request;
  const { costs } = market;
  const expected = boughtExpectation(tables, parts) ?? expectationOf(parts, market);
  const lines = entriesOfSale({ ...request, expected }, costs, feesMinor(request, market));
  const moved = club === undefined ? {} : attributeCosts(tables, new Set(request.parts), club);
  const entries = writeEntries(tables, lines);
  const shares = sharePerPart(price, request.parts, paidWeights(parts, costs));
  const sold = parts.map((part, at) => ({ ...part, soldFor: shares[at]?.share, soldOn: on }));
  for (const part of sold) tables.parts.replace(part.id, part);
  const evidence = noteSale(tables, market, request, parts);
  const deletion: Deletion = {
    added: {
      entries: [...(moved.added ?? []), ...entries.map(({ id }) => id)],
      evidence: evidence ? [evidence.id] : [],
    },
    changed: {
      parts: parts.map(({ id }) => ({ id, fields: { soldFor: null, soldOn: null } })),
      entries: moved.changed ?? [],
    },
  };
  tables.deletions.push(deletion);
  return { entries, parts: sold, evidence };
}

/** What was expected when exactly these parts were bought, cover and wrench aside. */
function boughtExpectation(tables: Tables, parts: readonly Part[]): Entry["expected"] {
  const isExtra = (id: string) => ["cover", "wrench"].includes(tables.parts.get(id)?.value.kind ?? "");
  const keyOf = (ids: readonly string[]) => JSON.stringify(ids.filter((id) => !isExtra(id)).sort());
  const key = keyOf(parts.map(({ id }) => id));
  const bought = tables.entries
    .all()
    .map(({ value }) => value)
    .findLast(({ type, parts: ids = [] }) => type === "buy" && keyOf(ids) === key);
  return bought?.expected;
}

/** The fees of the place where the user sells, in the bench's currency; on the postage too where the buyer pays it. */
function feesMinor({ price, rate, postage }: SellRequest, { costs }: Market): number {
  const table = costs.feeTables.find(({ id }) => id === costs.sellsBy);
  if (table === undefined) throw new Error(`there is no fee table ${costs.sellsBy}`);
  const inBench = ({ amountMinor, currency }: Money) => {
    const known = currency === price.currency ? rate : undefined;
    return currency === costs.currency
      ? amountMinor
      : convertMinor(amountMinor, currency, costs.currency, known ?? (costs.rates[currency] as number));
  };
  const onTop = costs.buyerPaysPostage && postage ? inBench(postage) : 0;
  return feesOn(inBench(price), onTop, table).totalMinor;
}

/** By what was paid for each part, where that is known for all in money that can be compared; else they weigh alike. */
function paidWeights(parts: readonly Part[], { currency, rates }: Rates): number[] | undefined {
  const paid = parts.map(({ paid: money }) => {
    if (money === undefined) return undefined;
    const rate = money.currency === currency ? 1 : rates[money.currency];
    return rate === undefined ? undefined : convertMinor(money.amountMinor, money.currency, currency, rate);
  });
  return paid.every((amount) => amount !== undefined && amount >= 0) ? (paid as number[]) : undefined;
}

function noteSale(
  tables: Tables,
  { catalogue }: Market,
  { on, price, daysToSell, condition, note, notToBeSwung }: SellRequest,
  parts: readonly Part[],
): Evidence | null {
  const subject = saleSubject(parts, catalogue);
  // What a broken thing went for says nothing of what a sound one is worth.
  if (subject === undefined || notToBeSwung) return null;
  const evidence: Evidence = {
    id: newId("price", (taken) => tables.evidence.get(taken) !== undefined),
    on,
    what: "sold",
    own: true,
    price,
    ...(daysToSell === undefined ? {} : { daysToSell }),
    ...(note === undefined ? {} : { note }),
    ...subject,
    ...(condition === undefined ? {} : { condition }),
  };
  tables.evidence.insert(evidence);
  return evidence;
}
