import { roundMinor } from "../money.ts";
import type { CostSettings } from "./cost-settings.ts";

/** A drive to fetch something and come home: kilometres both ways, and minutes. */
export interface Trip {
  readonly roundTripKm: number;
  /** How long it takes there and back, where that is known; else it goes by the distance. */
  readonly minutes?: number | undefined;
}

/** `moneyMinor` is paid, `timeMinor` is own time, and the total is both: whole minor units of the bench's currency. */
export interface TripCost {
  readonly moneyMinor: number;
  readonly minutes: number;
  readonly timeMinor: number;
  readonly totalMinor: number;
}

/** What fetching something costs: the distance by the kilometre, and the time at the value of an hour. */
export function tripCost(
  { roundTripKm, minutes: known }: Trip,
  costs: Pick<CostSettings, "perKmMinor" | "minutesPerKm" | "hourValueMinor">,
): TripCost {
  const minutes = known ?? roundTripKm * costs.minutesPerKm;
  const moneyMinor = roundMinor(roundTripKm * costs.perKmMinor);
  const time = timeMinor(minutes, costs);
  return { moneyMinor, minutes, timeMinor: time, totalMinor: moneyMinor + time };
}

/** What so many minutes are worth at the value of an hour, rounded once. */
export function timeMinor(minutes: number, costs: Pick<CostSettings, "hourValueMinor">): number {
  return roundMinor((minutes * costs.hourValueMinor) / 60);
}
