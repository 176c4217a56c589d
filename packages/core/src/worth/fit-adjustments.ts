import type { AdjustmentName } from "./adjusted-price.ts";
import type { Adjustments } from "./cost-settings.ts";
import type { Evidence } from "./evidence.ts";
import { factorEffect, factorNames } from "./price-factors.ts";
import { fitPrices, type PriceModel } from "./price-model.ts";

type FactorName = Exclude<AdjustmentName, "season">;

/** Adjustments moved towards evidence, and how many prices each rests on (0: the figure of the settings). */
export interface FittedAdjustments {
  readonly adjustments: Adjustments;
  readonly fittedFrom: Readonly<Record<FactorName, number>> & {
    /** By month, January first. */
    readonly season: readonly number[];
  };
}

function fittedLog({ design, learnt }: PriceModel, name: string): number {
  const column = design.columns.get(name);
  return column === undefined ? 0 : (learnt.solution.means[column] as number);
}

/** How many prices have the trait, where others of their market do not: without those nothing is told of it. */
function countOf({ design }: PriceModel, name: string): number {
  const column = design.columns.get(name);
  if (column === undefined) return 0;
  const withIt = design.rows.filter(({ columns }) => columns.includes(column));
  // The first effect of every price is the level of its market.
  const levels = new Set(withIt.map(({ columns }) => columns[0]));
  const isTold = design.rows.some(({ columns }) => levels.has(columns[0]) && !columns.includes(column));
  return isTold ? withIt.length : 0;
}

/** The factors of the settings as a model of noted prices has moved them. */
export function adjustmentsOf(model: PriceModel): FittedAdjustments {
  const { adjustments } = model.settings;
  const moved = (setting: number, name: string) => setting * Math.exp(fittedLog(model, name));
  const factors = factorNames.map((name) => [name, moved(adjustments[name], factorEffect(name))] as const);
  const counts = factorNames.map((name) => [name, countOf(model, factorEffect(name))] as const);
  const season = adjustments.season.map((factor, month) => moved(factor, factorEffect("season", month)));
  return {
    adjustments: { ...adjustments, ...(Object.fromEntries(factors) as Record<FactorName, number>), season },
    fittedFrom: {
      ...(Object.fromEntries(counts) as Record<FactorName, number>),
      season: season.map((_, month) => countOf(model, factorEffect("season", month))),
    },
  };
}

/**
 * Moves each factor towards what noted prices show, all at once and by shrinkage: the more prices, the nearer the evidence. Months
 * move only where prices of a year have been noted. Prices of one currency are told from each other alone. Returned as they are
 * when `fit` is off. Prices have aged to the day of the newest.
 */
export function fitAdjustments(evidence: readonly Evidence[], adjustments: Adjustments): FittedAdjustments {
  const prices = evidence.map((row) => ({ row, ...row.price }));
  const newest =
    evidence
      .map(({ on }) => on)
      .sort()
      .at(-1) ?? "";
  return adjustmentsOf(fitPrices(prices, adjustments, newest));
}
