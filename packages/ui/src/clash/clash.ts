import type { Thing } from "../offline/waiting-change.ts";

/** The version that a change was made from. */
export interface From {
  readonly base: object;
  /** Whether only the fields that change are sent; the whole thing otherwise. */
  readonly sendsFields?: boolean;
  /** Whether it is put together unasked with what came meanwhile, where both changed other fields. */
  readonly merges?: boolean;
  /** The one field that the bench keeps and tells versions of, by its bare value. */
  readonly only?: string;
}

/** A change that was not taken, since the bench has something else there by now. */
export interface Clash {
  readonly method: string;
  readonly path: string;
  readonly base: Thing;
  /** As it would be with the change; null where the change deletes it. */
  readonly mine: Thing | null;
  /** As it is on the bench; null where it is gone. */
  readonly present: Thing | null;
}

/** What a person says about it: the thing as it is to be, what is on the bench, or neither yet. */
export type Settled =
  | { readonly is: "mine"; readonly thing: Thing | null }
  | { readonly is: "theirs" }
  | { readonly is: "open" };
