import type { FoundCode } from "@ferrule/core";
import { call } from "./api.ts";
import type { LabelSetup } from "./labels/label-sheet.ts";

/** The label of a part, or of parts that are joined. */
export interface Label {
  readonly code: string;
  readonly part: string;
  readonly joined: readonly string[];
  readonly printed: boolean;
}

export interface LabelsReply {
  readonly labels: readonly Label[];
  readonly setup: LabelSetup;
  /** What the address on a label begins with; null where only this machine could open it. */
  readonly address: string | null;
}

/** Every call about labels and their codes. */
export const labelApi = {
  labels: () => call<LabelsReply>("GET", "/api/labels"),
  changeSetup: (setup: LabelSetup, base?: LabelSetup) =>
    call<LabelSetup>("PUT", "/api/labels/setup", setup, { from: base && { base } }),
  markPrinted: (codes: readonly string[], printed: boolean) =>
    call<{ labels: readonly Label[] }>("POST", "/api/labels/printed", { codes, printed }),
  find: (text: string) =>
    call<FoundCode>("GET", `/api/codes/${encodeURIComponent(text.trim().slice(0, 400))}`),
};
