import type { PartKind } from "@ferrule/core";
import type { Draft } from "./draft.ts";

export interface KeptDraft {
  readonly kind: PartKind | undefined;
  readonly draft: Draft;
}

const keyOf = (id: string | undefined) => `ferrule.draft.${id ?? "(new)"}`;

/** What was typed for a part and not saved yet; it lives as long as the browser's tab. */
export function readKeptDraft(id: string | undefined): KeptDraft | undefined {
  try {
    return JSON.parse(sessionStorage.getItem(keyOf(id)) ?? "null") ?? undefined;
  } catch {
    return undefined;
  }
}

/** Keeps what was typed, or forgets it when there is nothing to keep. */
export function keepDraft(id: string | undefined, kept: KeptDraft | undefined): void {
  try {
    if (kept) sessionStorage.setItem(keyOf(id), JSON.stringify(kept));
    else sessionStorage.removeItem(keyOf(id));
  } catch {
    // Storage is shut: the form still holds what was typed for as long as it is open.
  }
}
