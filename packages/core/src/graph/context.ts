import type { Claim } from "../parts/claim.ts";
import type { Goal, Skill } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import type { TypicalRow } from "../parts/typical.ts";
import type { Role } from "../rules/rule.ts";
import { mayTakeShaft, type Place } from "./shape.ts";

/** The parts that are looked at together, and what is known and wanted beside them. */
export interface Context {
  readonly head?: Part;
  readonly adapter?: Part;
  readonly shaft?: Part;
  readonly grip?: Part;
  readonly goal: Goal;
  readonly claims: readonly Claim[];
  readonly typical: readonly TypicalRow[];
  /** The highest skill that the work found so far asks for. */
  readonly workSkill?: Skill;
  /** Whether the shaft's length was read with its grip on, and with its adapter. */
  readonly gripped?: boolean;
  readonly bonded?: boolean;
}

/** The place that a role stands for in this context, if it is filled. */
export function placeOfRole(role: Role, context: Pick<Context, Place>): Place | undefined {
  if (role === "goal" || role === "work") return undefined;
  if (role !== "holder") return context[role] ? role : undefined;
  if (context.adapter) return "adapter";
  return mayTakeShaft(context.head) ? "head" : undefined;
}
