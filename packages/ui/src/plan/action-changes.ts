import type { PlanAction } from "@ferrule/core";

/** What one plan does that another does not, and what it leaves undone; the same thing done twice counts twice. */
export function actionChanges(
  from: readonly PlanAction[],
  to: readonly PlanAction[],
): { readonly added: readonly PlanAction[]; readonly dropped: readonly PlanAction[] } {
  return { added: without(to, from), dropped: without(from, to) };
}

function without(all: readonly PlanAction[], taken: readonly PlanAction[]): PlanAction[] {
  const left = new Map<string, number>();
  for (const action of taken) left.set(keyOf(action), (left.get(keyOf(action)) ?? 0) + 1);
  return all.filter((action) => {
    const count = left.get(keyOf(action)) ?? 0;
    left.set(keyOf(action), count - 1);
    return count <= 0;
  });
}

const keyOf = ({ do: what, title, waitsFor }: PlanAction) => `${what} ${title} ${waitsFor?.want ?? ""}`;
