import type { Adapter, Head } from "../parts/part.ts";
import type { Reading } from "../parts/reading.ts";
import type { TypicalRow } from "../parts/typical.ts";
import { partReading, writtenReading } from "./part-reading.ts";

export interface HeadAndAdapter {
  readonly head: Head;
  readonly adapter?: Adapter;
}

/** The measures that a club's BBGM is made of: one for a bore, two for a receiver. */
export type BbgmKey = "bbgmIn" | "seatToGroundIn" | "tipStopFromSeatIn";

export interface BbgmTerm {
  readonly key: BbgmKey;
  readonly weight: 1 | -1;
  readonly part: string;
  readonly field: string;
  readonly reading: Reading;
}

/**
 * From the shaft's tip to the ground along the shaft axis, in inches: a bored head's own BBGM, or the seat's height less how
 * far below the seat the adapter stops the tip. `undefined` where no reading, not even a typical one, is known.
 * Source of the measure: Hireko blog 2011-01 BBGM.
 */
export function clubBbgm(joined: HeadAndAdapter, typical: readonly TypicalRow[]): Reading | undefined {
  const terms = bbgmTerms(joined, typical);
  if (terms === undefined) return undefined;
  const value = terms.reduce((sum, { weight, reading }) => sum + weight * reading.value, 0);
  const plusMinus = Math.hypot(...terms.map(({ reading }) => reading.plusMinus));
  const source = terms.find(({ reading }) => reading.source === "typical") ?? terms[0];
  return source && { value, plusMinus, source: source.reading.source };
}

export function bbgmTerms(
  { head, adapter }: HeadAndAdapter,
  typical: readonly TypicalRow[],
): readonly BbgmTerm[] | undefined {
  if (adapter === undefined) return boreTerms(head, typical);
  const seat = partReading(head, "socket.seatToGroundIn", typical);
  const stop = partReading(adapter, "tipStopFromSeatIn", typical);
  if (seat === undefined || stop === undefined) return undefined;
  return [
    { key: "seatToGroundIn", weight: 1, part: head.id, field: "socket.seatToGroundIn", reading: seat },
    { key: "tipStopFromSeatIn", weight: -1, part: adapter.id, field: "tipStopFromSeatIn", reading: stop },
  ];
}

/** A head known to be a receiver has no bore of its own to measure from. */
function boreTerms(head: Head, typical: readonly TypicalRow[]): readonly BbgmTerm[] | undefined {
  if (head.socket?.type === "receiver") return undefined;
  const through = head.socket?.throughBore === true && writtenReading(head, "socket.bbgmIn") === undefined;
  const reading = partReading(head, through ? "socket.throughBoreBbgmIn" : "socket.bbgmIn", typical);
  return reading && [{ key: "bbgmIn", weight: 1, part: head.id, field: "socket.bbgmIn", reading }];
}
