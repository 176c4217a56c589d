import type { CostSettings, Refusal } from "@ferrule/core";
import { rateRefusals } from "../bench/rates.ts";
import { done, type Outcome, problem } from "../errors.ts";
import type { Tables } from "../store/tables.ts";
import { inCurrency } from "./in-currency.ts";

/** Everything about money that the user decides: as first given until it is changed. */
export interface Costs {
  read(): CostSettings;
  /**
   * Changes what is named at the top level, and leaves the rest; with another currency the amounts that are left are converted
   * at the rate that comes with it for the old one.
   */
  change(part: Partial<CostSettings>): Outcome<CostSettings>;
}

export function openCosts(tables: Tables, first: CostSettings): Costs {
  const read = () => ({ ...first, ...tables.costs.read() });
  return {
    read,
    change: (part) =>
      tables.together(
        () => {
          const before = read();
          const unrated = unratedRefusals(before, part);
          if (unrated.length > 0) return problem("bad-request", "The costs were not changed", unrated);
          const costs = { ...left(before, part), ...part };
          const refused = costsProblem(tables, costs);
          if (refused) return refused;
          tables.costs.write(costs, before);
          return done(costs);
        },
        { what: "costs-changed" },
      ),
  };
}

/** Amounts of the old currency cannot stand under the new one as they are. */
function unratedRefusals(
  { currency: old }: CostSettings,
  { currency = old, rates }: Partial<CostSettings>,
): Refusal[] {
  if (currency === old || rates?.[old] !== undefined) return [];
  const expected = `${old}, or with it rates.${old}, how much ${currency} one ${old} is worth: the costs are amounts of ${old}`;
  return [{ field: "currency", got: JSON.stringify(currency), expected }];
}

function left(
  before: CostSettings,
  { currency = before.currency, rates }: Partial<CostSettings>,
): CostSettings {
  return currency === before.currency
    ? before
    : inCurrency(before, currency, rates?.[before.currency] as number);
}

/** What the schema cannot see: the place where the user sells has to be one of the fee tables. */
export function costsRefusals({ sellsBy, feeTables }: CostSettings): Refusal[] {
  const ids = feeTables.map(({ id }) => id);
  const repeated = ids.findIndex((id, at) => ids.indexOf(id) !== at);
  const refusals: Refusal[] = [];
  if (!ids.includes(sellsBy))
    refusals.push({
      field: "sellsBy",
      got: JSON.stringify(sellsBy),
      expected: `the id of a fee table: ${ids.join(", ")}`,
    });
  if (repeated >= 0)
    refusals.push({
      field: `feeTables.${repeated}.id`,
      got: JSON.stringify(ids[repeated]),
      expected: "an id that no other fee table has",
    });
  return refusals;
}

/** Why these costs cannot be written, each place named from the start that is given. */
export function costsProblem(tables: Tables, costs: CostSettings, from = "") {
  const refusals = [...costsRefusals(costs), ...currencyRefusals(tables, costs)];
  const named = refusals.map((one) => ({ ...one, field: `${from}${one.field}` }));
  return refusals.length > 0 ? problem("bad-request", "The costs were not changed", named) : undefined;
}

/** Lines of the books that need no rate now must not need one that nobody has typed in. */
function currencyRefusals(tables: Tables, costs: CostSettings): Refusal[] {
  const lacks = tables.entries
    .all()
    .find(({ value: { amount, rate } }) => rateRefusals(amount.currency, rate, costs).length > 0);
  if (lacks === undefined) return [];
  const { currency } = lacks.value.amount;
  const expected = `${currency}, or rates.${currency}: the books have lines in ${currency} without a rate`;
  return [{ field: "currency", got: JSON.stringify(costs.currency), expected }];
}
