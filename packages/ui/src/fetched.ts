import type { ReactiveController, ReactiveControllerHost } from "lit";
import { ApiError } from "./api.ts";
import { type Elsewhere, live, touches } from "./live/live.ts";

export type FetchState<T> =
  | { readonly is: "loading" }
  | { readonly is: "ready"; readonly value: T }
  | { readonly is: "failed"; readonly code: string; readonly message: string };

/** What an answer rests on: tables of the history, anything, or nothing that is worth asking again for. */
export type RestsOn = readonly string[] | "anything" | "nothing";

/** Keeps the answer to a question the view asks of the server, and asks again when the view says so, or when what it rests on is changed elsewhere. */
export class Fetched<T> implements ReactiveController {
  state: FetchState<T> = { is: "loading" };
  readonly #host: ReactiveControllerHost;
  readonly #ask: () => Promise<T>;
  readonly #restsOn: RestsOn;
  #turn = 0;

  constructor(host: ReactiveControllerHost, ask: () => Promise<T>, restsOn: RestsOn = "anything") {
    this.#host = host;
    this.#ask = ask;
    this.#restsOn = restsOn;
    host.addController(this);
  }

  hostConnected(): void {
    if (this.#restsOn !== "nothing") live.addEventListener("elsewhere", this.#changedElsewhere);
    void this.again();
  }

  hostDisconnected(): void {
    live.removeEventListener("elsewhere", this.#changedElsewhere);
  }

  /** Asks again. What was there stays on the page until the new answer comes; an answer overtaken by a later one is dropped. */
  async again(): Promise<void> {
    const turn = ++this.#turn;
    const state = await this.#ask().then<FetchState<T>, FetchState<T>>(
      (value) => ({ is: "ready", value }),
      failed,
    );
    if (turn !== this.#turn) return;
    this.state = state;
    this.#host.requestUpdate();
  }

  readonly #changedElsewhere = (event: Event): void => {
    const { detail } = event as CustomEvent<Elsewhere>;
    if (this.#restsOn === "anything" || (this.#restsOn !== "nothing" && touches(detail, this.#restsOn)))
      void this.again();
  };
}

/** A refusal of the server as something to show; a bug of ours goes on up. */
export function failed(error: unknown): { is: "failed"; code: string; message: string } {
  if (error instanceof ApiError) return { is: "failed", code: error.code, message: error.message };
  throw error;
}
