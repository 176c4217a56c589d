import type { Refusal } from "@ferrule/core";
import type { Entering } from "./enter-offline.ts";
import type { Renamed } from "./send-waiting.ts";
import type { Settling } from "./settle.ts";

export type Asked = Entering & { readonly do: "ask" };

export type Task =
  | Asked
  | { readonly do: "keep-up"; readonly isLost: boolean }
  | { readonly do: "changes" }
  | { readonly do: "settle"; readonly place: number; readonly how: Settling };

export type ToWorker = Task & { readonly number: number };

export type OfflineAnswer =
  | { readonly ok: true; readonly value: unknown }
  | {
      readonly ok: false;
      readonly code: string;
      readonly message: string;
      readonly refusals: readonly Refusal[];
    };

export interface FromWorker {
  readonly number: number;
  readonly answer: OfflineAnswer;
}

/** How things stand after sending and fetching. */
export interface KeptUp {
  readonly asOf: string | null;
  readonly waiting: number;
  /** Conflicts and refusals. */
  readonly toSettle: number;
  readonly sent: number;
  readonly renamed: readonly Renamed[];
  readonly isPaired: boolean;
}
