import { OwnWrites } from "./own-writes.ts";

/** A change on the bench, as an open page is told of it. */
export interface LiveChange {
  readonly number: number;
  readonly at: string;
  readonly who: {
    readonly means: "here" | "device" | "command-line";
    readonly device: string | null;
    readonly name: string | null;
  };
  readonly what: string;
  readonly words: string;
  readonly things: number;
  /** By table. */
  readonly ids: Readonly<Record<string, readonly string[]>>;
  /** Whether `ids` names all that was touched. */
  readonly isWhole: boolean;
}

/** What was changed elsewhere since the last news; where all is to be read again, nobody says what it was. */
export interface Elsewhere {
  readonly changes: readonly LiveChange[];
  readonly isAll: boolean;
}

/** Many changes at once are one piece of news. */
const gatherMs = 200;
/** A server that does not want to be listened to is left alone for so long. */
const laterMs = 30_000;

/**
 * Hears of every change on the bench while the page is being looked at, and tells `elsewhere` of those that were not made in
 * this page. Where the browser or the bench cannot do that, the page shows what it fetched, as without it.
 */
export class Live extends EventTarget {
  readonly #own = new OwnWrites();
  #source: EventSource | undefined;
  #last: string | undefined;
  #changes: LiveChange[] = [];
  #isAll = false;
  #soon: ReturnType<typeof setTimeout> | undefined;
  #later: ReturnType<typeof setTimeout> | undefined;
  /** The id of this device; null at the machine that serves. */
  device: string | null = null;

  start(): void {
    if (typeof EventSource === "undefined") return;
    document.addEventListener("visibilitychange", () => this.#listen());
    this.#listen();
  }

  /** This page sends a change; what comes back is called with whether it was taken. */
  sending(): (isTaken: boolean) => void {
    const end = this.#own.begin();
    return (isTaken) => end(Date.now(), isTaken);
  }

  #listen(): void {
    this.#close();
    if (document.hidden) return;
    const since = this.#last === undefined ? "" : `?after=${this.#last}`;
    const source = new EventSource(`/api/events${since}`);
    source.addEventListener("open", () => this.dispatchEvent(new Event("open")));
    source.addEventListener("error", () => {
      if (source.readyState !== EventSource.CLOSED) return;
      this.#close();
      this.#later = setTimeout(() => this.#listen(), laterMs);
    });
    source.addEventListener("ready", ({ lastEventId }) => {
      this.#last = lastEventId;
    });
    source.addEventListener("change", (event) => this.#heard(event));
    source.addEventListener("reload", ({ lastEventId }) => {
      this.#last = lastEventId;
      this.#isAll = true;
      this.#tellSoon();
    });
    this.#source = source;
  }

  #close(): void {
    clearTimeout(this.#later);
    this.#source?.close();
    this.#source = undefined;
  }

  #heard({ lastEventId, data }: MessageEvent<string>): void {
    this.#last = lastEventId;
    const change = JSON.parse(data) as LiveChange;
    if (this.#isOurs(change)) return;
    this.#changes.push(change);
    this.#tellSoon();
  }

  #isOurs({ who }: LiveChange): boolean {
    const isThisOne = this.device === null ? who.means === "here" : who.device === this.device;
    return isThisOne && this.#own.takes(Date.now());
  }

  #tellSoon(): void {
    this.#soon ??= setTimeout(() => {
      const detail: Elsewhere = { changes: this.#changes, isAll: this.#isAll };
      this.#soon = undefined;
      this.#changes = [];
      this.#isAll = false;
      this.dispatchEvent(new CustomEvent("elsewhere", { detail }));
    }, gatherMs);
  }
}

/** Whether what was changed is of one of these tables. */
export function touches({ changes, isAll }: Elsewhere, tables: readonly string[]): boolean {
  return (
    isAll || changes.some(({ ids, isWhole }) => !isWhole || tables.some((table) => ids[table] !== undefined))
  );
}

/** The one for this page. */
export const live = new Live();
