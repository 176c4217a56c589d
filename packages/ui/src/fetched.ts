import type { ReactiveController, ReactiveControllerHost } from "lit";
import { ApiError } from "./api.ts";

export type FetchState<T> =
  | { readonly is: "loading" }
  | { readonly is: "ready"; readonly value: T }
  | { readonly is: "failed"; readonly code: string; readonly message: string };

/** Keeps the answer to a question the view asks of the server, and asks again when the view says so. */
export class Fetched<T> implements ReactiveController {
  state: FetchState<T> = { is: "loading" };
  readonly #host: ReactiveControllerHost;
  readonly #ask: () => Promise<T>;
  #turn = 0;

  constructor(host: ReactiveControllerHost, ask: () => Promise<T>) {
    this.#host = host;
    this.#ask = ask;
    host.addController(this);
  }

  hostConnected(): void {
    void this.again();
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
}

/** A refusal of the server as something to show; a bug of ours goes on up. */
export function failed(error: unknown): { is: "failed"; code: string; message: string } {
  if (error instanceof ApiError) return { is: "failed", code: error.code, message: error.message };
  throw error;
}
