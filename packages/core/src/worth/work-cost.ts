import type { CostSettings } from "./cost-settings.ts";
import { timeMinor } from "./trip-cost.ts";

/** A step of work, by its name in the work table, with the table's minutes and materials. */
export interface CostedStep {
  readonly step: string;
  readonly minutes: number;
  readonly costMinor: number;
}

/**
 * Minutes at the bench, what is used up, and those minutes at the value of an hour: whole minor units of the bench's currency.
 */
export interface WorkCost {
  readonly minutes: number;
  readonly materialMinor: number;
  readonly timeMinor: number;
  readonly totalMinor: number;
}

/** What steps of work cost, the user's own figures for a step going before the table's. */
export function workCost(
  steps: readonly CostedStep[],
  costs: Pick<CostSettings, "work" | "hourValueMinor">,
): WorkCost {
  const own = steps.map((step) => ({ ...step, ...known(costs.work[step.step]) }));
  const minutes = own.reduce((sum, step) => sum + step.minutes, 0);
  const materialMinor = own.reduce((sum, step) => sum + step.costMinor, 0);
  const time = timeMinor(minutes, costs);
  return { minutes, materialMinor, timeMinor: time, totalMinor: materialMinor + time };
}

/** The figures that are there: one that is left out must not blot out the table's. */
function known(figures: CostSettings["work"][string] | undefined) {
  const { minutes, costMinor } = figures ?? {};
  return {
    ...(minutes === undefined ? {} : { minutes }),
    ...(costMinor === undefined ? {} : { costMinor }),
  };
}
