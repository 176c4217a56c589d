import { dropDominated } from "./drop-dominated.ts";
import type { PlanModel } from "./plan-model.ts";
import { readyPacking } from "./ready-packing.ts";

/**
 * The model without what is in no better choice whatever the limits: uses that bring nothing, and those that another does
 * better with no more time, money and things. Its best is the best of the whole under any limits and any counts.
 */
export function leanModel(model: PlanModel): PlanModel {
  const kinds = new Set(model.uses.flatMap(({ kind }) => kind ?? []));
  // Limits that bind, whatever they are: only then is more time or money held against a use.
  const mostOfKind = Object.fromEntries([...kinds].map((kind) => [kind, 0]));
  const packing = readyPacking({ ...model, limits: { budgetMinor: 0, minutes: 0, mostOfKind } });
  const paying = packing.uses.filter(({ net }) => net > 0);
  const kept = new Set(dropDominated({ ...packing, uses: paying }).uses.map(({ id }) => id));
  return { ...model, uses: model.uses.filter(({ id }) => kept.has(id)) };
}
