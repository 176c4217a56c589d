import type { WorkStep } from "../resolve/result.ts";
import type { PlanChoice } from "./plan-model.ts";
import type { PlanAction } from "./plan-result.ts";
import type { PlanSetup } from "./plan-setup.ts";
import type { MeaningfulUse } from "./plan-uses.ts";
import { takeInstances } from "./take-instances.ts";

/** A choice as things to do: first what is fetched and bought, then what is built, sold and kept waiting, the best first. */
export function planActions(choice: PlanChoice, setup: PlanSetup): { actions: PlanAction[]; kept: string[] } {
  const bought = new Set(choice.bundles);
  const { done, kept } = takeInstances(choice, setup);
  const uses = done.map(({ use, ids }) => useAction(use, ids));
  const order = { build: 0, sell: 1, wait: 2 };
  const sorted = done
    .map(({ use }, at) => ({ use, action: uses[at] as PlanAction }))
    .sort((one, other) => order[one.use.do] - order[other.use.do] || other.use.netMinor - one.use.netMinor);
  return {
    actions: [...fetches(bought, setup), ...purchases(bought, setup), ...sorted.map(({ action }) => action)],
    kept,
  };
}

const plainAction = {
  parts: [],
  sightings: [],
  work: [],
  waitsFor: null,
} as const;

function fetches(bought: ReadonlySet<string>, { model, offers }: PlanSetup): PlanAction[] {
  return model.trips.flatMap(({ id, moneyMinor, minutes, timeMinor }) => {
    const here = offers.filter((offer) => bought.has(offer.id) && offer.trip?.id === id);
    if (here.length === 0) return [];
    return [
      {
        ...plainAction,
        do: "fetch" as const,
        title: `drive to ${here[0]?.sighting.place ?? "the seller"} and back`,
        sightings: here.map((offer) => offer.id),
        netMinor: -(moneyMinor + timeMinor),
        outlayMinor: moneyMinor,
        minutes,
      },
    ];
  });
}

function purchases(bought: ReadonlySet<string>, { offers }: PlanSetup): PlanAction[] {
  return offers
    .filter(({ id }) => bought.has(id))
    .map(({ id, parts, priceMinor, sighting }) => ({
      ...plainAction,
      do: "buy" as const,
      title: sighting.text.split("\n")[0]?.slice(0, 80) ?? id,
      parts: parts.map((part) => part.id),
      sightings: [id],
      netMinor: -priceMinor,
      outlayMinor: priceMinor,
      minutes: 0,
    }));
}

/** A use of the representatives' parts, done with the parts that are really there. */
function useAction(use: MeaningfulUse, ids: ReadonlyMap<string, string>): PlanAction {
  const real = (id: string) => ids.get(id) ?? id;
  const work = (use.club?.work ?? []).map((step: WorkStep) => ({ ...step, parts: step.parts.map(real) }));
  return {
    ...plainAction,
    do: use.do,
    title: use.title,
    parts: use.parts.map(real),
    netMinor: use.netMinor,
    outlayMinor: use.outlayMinor,
    minutes: use.minutes,
    work,
    waitsFor: use.want
      ? { want: use.want.id, text: use.want.text, takeAtOrUnderMinor: use.takeAtOrUnderMinor ?? 0 }
      : null,
  };
}
