import type { Settling } from "./settle.ts";
import type { Thing, WaitingChange } from "./waiting-change.ts";
import type { FromWorker, KeptUp, OfflineAnswer, Task } from "./worker-messages.ts";

/** How things stand between this page and the bench. */
export interface SignalState {
  /** Whether the bench cannot be reached. */
  readonly isLost: boolean;
  /** When what is kept here was last known to hold, as an ISO 8601 moment. */
  readonly asOf: string | null;
  readonly waiting: number;
  readonly toSettle: number;
  readonly isPaired: boolean;
}

/** What a call needs to be answered without the bench. */
export interface LostCall {
  readonly method: string;
  readonly path: string;
  readonly body: unknown;
  readonly key: string;
  /** What a change was made from, where that is known better than by what was seen last. */
  readonly before?: Thing | undefined;
}

/** How long a call may stay without an answer before the page looks whether the bench is there at all. */
const patienceMs = 4000;
const probeMs = 3000;
const pollMs = 5000;
const settlingMs = 1500;
const refreshMs = 5 * 60_000;

/**
 * Knows whether the bench can be reached, and has a worker answer in its place while it cannot. Tells `change` when its state
 * has changed, and `caught-up` when what was entered without a signal has reached the bench.
 */
export class Signal extends EventTarget {
  state: SignalState = { isLost: false, asOf: null, waiting: 0, toSettle: 0, isPaired: true };
  readonly #seen = new Map<string, Thing>();
  readonly #asked = new Map<number, (answer: OfflineAnswer) => void>();
  #worker: Worker | undefined;
  #count = 0;
  #poll: ReturnType<typeof setInterval> | undefined;
  #soon: ReturnType<typeof setTimeout> | undefined;
  #isKeeping = false;

  /** Begins to keep what is needed without a signal; only where the browser will show the page without one. */
  async start(): Promise<void> {
    if (!("serviceWorker" in navigator) || !window.isSecureContext) return;
    await navigator.serviceWorker.register("/service-worker.js");
    await navigator.serviceWorker.ready;
    this.#isKeeping = true;
    window.addEventListener("online", () => void this.look());
    document.addEventListener("visibilitychange", () => !document.hidden && void this.keepUp());
    setInterval(() => void this.keepUp(), refreshMs);
    await this.keepUp();
  }

  /** Remembers a thing as the user sees it, so that a change without a signal is held against it. */
  saw(path: string, answer: unknown): void {
    const isThing = typeof answer === "object" && answer !== null && "id" in answer;
    if (isThing) this.#seen.set(path, answer as Thing);
  }

  /** Something has changed on the bench: what is kept here follows, a little later. */
  changed(): void {
    clearTimeout(this.#soon);
    if (this.#isKeeping) this.#soon = setTimeout(() => void this.keepUp(), settlingMs);
  }

  /**
   * Fetches; a call that stays without an answer while the bench is not there at all is given up, where something is kept to
   * answer with. Where nothing is, there is nothing better to do than wait: a bench that is busy answers in the end.
   */
  async fetch(path: string, init: RequestInit): Promise<Response> {
    const given = new AbortController();
    const signal = init.signal ? AbortSignal.any([init.signal, given.signal]) : given.signal;
    const timer = setTimeout(async () => {
      if (this.state.asOf !== null && !(await isThere())) given.abort();
    }, patienceMs);
    try {
      return await fetch(path, { ...init, signal });
    } finally {
      clearTimeout(timer);
    }
  }

  /** What the worker says in the bench's place. */
  async answer({ before, ...call }: LostCall): Promise<OfflineAnswer> {
    const seen = before ?? this.#seen.get(call.path) ?? null;
    const answer = await this.#ask({ do: "ask", seen, ...call });
    if (answer.ok && call.method !== "GET") await this.keepUp();
    return answer;
  }

  lose(): void {
    this.#poll ??= setInterval(() => void this.look(), pollMs);
    if (!this.state.isLost) this.#set({ isLost: true });
    if (this.state.asOf === null) void this.keepUp();
  }

  /** Looks whether the bench can be reached again, and catches up when it can. */
  async look(): Promise<void> {
    if (!this.state.isLost || !(await isThere())) return;
    clearInterval(this.#poll);
    this.#poll = undefined;
    this.#set({ isLost: false });
    await this.keepUp();
  }

  /** Sends what waits and fetches what has changed; without a signal it only counts. */
  async keepUp(): Promise<void> {
    const answer = await this.#ask({ do: "keep-up", isLost: this.state.isLost });
    if (!answer.ok) return;
    const { sent, renamed, asOf, waiting, toSettle, isPaired } = answer.value as KeptUp;
    this.#set({ asOf, waiting, toSettle, isPaired });
    if (sent > 0) this.dispatchEvent(new CustomEvent("caught-up", { detail: { sent, renamed } }));
  }

  async changes(): Promise<readonly WaitingChange[]> {
    const answer = await this.#ask({ do: "changes" });
    return answer.ok ? (answer.value as readonly WaitingChange[]) : [];
  }

  async settle(place: number, how: Settling): Promise<void> {
    await this.#ask({ do: "settle", place, how });
    await this.keepUp();
  }

  #set(change: Partial<SignalState>): void {
    this.state = { ...this.state, ...change };
    this.dispatchEvent(new Event("change"));
  }

  #ask(task: Task): Promise<OfflineAnswer> {
    const number = ++this.#count;
    return new Promise((resolve) => {
      this.#asked.set(number, resolve);
      this.#started().postMessage({ ...task, number });
    });
  }

  #started(): Worker {
    if (this.#worker) return this.#worker;
    const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
      this.#asked.get(data.number)?.(data.answer);
      this.#asked.delete(data.number);
    };
    // Its code could not be fetched: there is nothing to go on with here.
    worker.onerror = () => {
      for (const answer of this.#asked.values()) answer(unreachable);
      this.#asked.clear();
      this.#worker = undefined;
    };
    this.#worker = worker;
    return worker;
  }
}

const unreachable: OfflineAnswer = {
  ok: false,
  code: "unreachable",
  message: "The bench cannot be reached. Is Ferrule still running?",
  refusals: [],
};

async function isThere(): Promise<boolean> {
  return fetch("/api/health", { signal: AbortSignal.timeout(probeMs) }).then(
    () => true,
    () => false,
  );
}

/** The one for this page. */
export const signal = new Signal();
