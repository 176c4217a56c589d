import type { PlanChoice } from "./plan-model.ts";
import type { PlanSetup } from "./plan-setup.ts";
import type { MeaningfulUse } from "./plan-uses.ts";
import type { Instance, StockType } from "./stock.ts";

/** One time a use is done, and which real part stands for each part of the representatives. */
interface DoneUse {
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
 * together. Uses that take most of a thing choose first. What nobody takes is kept.
 */
export function takeInstances(choice: PlanChoice, setup: PlanSetup): { done: DoneUse[]; kept: string[] } {
  const bought = new Set(choice.bundles);
  const shelves = new Map(setup.types.map((type) => [type.id, shelvesOf(type, bought)]));
  const placeOf = new Map(
    setup.types.flatMap((type) => type.parts.map((part, at) => [part.id, { type, at }])),
  );
  const wanted = Object.entries(choice.uses).flatMap(([id, count]) => {
    const use = setup.uses.get(id);
    return use ? Array.from({ length: count }, () => use) : [];
  });
  const most = (use: MeaningfulUse) => use.parts.length;
  const done = wanted
    .sort((one, other) => most(other) - most(one))
    .map((use) => ({ use, ids: take(use, shelves, placeOf) }));
  const kept = [...shelves.values()]
    .flat()
    .flatMap(({ instance, taken }) => instance.parts.filter((_, at) => !taken.has(at)).map(({ id }) => id));
  return { done, kept };
}

function shelvesOf({ instances }: StockType, bought: ReadonlySet<string>): Shelf[] {
  return instances
    .filter(({ bundle }) => bundle === undefined || bought.has(bundle))
    .map((instance) => ({ instance, taken: new Set<number>() }));
}

function take(
  use: MeaningfulUse,
  shelves: ReadonlyMap<string, readonly Shelf[]>,
  placeOf: ReadonlyMap<string, { readonly type: StockType; readonly at: number }>,
): Map<string, string> {
  const byType = new Map<string, string[]>();
  for (const id of use.parts) {
    const type = placeOf.get(id)?.type.id ?? "";
    byType.set(type, [...(byType.get(type) ?? []), id]);
  }
  const ids = new Map<string, string>();
  for (const [type, parts] of byType) {
    const places = parts.map((id) => placeOf.get(id)?.at ?? 0);
    const all = shelves.get(type) ?? [];
    const together = all.find(({ taken }) => places.every((at) => !taken.has(at)));
    for (const [index, id] of parts.entries()) {
      const at = places[index] as number;
      const shelf = together ?? all.find(({ taken }) => !taken.has(at));
      if (!shelf) throw new Error(`the plan takes more of ${type} than there is`);
      shelf.taken.add(at);
      ids.set(id, shelf.instance.parts[at]?.id ?? id);
    }
  }
  return ids;
}
