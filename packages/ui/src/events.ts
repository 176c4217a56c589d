import type { ClubType, Fault, Joint, Target, TuneSolution, Watch } from "@ferrule/core";
import type { DisplaySettings } from "./display-settings.ts";
import type { LabelSetup } from "./labels/label-sheet.ts";
import type { PlanWishes } from "./plan-api.ts";
import type { MeasureReply } from "./sheet-api.ts";
import type { JudgeReply } from "./trade-api.ts";
import type { WatchChange } from "./watch-api.ts";

/** The news that components send up; each bubbles out of its shadow root. */
export interface News {
  /** Go to another address of the page. */
  readonly "ferrule-go": {
    readonly path: string;
    /** The judgement of the listing that is gone to, so that it is not asked for twice. */
    readonly judged?: JudgeReply;
  };
  /** Something was done; said aloud, with a way back where there is one. */
  readonly "ferrule-done": {
    readonly text: string;
    readonly undoable?: boolean;
    /** The way back, where it is not the bench's own. */
    readonly undo?: () => Promise<unknown>;
    /** What to say once it is undone, where "brought back" would be the wrong word. */
    readonly undone?: string;
  };
  readonly "ferrule-display": DisplaySettings;
  /** What clubs of a type are to measure; what is not there has no target. */
  readonly "ferrule-target": { readonly clubType: ClubType; readonly target: Target };
  /** Many settings were put in at once. */
  readonly "ferrule-settings": undefined;
  /** The size of labels and of their paper. */
  readonly "ferrule-label-setup": LabelSetup;
  /** What a code that was held before the camera says. */
  readonly "ferrule-scanned": { readonly text: string };
  readonly "ferrule-answered": { readonly name: string; readonly value: string };
  readonly "ferrule-retry": undefined;
  readonly "ferrule-join": Pick<Joint, "type" | "parts">;
  readonly "ferrule-unjoin": { readonly id: string };
  /** A form was filled in and every field of it could be read. */
  readonly "ferrule-record": { readonly record: Readonly<Record<string, unknown>> };
  /** A way of tuning is to be drawn. */
  readonly "ferrule-try-way": Pick<TuneSolution, "build" | "grip">;
  /** A plan is to be made within these. */
  readonly "ferrule-wishes": PlanWishes;
  /** The user says something about what is watched for, or takes it off the list. */
  readonly "ferrule-watch": { readonly change: WatchChange; readonly base: Watch };
  readonly "ferrule-unwatch": Watch;
  /** What was read off a finished club is kept. */
  readonly "ferrule-measured": MeasureReply;
  /** A fault of safety was cleared by a person with a note. */
  readonly "ferrule-cleared": { readonly fault: Fault };
  /** An item of a listing is to be added, or taken out. */
  readonly "ferrule-add-item": undefined;
  readonly "ferrule-remove-item": { readonly index: number };
  /** Go to the words a fact was read from, or from the words to the fact. */
  readonly "ferrule-see-words": { readonly field: string };
  readonly "ferrule-see-fact": { readonly field: string };
}

export function tell<Name extends keyof News>(from: EventTarget, name: Name, detail: News[Name]): void {
  from.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}
