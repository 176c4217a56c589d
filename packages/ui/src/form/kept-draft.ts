import type { Part, PartKind } from "@ferrule/core";
import type { Draft } from "./draft.ts";
import { keepInTab, readFromTab } from "./kept-in-tab.ts";

export interface KeptDraft {
  readonly kind: PartKind | undefined;
  readonly draft: Draft;
  /** The part that it was typed over. */
  readonly before?: Part | undefined;
}

const nameOf = (id: string | undefined) => `draft.${id ?? "(new)"}`;

/** What was typed for a part and not saved yet; it lives as long as the browser's tab. */
export function readKeptDraft(id: string | undefined): KeptDraft | undefined {
  return readFromTab(nameOf(id));
}

/** Keeps what was typed, or forgets it when there is nothing to keep. */
export function keepDraft(id: string | undefined, kept: KeptDraft | undefined): void {
  keepInTab(nameOf(id), kept);
}
