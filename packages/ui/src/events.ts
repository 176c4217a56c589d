import type { Joint } from "@ferrule/core";
import type { DisplaySettings } from "./display-settings.ts";

/** The news that components send up; each bubbles out of its shadow root. */
export interface News {
  /** Go to another address of the page. */
  readonly "ferrule-go": { readonly path: string };
  /** Something was done; said aloud, with a way back where there is one. */
  readonly "ferrule-done": { readonly text: string; readonly undoable?: boolean };
  readonly "ferrule-display": DisplaySettings;
  readonly "ferrule-answered": { readonly name: string; readonly value: string };
  readonly "ferrule-retry": undefined;
  readonly "ferrule-join": Pick<Joint, "type" | "parts">;
  readonly "ferrule-unjoin": { readonly id: string };
}

export function tell<Name extends keyof News>(from: EventTarget, name: Name, detail: News[Name]): void {
  from.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}
