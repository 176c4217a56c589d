import type { Refusal } from "@ferrule/core";

/** Every way a request can fail: the code the caller can act on, the HTTP status, and the words when there are none better. */
export const errorTable = {
  "bad-request": { status: 400, message: "The request was not understood" },
  "foreign-host": {
    status: 403,
    message: "Requests are taken only under this machine's own name",
  },
  "not-found": { status: 404, message: "There is nothing at this address" },
  "id-taken": {
    status: 409,
    message: "Something on the bench has that id already",
  },
  "bench-not-empty": {
    status: 409,
    message: "The bench is not empty; confirm to replace what is on it with the example",
  },
  "not-the-example": { status: 409, message: "The bench is your own already" },
  "nothing-to-undo": {
    status: 409,
    message: "There is no delete, purchase, sale, measuring, inspection or clearing left to undo",
  },
  "already-bought": { status: 409, message: "This listing has been bought already" },
  "already-sold": { status: 409, message: "One of the parts has been sold already" },
  "changed-meanwhile": {
    status: 409,
    message: "This has been changed meanwhile, and was left as it is now",
  },
  "changed-since": {
    status: 409,
    message: "What this changed has been changed since; undo the later changes first",
  },
  "would-break": {
    status: 409,
    message: "Without this change something else on the bench would not hold together",
  },
  "undone-already": { status: 409, message: "This change has been undone already" },
  "still-at-it": { status: 409, message: "The same request is being worked on already" },
  "not-paired": {
    status: 401,
    message: "This device is not paired with the bench; pair it with a code from the machine that serves",
  },
  "wrong-code": {
    status: 403,
    message: "This is not the code that stands. A code works once and for five minutes",
  },
  "only-here": {
    status: 403,
    message: "This can be done only at the machine that serves the bench",
  },
  unsafe: {
    status: 409,
    message:
      "A fault of safety stands against one of the parts; nothing with it is to be swung until a person clears it with a note",
  },
  "too-large": { status: 413, message: "The request is larger than 8 MB" },
  "wrong-media-type": {
    status: 415,
    message: "The body has to be sent as application/json",
  },
  "headers-too-large": { status: 431, message: "The headers of the request are larger than 16 KB" },
  "too-slow": { status: 408, message: "The request took too long to come in" },
  "too-many": {
    status: 429,
    message: "Too many requests in a short time; wait a minute",
  },
  "our-bug": {
    status: 500,
    message: "Something went wrong on our side; nothing was changed by this request",
  },
  disk: {
    status: 503,
    message: "The database could not be read or written; nothing was changed by this request",
  },
} as const;

export type ErrorCode = keyof typeof errorTable;

/** A thing that stands in the way of an undo: changed since, or left in the air. */
export interface Conflict {
  readonly table: string;
  readonly id: string;
  /** As the change that is to be undone left it; null where it took it away. */
  readonly left: unknown;
  readonly present: unknown;
  /** The changes that would have to be undone first. */
  readonly changes: readonly number[];
}

/** A problem of the caller's, as data, on its way to becoming a reply. */
export interface Problem {
  readonly code: ErrorCode;
  readonly message?: string;
  readonly refusals?: readonly Refusal[];
  /** Of what was changed meanwhile: as it is, as it was sent, and as it was when both began. */
  readonly versions?: { readonly present: unknown; readonly given: unknown; readonly base?: unknown };
  /** What stands in the way of an undo. */
  readonly conflicts?: readonly Conflict[];
}

export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem };

export function done<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

export function problem(
  code: ErrorCode,
  message?: string,
  refusals?: readonly Refusal[],
): { ok: false; problem: Problem } {
  return { ok: false, problem: { code, message, refusals } };
}

/** Carries a problem through Fastify, which only knows thrown errors, to the error handler. */
export class ProblemError extends Error {
  readonly problem: Problem;
  constructor(stated: Problem) {
    super(stated.message ?? errorTable[stated.code].message);
    this.problem = stated;
  }
}

/** The value of an outcome; a problem is thrown for the error handler to render. */
export function valueOrThrow<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new ProblemError(outcome.problem);
}

/** More of either would say no more. */
const refusalsTold = 100;
const conflictsTold = 20;

/** The reply that a problem is told in. */
export function problemBody({ code, message, refusals = [], versions, conflicts = [] }: Problem) {
  return {
    error: {
      code,
      message: message ?? errorTable[code].message,
      ...(refusals.length > 0 && { refusals: refusals.slice(0, refusalsTold) }),
      ...versions,
      ...(conflicts.length > 0 && { conflicts: conflicts.slice(0, conflictsTold) }),
    },
  };
}
