import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import type { WorkStep } from "../resolve/result.ts";
import { titleOfPart } from "../worth/titles.ts";
import { type WorkCost, workCost } from "../worth/work-cost.ts";
import { titleOfOffer } from "./offers.ts";
import { type Parting, partingBundleId, sideTaken } from "./parting.ts";
import type { PlanChoice } from "./plan-model.ts";
import type { PlanAction } from "./plan-result.ts";
import type { PlanSetup } from "./plan-setup.ts";
import { type DoneUse, takeInstances } from "./take-instances.ts";

/**
 * A choice as things to do, in the order in which they can be done: what is fetched and bought, what is taken apart, what is
 * built, sold and kept waiting, the best first.
 */
export function planActions(choice: PlanChoice, setup: PlanSetup): { actions: PlanAction[]; kept: string[] } {
  const bought = new Set(choice.bundles);
  const { done, kept } = takeInstances(choice, setup);
  const split = done.map((each) => splitUse(each, setup));
  const order = { build: 0, sell: 1, wait: 2 };
  const sorted = split
    .map(({ action }, at) => ({ action, place: order[done[at]?.use.do ?? "wait"] }))
    .sort((one, other) => one.place - other.place || other.action.netMinor - one.action.netMinor);
  return {
    actions: [
      ...fetches(bought, setup),
      ...purchases(bought, setup),
      ...setup.partings.flatMap((parting) => partingActions(parting, bought, done)),
      ...split.flatMap(({ apart }) => apart),
      ...sorted.map(({ action }) => action),
    ],
    kept,
  };
}

const plainAction = { parts: [], sightings: [], work: [], waitsFor: null } as const;

function fetches(bought: ReadonlySet<string>, { trips, offers }: PlanSetup): PlanAction[] {
  return trips.flatMap(({ id, moneyMinor, minutes, timeMinor }) => {
    const here = offers.filter((offer) => bought.has(offer.id) && offer.trip?.id === id);
    if (here.length === 0) return [];
    return [
      {
        ...plainAction,
        do: "fetch" as const,
        title: `drive to ${here[0]?.sighting.place?.trim() || "the seller"} and back`,
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
    .map((offer) => ({
      ...plainAction,
      do: "buy" as const,
      title: titleOfOffer(offer),
      parts: offer.parts.map((part) => part.id),
      sightings: [offer.id],
      netMinor: -offer.priceMinor,
      outlayMinor: offer.priceMinor,
      minutes: 0,
    }));
}

/** Taking apart each thing of a sort that is taken apart: those of which a use took one side of the joint. */
function partingActions(
  parting: Parting,
  bought: ReadonlySet<string>,
  done: readonly DoneUse[],
): PlanAction[] {
  const { type, one, other, step, title, cost } = parting;
  const placeOf = new Map(type.parts.map(({ id }, at) => [id, at]));
  const freed = done.filter(({ use }) => sideTaken(new Set(use.parts), parting));
  const real = new Set(freed.flatMap(({ ids }) => [one.id, other.id].flatMap((id) => ids.get(id) ?? [])));
  const apart = type.instances.filter(({ parts }) => parts.some(({ id }) => real.has(id)));
  const paid = type.instances.filter((_, number) => bought.has(partingBundleId(parting, number))).length;
  return apart.slice(0, paid).map(({ parts }) => {
    const ids = new Map([...placeOf].map(([id, at]) => [id, (parts[at] as Part).id] as const));
    return apartAction(
      title,
      [renamed(step, ids)],
      parts.map(({ id }) => id),
      cost,
    );
  });
}

function apartAction(
  title: string,
  work: readonly WorkStep[],
  parts: readonly string[],
  cost: WorkCost,
): PlanAction {
  return {
    ...plainAction,
    ...{ do: "take-apart", title, parts, work },
    netMinor: -cost.totalMinor,
    outlayMinor: cost.materialMinor,
    minutes: cost.minutes,
  };
}

/** A use done with the parts that are really there, and what has to be taken apart for it alone as an action of its own. */
function splitUse({ use, ids }: DoneUse, setup: PlanSetup): { action: PlanAction; apart: PlanAction[] } {
  const { costs, parts } = setup.context;
  const steps = use.club?.work ?? [];
  const joints = use.club?.undoes.filter(({ type }) => type !== "gripped") ?? [];
  const apart = joints.flatMap((joint) => {
    const undoing = steps.filter((step) => undoes(step, joint));
    if (undoing.length === 0) return [];
    const [one, other] = joint.parts.map((id) => parts.get(id) as Part) as [Part, Part];
    const title = `take the ${titleOfPart(other)} out of the ${titleOfPart(one)}`;
    const here = undoing.map((step) => renamed(step, ids));
    return [apartAction(title, here, here[0]?.parts ?? [], workCost(undoing, costs))];
  });
  const total = (of: (action: PlanAction) => number) => apart.reduce((sum, each) => sum + of(each), 0);
  const action: PlanAction = {
    ...plainAction,
    ...{ do: use.do, title: use.title },
    parts: use.parts.map((id) => ids.get(id) ?? id),
    netMinor: use.netMinor - total(({ netMinor }) => netMinor),
    outlayMinor: use.outlayMinor - total(({ outlayMinor }) => outlayMinor),
    minutes: use.minutes - total(({ minutes }) => minutes),
    work: steps
      .filter((step) => !joints.some((joint) => undoes(step, joint)))
      .map((step) => renamed(step, ids)),
    waitsFor: use.want
      ? { want: use.want.id, text: use.want.text, takeAtOrUnderMinor: use.takeAtOrUnderMinor ?? 0 }
      : null,
  };
  return { action, apart };
}

const undoingSteps: ReadonlySet<string> = new Set(["unscrew", "pull-head", "pull-adapter"]);

const undoes = ({ step, parts }: WorkStep, joint: Joint) =>
  undoingSteps.has(step) && joint.parts.every((id) => parts.includes(id));

/** A step said of a representative's parts, said of the real ones: in its words too. */
function renamed(step: WorkStep, ids: ReadonlyMap<string, string>): WorkStep {
  const named = step.parts.flatMap((id) => {
    const real = ids.get(id);
    return real === undefined || real === id ? [] : [[id, real] as const];
  });
  return {
    ...step,
    parts: step.parts.map((id) => ids.get(id) ?? id),
    text: named.length === 0 ? step.text : textRenamed(step.text, new Map(named)),
  };
}

/** All names are changed at once, so that two that are swapped do not become one. */
function textRenamed(text: string, names: ReadonlyMap<string, string>): string {
  const escaped = [...names.keys()].map((id) => id.replace(/[.*+?^${}()|[\]\\]/gu, "\\$&"));
  return text.replace(
    new RegExp(`(?<=[a-z] )(?:${escaped.join("|")})(?=[ ,)])`, "gu"),
    (id) => names.get(id) ?? id,
  );
}
