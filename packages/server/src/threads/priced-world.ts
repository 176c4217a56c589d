import { type LinearSolver, type PlanPrices, priceParts, rules } from "@ferrule/core";
import { LastKept } from "./last-kept.ts";
import type { PlanWorld } from "./thread-task.ts";

/** A world with what parts are worth to its whole bench, where enough was seen to tell. */
export type PricedWorld = PlanWorld & { readonly rules: typeof rules; readonly prices?: PlanPrices };

export async function pricedWorld(world: PlanWorld, solver: LinearSolver): Promise<PricedWorld> {
  return withPrices(world, await priceParts({ ...world, rules }, solver));
}

/** Prices of a few benches, each worked out once. */
export class KeptPrices {
  readonly #prices = new LastKept<Promise<PlanPrices | undefined>>(2);

  /** The world with the prices of that name, worked out where they are not kept. */
  async of(name: string, world: PlanWorld, solver: LinearSolver): Promise<PricedWorld> {
    const prices = this.#prices.ask(name, () => priceParts({ ...world, rules }, solver));
    return withPrices(world, await prices);
  }
}

const withPrices = (world: PlanWorld, prices: PlanPrices | undefined): PricedWorld => ({
  ...world,
  rules,
  ...(prices ? { prices } : {}),
});
