import { grouped } from "./grouped.ts";
import type { MeaningfulUse } from "./meaningful-use.ts";
import type { PlanChoice } from "./plan-model.ts";
import type { PlanSetup } from "./plan-setup.ts";
import type { Instance, StockType } from "./stock.ts";

/** One time a use is done, and which real part stands for each part of the representatives. */
export interface DoneUse {
  readonly use: MeaningfulUse;
  readonly ids: ReadonlyMap<string, string>;
}

/** A thing that is there, and which of its places are taken already. */
interface Shelf {
  readonly instance: Instance;
  readonly taken: Set<number>;
}

/**
 * Gives every use of a choice real parts: what a use takes of one type comes from one thing of it, so that joined parts stay
 * together. Of each type those that take most of a thing choose first. What nobody takes is kept.
 */
export function takeInstances(choice: PlanChoice, setup: PlanSetup): { done: DoneUse[]; kept: string[] } {
  const bought = new Set(choice.bundles);
  const placeOf = new Map(
    setup.types.flatMap((type) => type.parts.map((part, at) => [part.id, { type, at }] as const)),
  );
  const done = Object.entries(choice.uses).flatMap(([id, count]) => {
    const use = setup.uses.get(id);
    return use ? Array.from({ length: count }, () => ({ use, ids: new Map<string, string>() })) : [];
  });
  const claims = done.flatMap(({ use, ids }) => claimsOf(use, ids, placeOf));
  const byType = grouped(claims, ({ type }) => type);
  const kept = setup.types.flatMap((type) => {
    const shelves = shelvesOf(type, bought);
    const most = (byType.get(type) ?? []).sort((one, other) => other.places.length - one.places.length);
    for (const claim of most) take(claim, shelves);
    return shelves.flatMap(({ instance, taken }) =>
      instance.parts.filter((_, at) => !taken.has(at)).map(({ id }) => id),
    );
  });
  return { done, kept };
}

/** What one use takes of one type, and where to note which real parts they are. */
interface Claim {
  readonly type: StockType;
  readonly places: readonly number[];
  readonly ids: Map<string, string>;
}

function claimsOf(
  { parts }: MeaningfulUse,
  ids: Map<string, string>,
  placeOf: ReadonlyMap<string, { readonly type: StockType; readonly at: number }>,
): Claim[] {
  const places = parts.flatMap((id) => placeOf.get(id) ?? []);
  return [...grouped(places, ({ type }) => type)].map(([type, taken]) => ({
    type,
    places: taken.map(({ at }) => at),
    ids,
  }));
}

function shelvesOf({ instances }: StockType, bought: ReadonlySet<string>): Shelf[] {
  return instances
    .filter(({ bundle }) => bundle === undefined || bought.has(bundle))
    .map((instance) => ({ instance, taken: new Set<number>() }));
}

function take({ type, places, ids }: Claim, shelves: readonly Shelf[]): void {
  const together = shelves.find(({ taken }) => places.every((at) => !taken.has(at)));
  for (const at of places) {
    const shelf = together ?? shelves.find(({ taken }) => !taken.has(at));
    if (!shelf) throw new Error(`the plan takes more of ${type.id} than there is`);
    shelf.taken.add(at);
    ids.set(type.parts[at]?.id as string, shelf.instance.parts[at]?.id as string);
  }
}
