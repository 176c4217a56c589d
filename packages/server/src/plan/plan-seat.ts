import type { Plan } from "@ferrule/core";
import { LastKept } from "../threads/last-kept.ts";
import { groundsKept, type PlanMessage, type PlanOrder, type PlanPost } from "../threads/make-plans.ts";
import type { Thread, ThreadPool } from "../threads/thread-pool.ts";
import type { PlanWorld } from "../threads/thread-task.ts";

/** An order with what it rests on at hand, if the thread should need it. */
export type SeatOrder = Omit<PlanOrder, "number" | "world"> & { readonly world: () => PlanWorld };

export interface OrderEvents {
  progress(sofar: { readonly netMinor: number; readonly boundMinor: number }): void;
  /** The plan; nothing where the thread ended before there was one. */
  done(plan: Plan | null): void;
  failed(error: Error): void;
}

/** A solver looks at its flag when it can, which may be late. */
const graceMs = 10_000;

/** A thread that makes plans, one at a time, and keeps what they rest on. */
export class PlanSeat {
  readonly #thread: Thread;
  /** What the thread has kept, counted as it counts. */
  readonly #grounds = new LastKept<true>(groundsKept);
  readonly #onFree: (seat: PlanSeat) => void;
  #number = 0;
  #order: SeatOrder | undefined;
  /** Nobody, where the one who ordered has given up. */
  #events: OrderEvents | undefined;
  #timer: NodeJS.Timeout | undefined;

  constructor(pool: ThreadPool, onFree: (seat: PlanSeat) => void, onGone: (seat: PlanSeat) => void) {
    this.#onFree = onFree;
    this.#thread = pool.start<PlanMessage>(
      { do: "plans" },
      {
        message: (message) => this.#hear(message),
        ended: (error) => {
          const events = this.#over();
          if (error) events?.failed(error);
          else events?.done(null);
          onGone(this);
        },
      },
    );
  }

  get isFree(): boolean {
    return this.#order === undefined;
  }

  /** Whether it works on what nobody waits for any more. */
  get isWindingUp(): boolean {
    return this.#order !== undefined && this.#events === undefined;
  }

  knows(ground: string): boolean {
    return this.#grounds.has(ground);
  }

  /** Begins with an order; the seat has to be free. */
  begin(order: SeatOrder, events: OrderEvents): void {
    const world = this.knows(order.ground) ? null : order.world();
    this.#grounds.ask(order.ground, () => true);
    this.#number += 1;
    this.#order = order;
    this.#events = events;
    this.#post({ ...order, number: this.#number, world });
  }

  /** Asks for the best so far. */
  stop(): void {
    if (!this.#order) return;
    Atomics.store(new Int32Array(this.#order.flag), 0, 1);
    this.#timer ??= setTimeout(() => this.end(), graceMs);
  }

  /** The same, and nobody waits for it. */
  giveUp(): void {
    this.#events = undefined;
    this.stop();
  }

  /** Lets the thread go when it is free. */
  leave(): void {
    this.#post("no-more");
  }

  end(): void {
    this.#thread.end();
  }

  #post(post: PlanPost): void {
    this.#thread.post(post);
  }

  #hear(message: PlanMessage): void {
    if (message.number !== this.#number) return;
    if (message.is === "under-way") {
      this.#events?.progress(message);
      return;
    }
    const events = this.#over();
    if (message.is === "done") events?.done(message.plan);
    else events?.failed(message.error);
    this.#onFree(this);
  }

  #over(): OrderEvents | undefined {
    const events = this.#events;
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.#order = undefined;
    this.#events = undefined;
    return events;
  }
}
