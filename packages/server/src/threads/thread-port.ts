import type { LinearSolver } from "@ferrule/core";

/** How a task in a thread hears that it has to stop, and says what it has. */
export interface ThreadPort {
  /** The thread is deaf while it computes: only shared memory reaches it. */
  shouldStop(): boolean;
  say(message: unknown): void;
  /** What is posted to the task, one after another. */
  next(): Promise<unknown>;
  /** Loaded when it is first asked for, and then kept. */
  solver(): Promise<LinearSolver>;
}
