import type { Plan } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import type { PlanOrder, PlanPost } from "../threads/make-plans.ts";
import type { ThreadEvents, ThreadPool } from "../threads/thread-pool.ts";
import type { PlanWorld } from "../threads/thread-task.ts";
import type { SeatOrder } from "./plan-seat.ts";
import { openPlanSeats } from "./plan-seats.ts";

interface FakeThread {
  readonly on: ThreadEvents<unknown>;
  readonly posts: PlanPost[];
  isEnded: boolean;
}

/** Threads that do nothing but remember what they were told. */
function fakePool() {
  const threads: FakeThread[] = [];
  const pool: ThreadPool = {
    start: (_task, on) => {
      const thread: FakeThread = { on: on as ThreadEvents<unknown>, posts: [], isEnded: false };
      threads.push(thread);
      return {
        post: (post) => thread.posts.push(post as PlanPost),
        stop: () => undefined,
        end: () => {
          thread.isEnded = true;
          on.ended(undefined);
        },
      };
    },
    close: async () => undefined,
  };
  const answer = (at: number) => {
    const { on, posts } = threads[at] as FakeThread;
    const last = posts.filter((post) => post !== "no-more").at(-1) as PlanOrder;
    on.message({ number: last.number, is: "done", plan: { netMinor: last.number } as Plan });
  };
  /** What each thread was told: the ground of each order, with a mark where what it rests on came with it. */
  const told = () =>
    threads.map(({ posts }) =>
      posts.map((post) => (post === "no-more" ? post : `${post.ground}${post.world ? " and world" : ""}`)),
    );
  return { pool, threads, answer, told };
}

const orderOn = (ground: string): SeatOrder => ({
  ground,
  world: () => ({}) as PlanWorld,
  wishes: { budgetMinor: null, minutes: null, mostOfType: {}, hours: "at-own-rate", leastPerHourMinor: null },
  ...{ seconds: 1, withNextBest: true, withProgress: false },
  flag: new SharedArrayBuffer(4),
});

function seatsOf(pool: ThreadPool) {
  const seats = openPlanSeats(pool);
  const heard: unknown[] = [];
  const take = (ground: string) => {
    const order = orderOn(ground);
    const events = {
      progress: () => undefined,
      done: (plan: Plan | null) => heard.push(plan?.netMinor ?? null),
      failed: (error: Error) => heard.push(error.message),
    };
    return { order, ...seats.take(order, events) };
  };
  return { take, heard, knows: seats.knows };
}

const isStopped = ({ order }: { order: SeatOrder }) => new Int32Array(order.flag)[0] === 1;

describe("the seats of plans", () => {
  it("send what a plan rests on once, and again when it has changed", () => {
    const { pool, answer, told } = fakePool();
    const { take, heard, knows } = seatsOf(pool);
    for (const ground of ["a", "a", "b", "a"]) {
      take(ground);
      answer(0);
    }
    expect(told()).toEqual([["a and world", "a", "b and world", "a"]]);
    expect(heard).toEqual([1, 2, 3, 4]);
    expect([knows("a"), knows("b"), knows("c")]).toEqual([true, true, false]);
  });

  it("forget grounds as the thread does, the oldest first", () => {
    const { pool, answer, told } = fakePool();
    const { take } = seatsOf(pool);
    for (const ground of ["a", "b", "c", "d", "e", "b", "a"]) {
      take(ground);
      answer(0);
    }
    expect(told()[0]).toEqual([..."abcde"].map((each) => `${each} and world`).concat("b", "a and world"));
  });

  it("let an order wait for a seat that knows its ground and works for nobody", () => {
    const { pool, threads, answer, told } = fakePool();
    const { take, heard } = seatsOf(pool);
    const first = take("a");
    first.end();
    expect(isStopped(first)).toBe(true);
    const second = take("a");
    second.end();
    take("a");
    expect(told()).toEqual([["a and world"]]);
    answer(0);
    expect(told()).toEqual([["a and world", "a"]]);
    answer(0);
    expect(heard).toEqual([2]);
    expect(threads).toHaveLength(1);
  });

  it("give another ground another thread meanwhile, and end one that nobody waits for where there are too many", () => {
    const { pool, threads, told } = fakePool();
    const { take } = seatsOf(pool);
    for (const ground of ["a", "b", "c"]) take(ground).end();
    take("d");
    expect(told()).toEqual([["a and world"], ["b and world"], ["c and world"], ["d and world"]]);
    expect(threads.map(({ isEnded }) => isEnded)).toEqual([true, false, false, false]);
  });

  it("stop what is under way, what waits too, and nothing of somebody else", () => {
    const { pool, answer } = fakePool();
    const { take } = seatsOf(pool);
    const first = take("a");
    answer(0);
    const second = take("a");
    first.stop();
    first.end();
    expect(isStopped(second)).toBe(false);
    second.end();
    const waits = take("a");
    waits.stop();
    expect(isStopped(waits)).toBe(true);
  });

  it("tell of a thread that died, and put the next order on another", () => {
    const { pool, threads, told } = fakePool();
    const { take, heard } = seatsOf(pool);
    take("a");
    threads[0]?.on.ended(new Error("out of memory"));
    take("a");
    expect(heard).toEqual(["out of memory"]);
    expect(told()).toEqual([["a and world"], ["a and world"]]);
  });

  it("keep one thread that has nothing to do", () => {
    const { pool, answer, told } = fakePool();
    const { take } = seatsOf(pool);
    take("a");
    take("b");
    answer(0);
    answer(1);
    expect(told()).toEqual([["a and world"], ["b and world", "no-more"]]);
  });
});
