import { isDeepStrictEqual } from "node:util";
import { done, type Outcome, type Problem, ProblemError } from "../errors.ts";
import type { KeptChange } from "../store/history.ts";
import type { Tables } from "../store/tables.ts";
import type { Costs } from "../trade/costs.ts";
import { type KeptThings, keptThings } from "./kept-thing.ts";
import { noSuchChange } from "./no-such-change.ts";
import { brokenJoints, brokenProblem, safetyProblem } from "./undo-checks.ts";
import { isConflict, type UndoStep, undoStep } from "./undo-steps.ts";

/**
 * Takes back one change, whole or not at all: what it added goes, what it took comes back where it stood, what it changed gets
 * back the fields that still stand as the change left them. Where one has been changed since, or something would not hold
 * together, nothing is done. Returns the number of the change that the undo is itself.
 */
export function undoChange(tables: Tables, costs: Costs, number: number): Outcome<number> {
  try {
    tables.together(() => takeBack(tables, costs, number), { what: "change-undone" });
    return done(tables.history.latest());
  } catch (error) {
    // Thrown so that what has been done by then is rolled back.
    if (error instanceof ProblemError) return { ok: false, problem: error.problem };
    throw error;
  }
}

function takeBack(tables: Tables, costs: Costs, number: number): void {
  const { history } = tables;
  const change = standing(history.get(number), number);
  const things = keptThings(tables);
  const found = history.entries(number).flatMap((entry) => undoStep(things, history, number, entry) ?? []);
  const conflicts = found.filter(isConflict);
  if (conflicts.length > 0) refuse({ code: "changed-since", conflicts });
  const steps = found.flatMap((step) => (isConflict(step) ? [] : step));
  refuse(safetyProblem(tables, change, steps));
  const brokenBefore = brokenJoints(tables, steps);
  apply(things, steps);
  refuse(brokenProblem(tables, costs, number, steps, brokenBefore));
  tables.recorder.undoes(number);
  tables.deletions.dropOf(number);
}

function standing(change: KeptChange | undefined, number: number): KeptChange {
  if (change === undefined) throw new ProblemError(noSuchChange(number));
  if (change.undoneBy !== null)
    throw new ProblemError({
      code: "undone-already",
      message: `Change ${number} has been undone already, by change ${change.undoneBy}`,
    });
  return change;
}

/** All that goes goes first, so that places are free for what comes. */
function apply(things: KeptThings, steps: readonly UndoStep[]): void {
  const moves = ({ present, next }: UndoStep) => next === undefined || present?.place !== next.place;
  for (const step of steps) if (step.present && moves(step)) step.thing.remove();
  for (const { thing, present, next } of steps)
    if (next && !isDeepStrictEqual(present, next)) thing.write(next);
  things.finish();
}

function refuse(stated: Problem | undefined): void {
  if (stated) throw new ProblemError(stated);
}
