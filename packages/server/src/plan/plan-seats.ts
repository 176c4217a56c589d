import type { ThreadPool } from "../threads/thread-pool.ts";
import { type OrderEvents, PlanSeat, type SeatOrder } from "./plan-seat.ts";

/** An order that has been taken. */
export interface TakenOrder {
  /** Asks for the best so far. */
  stop(): void;
  /** Gives it up; nothing more is heard of it. */
  end(): void;
}

/** The threads that make plans. */
export interface PlanSeats {
  /** Whether a plan on this ground could begin with no more than a solve. */
  knows(ground: string): boolean;
  take(order: SeatOrder, events: OrderEvents): TakenOrder;
}

/** Threads at once, and those that are kept while they have nothing to do, for so long. */
const mostSeats = 3;
const freeKept = 1;
const freeKeptMs = 300_000;

/**
 * Gives each order to the seat that knows its ground, also where that is still busy with an order that nobody waits for: that
 * one is soon done, and what it rests on is what this one rests on.
 */
export function openPlanSeats(pool: ThreadPool): PlanSeats {
  const seats: PlanSeat[] = [];
  const waiting = new Map<PlanSeat, () => void>();
  let timer: NodeJS.Timeout | undefined;
  const gone = (seat: PlanSeat) => {
    if (seats.includes(seat)) seats.splice(seats.indexOf(seat), 1);
    waitingFor(seat)?.();
  };
  const waitingFor = (seat: PlanSeat) => {
    const next = waiting.get(seat);
    waiting.delete(seat);
    return next;
  };
  const freed = (seat: PlanSeat) => {
    waitingFor(seat)?.();
    letGo(freeKept);
    clearTimeout(timer);
    timer = setTimeout(() => letGo(0), freeKeptMs).unref();
  };
  const letGo = (most: number) => {
    for (const seat of seats.filter(({ isFree }) => isFree).slice(most)) {
      seats.splice(seats.indexOf(seat), 1);
      seat.leave();
    }
  };
  const open = () => {
    const seat = new PlanSeat(pool, freed, gone);
    seats.push(seat);
    return seat;
  };
  const find = (ground: string): PlanSeat => {
    const free = seats.filter(({ isFree }) => isFree);
    const ending = seats.filter((seat) => seat.isWindingUp && !waiting.has(seat));
    const known = [...free, ...ending].find((seat) => seat.knows(ground)) ?? free[0];
    if (known) return known;
    if (seats.length >= mostSeats) ending[0]?.end();
    return seats.length < mostSeats ? open() : (ending[0] ?? open());
  };
  return {
    knows: (ground) => seats.some((seat) => seat.knows(ground)),
    take: (order, events) => {
      let seat: PlanSeat | undefined;
      let waitsAt: PlanSeat | undefined;
      const over = () => {
        seat = undefined;
      };
      const heard: OrderEvents = {
        progress: events.progress,
        done: (plan) => {
          over();
          events.done(plan);
        },
        failed: (error) => {
          over();
          events.failed(error);
        },
      };
      const begin = () => {
        const found = find(order.ground);
        waitsAt = found.isFree ? undefined : found;
        if (waitsAt) {
          waiting.set(waitsAt, begin);
          return;
        }
        seat = found;
        found.begin(order, heard);
      };
      begin();
      return {
        stop: () => {
          if (seat) seat.stop();
          else Atomics.store(new Int32Array(order.flag), 0, 1);
        },
        end: () => {
          if (waitsAt) waiting.delete(waitsAt);
          seat?.giveUp();
          over();
        },
      };
    },
  };
}
