import { modelFinder, resaleEstimator, rules, type Want, wantValues } from "@ferrule/core";
import { solverWithin } from "./solver-within.ts";
import type { ThreadPort } from "./thread-port.ts";
import type { ValuesTask } from "./thread-task.ts";
import { type Waiting, waitingFor } from "./waiting-for.ts";

/** What one wanted part is worth, and how long it may be to wait for one at which price. */
export interface ValuedWant {
  readonly want: Want["id"];
  readonly worthMinor: number;
  readonly clubs: readonly string[];
  readonly waiting: Waiting | null;
}

export type ValuesMessage = readonly ValuedWant[];

/** All wants together; a value that is not there in time is the best known. */
const secondsInAll = 60;

/** Values wants by the plan, and says them. */
export async function valueWants({ world, wishes, wants }: ValuesTask, port: ThreadPort): Promise<void> {
  const solve = solverWithin(await port.solver(), secondsInAll, port.shouldStop);
  let left = wants.length + 1;
  const values = await wantValues(wants, { ...world, wishes, rules }, (model, start) => {
    const share = 1 / Math.max(1, left);
    left -= 1;
    return solve(model, { share, relativeGap: 1e-4, ...(start ? { start } : {}) });
  });
  const resale = resaleEstimator(world.evidence, world.costs, world.today);
  const finder = modelFinder(world.catalogue);
  const valued: ValuesMessage = values.map(({ want, worthMinor, clubs }) => ({
    want: want.id,
    worthMinor,
    clubs: [...new Set(clubs)],
    waiting: worthMinor > 0 ? waitingFor(want, worthMinor, { ...world, resale, finder }) : null,
  }));
  if (!port.shouldStop()) port.say(valued);
}
