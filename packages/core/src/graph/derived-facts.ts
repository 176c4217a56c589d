import { aloneLength } from "../measure/alone-length.ts";
import { clubBbgm } from "../measure/bbgm.ts";
import type { Reading } from "../parts/reading.ts";
import type { FactPath } from "../rules/rule.ts";
import type { Context } from "./context.ts";

/** A fact worked out from others; `rests` are the ones it is worked out from. */
export interface DerivedFact {
  readonly rests: readonly FactPath[];
  /** Of those, the ones that could be asked for in this context, the first to ask first. */
  readonly asks: (context: Context) => readonly FactPath[];
  readonly compute: (context: Context) => Reading | undefined;
}

/** The derived facts that rules may read, by their path. */
export const derivedFacts: Readonly<Record<string, DerivedFact>> = {
  "holder.bbgmIn": {
    rests: ["head.socket.bbgmIn", "head.socket.seatToGroundIn", "adapter.tipStopFromSeatIn"],
    asks: ({ adapter }) =>
      adapter ? ["head.socket.seatToGroundIn", "adapter.tipStopFromSeatIn"] : ["head.socket.bbgmIn"],
    compute: ({ head, adapter, typical }) => {
      if (head?.kind !== "head") return undefined;
      return clubBbgm({ head, adapter: adapter?.kind === "adapter" ? adapter : undefined }, typical);
    },
  },
  "shaft.aloneLengthIn": {
    rests: ["shaft.length.lengthIn", "shaft.length.basis", "shaft.rawLengthIn", "shaft.tip.trimmedIn"],
    asks: () => ["shaft.length.lengthIn", "shaft.length.basis"],
    compute: ({ shaft, typical, gripped, bonded }) =>
      shaft?.kind === "shaft" ? aloneLength({ shaft, gripped, bonded }, typical) : undefined,
  },
};
