/** Something entered without a signal, on its way to the bench. */
export interface WaitingChange {
  /** Its place in the queue. */
  readonly place: number;
  /** The same however often it is sent, so that it is done once. */
  readonly key: string;
  readonly method: "POST" | "PUT" | "DELETE";
  readonly path: string;
  readonly body?: unknown;
  /** When it was entered, as an ISO 8601 moment. */
  readonly enteredAt: string;
  /** Where what it is about is kept, such as /api/bench/parts, and its id. */
  readonly list: string;
  readonly id: string;
  /** What it was before, as far as was known here; null where it is new. */
  readonly before: Thing | null;
  /** How often it was sent. */
  readonly tries: number;
  readonly state: "waiting" | "conflict" | "refused";
  /** In a conflict: what is there now, null where it is gone. */
  readonly present?: Thing | null;
  /** Why it was refused. */
  readonly problem?: string;
}

export type Thing = Readonly<Record<string, unknown>>;
