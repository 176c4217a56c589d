import { roundMinor } from "../money.ts";
import type { PlanModel } from "./plan-model.ts";

/**
 * The model with every hour dearer by so much. Its best choice takes nothing that brings less than that for an hour over what
 * an hour costs already, with all that has to be bought and driven for it: without it the choice would be better.
 */
export function dearerHours(model: PlanModel, morePerHourMinor: number): PlanModel {
  if (morePerHourMinor <= 0) return model;
  const more = (minutes: number) => roundMinor((minutes / 60) * morePerHourMinor);
  return {
    ...model,
    uses: model.uses.map((use) => ({ ...use, netMinor: use.netMinor - more(use.minutes) })),
    bundles: model.bundles.map((each) => ({ ...each, timeMinor: each.timeMinor + more(each.minutes) })),
    trips: model.trips.map((each) => ({ ...each, timeMinor: each.timeMinor + more(each.minutes) })),
  };
}
