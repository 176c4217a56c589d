import { canonicalText } from "@ferrule/core";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { HistoryOf } from "../history-api.ts";
import { whoText } from "../words/history-words.ts";
import { type Elsewhere, live } from "./live.ts";

/** What a form was opened with, and how to find out what is there by now. */
export interface Opened extends HistoryOf {
  readonly base: unknown;
  /** Undefined where it is gone. */
  readonly present: () => Promise<unknown>;
}

/** Somebody else's change of a thing that a form is open on. */
export interface Meanwhile {
  readonly who: string;
  readonly present: unknown;
}

/** Watches the thing that a form is open on, and knows at once when somebody else has changed it. */
export class OpenThing implements ReactiveController {
  meanwhile: Meanwhile | undefined;
  readonly #host: ReactiveControllerHost;
  readonly #opened: () => Opened | undefined;

  constructor(host: ReactiveControllerHost, opened: () => Opened | undefined) {
    this.#host = host;
    this.#opened = opened;
    host.addController(this);
  }

  hostConnected(): void {
    live.addEventListener("elsewhere", this.#changedElsewhere);
  }

  hostDisconnected(): void {
    live.removeEventListener("elsewhere", this.#changedElsewhere);
  }

  /** It was read again, or its form is closed. */
  forget(): void {
    this.meanwhile = undefined;
    this.#host.requestUpdate();
  }

  readonly #changedElsewhere = async (event: Event): Promise<void> => {
    const opened = this.#opened();
    if (!opened) return;
    const { changes, isAll } = (event as CustomEvent<Elsewhere>).detail;
    const last = changes.findLast(({ ids, isWhole }) => !isWhole || ids[opened.table]?.includes(opened.id));
    if (!last && !isAll) return;
    const present = await opened.present().catch(() => undefined);
    const isSame = canonicalText([present]) === canonicalText([opened.base]);
    // Meanwhile it may have been closed, or another opened.
    if (this.#opened()?.id !== opened.id) return;
    this.meanwhile = isSame ? undefined : { who: last ? whoText(last.who) : "Somebody", present };
    this.#host.requestUpdate();
  };
}
