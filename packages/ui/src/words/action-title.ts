import type { Part, PlanAction } from "@ferrule/core";
import { partTitle } from "./part-title.ts";

/** What a thing to do is about; what is kept waiting is called by what is here, for nobody knows the whole club yet. */
export function actionTitle(action: PlanAction, parts: ReadonlyMap<string, Part>): string {
  if (action.do !== "wait") return action.title;
  const here = action.parts.flatMap((id) => parts.get(id) ?? []);
  const lead = here.find(({ kind }) => kind === "head") ?? here.find(({ kind }) => kind === "shaft");
  return lead ? partTitle(lead) : action.title;
}
