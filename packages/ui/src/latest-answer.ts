import type { ReactiveController, ReactiveControllerHost } from "lit";
import { failed } from "./fetched.ts";

/** A question that can be given up, and may show an answer for the time being before its last one. */
export type Ask<T> = (signal: AbortSignal, show: (value: T) => void) => Promise<T>;

/**
 * The answer to the latest of many questions, as a slider asks them: each waits a moment for the next, gives up the one that
 * is under way, and what was answered before stays until the new answer is there.
 */
export class LatestAnswer<T> implements ReactiveController {
  value: T | undefined;
  trouble: string | undefined;
  isAsking = false;
  readonly #host: ReactiveControllerHost;
  readonly #pauseMs: number;
  #soon: ReturnType<typeof setTimeout> | undefined;
  #underWay: AbortController | undefined;

  constructor(host: ReactiveControllerHost, pauseMs: number) {
    this.#host = host;
    this.#pauseMs = pauseMs;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#soon);
    this.#underWay?.abort();
  }

  /** Asks once nothing else has been asked for a moment. */
  askSoon(question: Ask<T>): void {
    this.#set({ isAsking: true });
    clearTimeout(this.#soon);
    this.#soon = setTimeout(() => void this.ask(question), this.#pauseMs);
  }

  async ask(question: Ask<T>): Promise<void> {
    clearTimeout(this.#soon);
    this.#underWay?.abort();
    const now = new AbortController();
    this.#underWay = now;
    this.#set({ isAsking: true });
    const show = (value: T) => {
      if (!now.signal.aborted) this.#set({ value, trouble: undefined });
    };
    const answer = await question(now.signal, show).then(
      (value) => ({ value, trouble: undefined }),
      (error: unknown) => ({ trouble: `${failed(error).message}.` }),
    );
    if (!now.signal.aborted) this.#set({ ...answer, isAsking: false });
  }

  #set(change: Partial<Pick<LatestAnswer<T>, "value" | "trouble" | "isAsking">>): void {
    Object.assign(this, change);
    this.#host.requestUpdate();
  }
}
