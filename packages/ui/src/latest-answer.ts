import type { ReactiveController, ReactiveControllerHost } from "lit";
import { failed } from "./fetched.ts";

/** A question that can be given up, and may show an answer for the time being before its last one. */
export type Ask<T> = (signal: AbortSignal, show: (value: T) => void) => Promise<T>;

/**
 * The answer to the latest of many questions, as a slider asks them. One is under way at a time: the newest that came meanwhile
 * is asked as soon as that one shows an answer, or when it takes too long, and those between are never asked. So answers come
 * while a slider moves, none after a later one, and what was answered before stays until then.
 */
export class LatestAnswer<T> implements ReactiveController {
  value: T | undefined;
  trouble: string | undefined;
  isAsking = false;
  readonly #host: ReactiveControllerHost;
  readonly #patienceMs: number;
  #next: Ask<T> | undefined;
  #outOfPatience: ReturnType<typeof setTimeout> | undefined;
  #underWay: AbortController | undefined;

  /** `patienceMs` is how long a question may take while another waits. */
  constructor(host: ReactiveControllerHost, patienceMs: number) {
    this.#host = host;
    this.#patienceMs = patienceMs;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#outOfPatience);
    this.#underWay?.abort();
    this.#underWay = undefined;
    this.#next = undefined;
  }

  /** Asks once what is under way has shown something. */
  askSoon(question: Ask<T>): void {
    if (!this.#underWay) return void this.ask(question);
    this.#next = question;
    this.#outOfPatience ??= setTimeout(() => this.#goOn(), this.#patienceMs);
  }

  /** Asks at once, and gives up what is under way. */
  async ask(question: Ask<T>): Promise<void> {
    clearTimeout(this.#outOfPatience);
    this.#outOfPatience = undefined;
    this.#next = undefined;
    this.#underWay?.abort();
    const now = new AbortController();
    this.#underWay = now;
    this.#set({ isAsking: true });
    const show = (value: T) => {
      if (now.signal.aborted) return;
      this.#set({ value, trouble: undefined });
      this.#goOn();
    };
    const answer = await question(now.signal, show).then(
      (value) => ({ value, trouble: undefined }),
      (error: unknown) => ({ trouble: `${failed(error).message}.` }),
    );
    if (now.signal.aborted) return;
    this.#underWay = undefined;
    this.#set({ ...answer, isAsking: this.#next !== undefined });
    this.#goOn();
  }

  #goOn(): void {
    if (this.#next) void this.ask(this.#next);
  }

  #set(change: Partial<Pick<LatestAnswer<T>, "value" | "trouble" | "isAsking">>): void {
    Object.assign(this, change);
    this.#host.requestUpdate();
  }
}
