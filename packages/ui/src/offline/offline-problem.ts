import type { Refusal } from "@ferrule/core";

/** Why something cannot be answered without a signal; carried as an exception as far as the door of the worker. */
export class OfflineProblem extends Error {
  readonly code: string;
  readonly refusals: readonly Refusal[];

  constructor(code: string, message: string, refusals: readonly Refusal[] = []) {
    super(message);
    this.code = code;
    this.refusals = refusals;
  }
}
