import type { Refusal } from "@ferrule/core";
import { type ApiError, call } from "./api.ts";
import type { Thing } from "./offline/waiting-change.ts";

/** Who made a change. */
export interface Who {
  readonly means: "here" | "device" | "command-line";
  readonly device: string | null;
  readonly name: string | null;
}

/** One thing that a change touched; null where it was not there, or is not any more. */
export interface HistoryEntry {
  readonly table: string;
  readonly id: string;
  readonly before: unknown;
  readonly after: unknown;
}

export interface Change {
  readonly number: number;
  readonly at: string;
  readonly who: Who;
  readonly what: string;
  readonly words: string;
  /** How many things it touched; `entries` names the first of them. */
  readonly things: number;
  readonly entries: readonly HistoryEntry[];
  readonly undoes: number | null;
  readonly undoneBy: number | null;
}

/** What stands in the way of an undo: a thing as the change left it, as it is now, and what changed it since. */
export interface UndoConflict {
  readonly table: string;
  readonly id: string;
  readonly left?: Thing | null;
  readonly present?: Thing | null;
  readonly changes?: readonly number[];
}

/** Why an undo was refused. */
export interface UndoRefusal {
  readonly code: string;
  readonly message: string;
  readonly refusals: readonly Refusal[];
  readonly conflicts: readonly UndoConflict[];
}

export interface HistoryPage {
  readonly changes: readonly Change[];
  /** What the next page comes before. */
  readonly next: number | null;
}

/** The thing that a history is of, or all of the bench. */
export interface HistoryOf {
  readonly table: string;
  readonly id: string;
}

function historyPath(limit: number, of: HistoryOf | undefined, before: number | null): string {
  const asked = { limit: String(limit), ...(before !== null && { before: String(before) }), ...of };
  return `/api/history?${new URLSearchParams(asked)}`;
}

/** Every call about who changed what. */
export const historyApi = {
  list: (limit: number, of?: HistoryOf, before: number | null = null) =>
    call<HistoryPage>("GET", historyPath(limit, of, before)),
  one: (number: number, from: number) =>
    call<Change & { readonly next: number | null }>("GET", `/api/history/${number}?from=${from}`),
  undo: (number: number) => call<{ readonly change: Change }>("POST", `/api/history/${number}/undo`),
  ownName: () => call<{ readonly name: string | null }>("GET", "/api/own-name"),
  changeOwnName: (name: string | null) =>
    call<{ readonly name: string | null }>("PUT", "/api/own-name", { name }),
};

/** A refusal of an undo with all that the bench said of it. */
export function undoRefusal({ code, message, refusals, details }: ApiError): UndoRefusal {
  return { code, message, refusals, conflicts: (details["conflicts"] as readonly UndoConflict[]) ?? [] };
}
