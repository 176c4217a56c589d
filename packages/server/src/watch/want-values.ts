import type { PlanWishes } from "@ferrule/core";
import type { ThreadPool } from "../threads/thread-pool.ts";
import type { PlanWorld } from "../threads/thread-task.ts";
import type { ValuedWant, ValuesMessage } from "../threads/value-wants.ts";
import type { Watched } from "./bench-watches.ts";

/** What wants are worth, worked out in a thread and kept until what it rests on changes. */
export interface WantValues {
  /** What is known now, by the ids of the wants; where it is stale, it is being made anew. */
  read(): { readonly values: ReadonlyMap<string, ValuedWant>; readonly isUpToDate: boolean };
  /** What is known now, however old; starts nothing. */
  known(): ReadonlyMap<string, ValuedWant>;
}

export interface ValuesSource {
  /** Differs after every change of what values rest on. */
  stamp(): string;
  world(): PlanWorld | undefined;
  wishes(): PlanWishes;
  watched(): readonly Watched[];
}

/** Wants that are valued: each is a plan of its own. Those that complete most come first, after what is watched by hand. */
const valuedMost = 200;

export function openWantValues(
  source: ValuesSource,
  pool: ThreadPool,
  onFailure: (error: unknown) => void,
): WantValues {
  let kept: ReadonlyMap<string, ValuedWant> = new Map();
  let madeOf: string | undefined;
  let isRunning = false;
  const start = () => {
    const stamp = source.stamp();
    const world = source.world();
    if (world === undefined) return;
    isRunning = true;
    const task = { do: "values", world, wishes: source.wishes(), wants: wantsOf(source.watched()) } as const;
    pool.start<ValuesMessage>(task, {
      message: (values) => {
        kept = new Map(values.map((value) => [value.want, value]));
        madeOf = stamp;
      },
      ended: (error) => {
        isRunning = false;
        if (error === undefined) return;
        onFailure(error);
        // What cannot be valued now can be no better a moment later.
        madeOf = stamp;
      },
    });
  };
  return {
    known: () => kept,
    read: () => {
      const isUpToDate = madeOf === source.stamp();
      if (!isUpToDate && !isRunning) start();
      return { values: kept, isUpToDate };
    },
  };
}

function wantsOf(watched: readonly Watched[]) {
  const byHand = watched.filter(({ watch }) => watch.by === "hand");
  const ofBench = watched.filter(({ watch }) => watch.by === "bench");
  return [...byHand, ...ofBench].slice(0, valuedMost).map(({ want }) => want);
}
