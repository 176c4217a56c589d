import { droppedSafetyFaults, type Joint, type Part, type Refusal } from "@ferrule/core";
import { openJointBook } from "../bench/joint-book.ts";
import { type Conflict, type Problem, problem } from "../errors.ts";
import type { HistoryTable, KeptChange } from "../store/history.ts";
import { listNames } from "../store/lists.ts";
import type { Tables } from "../store/tables.ts";
import { type Costs, costsProblem } from "../trade/costs.ts";
import { laterChanges, type UndoStep } from "./undo-steps.ts";

const unsafeMessage =
  "Undoing this would take back a fault of safety, and it is not the last thing that was done. " +
  "A person clears the fault with a note, on the part's inspection";

/**
 * A fault of safety is never taken back in passing. Only what was done last may be undone with it, and what the next undo of the
 * bench takes back, so that a slip can be put right at once.
 */
export function safetyProblem(
  tables: Tables,
  { number }: KeptChange,
  steps: readonly UndoStep[],
): Problem | undefined {
  const refusals = steps.flatMap(({ table, present, next }): Refusal[] => {
    if (table !== "parts" || present === undefined || next === undefined) return [];
    const [before, after] = [present.value as Part, next.value as Part];
    return droppedSafetyFaults(before, after).map((fault) => ({
      field: "faults",
      got: `no ${fault} of ${JSON.stringify(before.id)}`,
      expected: `${JSON.stringify(fault)} among them, until a person clears it with a note`,
    }));
  });
  const isAllowed = refusals.length === 0 || tables.deletions.topChange() === number;
  if (isAllowed || isLast(tables.history, number)) return undefined;
  return problem("unsafe", unsafeMessage, refusals).problem;
}

/** Whether nothing was done after it but what has been undone, and the undoing. */
function isLast(history: HistoryTable, number: number): boolean {
  const mostAtOnce = 200;
  const later = history.after(number, mostAtOnce);
  return (
    later.length < mostAtOnce && later.every(({ undoes, undoneBy }) => undoes !== null || undoneBy !== null)
  );
}

/** What does not hold together any more once the steps have been done, and did before. */
export function brokenProblem(
  tables: Tables,
  costs: Costs,
  number: number,
  steps: readonly UndoStep[],
  brokenBefore: readonly BrokenJoint[],
): Problem | undefined {
  const touched = new Set(steps.map(({ table }) => table));
  const before = new Set(brokenBefore.map(({ joint }) => joint.id));
  const broken = brokenJoints(tables, steps).filter(({ joint }) => !before.has(joint.id));
  if (broken.length > 0) return jointsProblem(tables, number, broken);
  if (touched.has("costs") || touched.has("entries")) {
    const refused = costsProblem(tables, costs.read());
    if (refused) return { ...refused.problem, code: "would-break", message: undefined };
  }
  return touched.has("example") ? mixedExample(tables, steps) : undefined;
}

interface BrokenJoint {
  readonly joint: Joint;
  readonly refusals: readonly Refusal[];
}

/** Joints that cannot be, as the bench is now; none where the steps do nothing that a joint could mind. */
export function brokenJoints(tables: Tables, steps: readonly UndoStep[]): BrokenJoint[] {
  if (!steps.some(mattersToJoints)) return [];
  const book = openJointBook(tables.parts.all().map(({ value }) => value));
  return tables.joints.all().flatMap(({ value: joint }) => {
    const refusals = book.enter(joint);
    return refusals.length > 0 ? [{ joint, refusals }] : [];
  });
}

/** Whole benches are read for it, so it is asked first. */
function mattersToJoints({ table, present, next }: UndoStep): boolean {
  if (table !== "parts") return table === "joints";
  const kindOf = (standing: UndoStep["next"]) => (standing?.value as Part | undefined)?.kind;
  return present !== undefined && kindOf(present) !== kindOf(next);
}

function jointsProblem(tables: Tables, number: number, broken: readonly BrokenJoint[]): Problem {
  const conflicts = broken.map(({ joint }): Conflict => {
    const id = joint.id as string;
    const changes = laterChanges(tables.history, number, "joints", id);
    return { table: "joints", id, left: null, present: joint, changes };
  });
  const refusals = broken.flatMap(({ joint, refusals: each }) =>
    each.map((one) => ({ ...one, field: `joints.${joint.id}.${one.field}` })),
  );
  return { code: "would-break", refusals, conflicts };
}

/** A bench that comes back, or the example, is not mixed with what has been put there since. */
function mixedExample(tables: Tables, steps: readonly UndoStep[]): Problem | undefined {
  const lists = new Set<string>(listNames);
  const back = steps.filter(({ table, next }) => lists.has(table) && next !== undefined).length;
  const there = listNames.reduce((sum, name) => sum + tables[name].all().length, 0);
  if (there === back) return undefined;
  const message =
    "Undoing this would mix the example with a bench of your own: something has been put on the bench since. Undo that first";
  return { code: "would-break", message };
}
