import type { Kept } from "./kept.ts";
import { mergeThree, mineOnTop } from "./merge-three.ts";
import type { Thing, WaitingChange } from "./waiting-change.ts";

/** What a person says about a change that was not simply taken. */
export type Settling = "mine" | "theirs" | "again" | "give-up";

/** Does as the person says. Fields that only one side changed are kept either way. */
export async function settle(kept: Kept, place: number, how: Settling): Promise<void> {
  const change = (await kept.changes()).find((each) => each.place === place);
  if (change === undefined || change.state === "waiting") return;
  const next = how === "give-up" ? undefined : settled(change, how);
  if (next === undefined) return kept.drop(place);
  const { problem: _problem, present: _present, ...rest } = next;
  return kept.put({ ...rest, state: "waiting", tries: 0, key: crypto.randomUUID() });
}

function settled(change: WaitingChange, how: Exclude<Settling, "give-up">): WaitingChange | undefined {
  const { method, list, before, body, present } = change;
  if (how === "again") return change;
  if (method === "DELETE") return how === "mine" && present ? { ...change, before: present } : undefined;
  if (!present) return how === "mine" ? { ...change, method: "POST", path: list, before: null } : undefined;
  const sides = [before ?? {}, body as Thing, present] as const;
  const both = how === "mine" ? mineOnTop(...sides) : mergeThree(...sides).merged;
  return { ...change, before: present, body: both };
}
