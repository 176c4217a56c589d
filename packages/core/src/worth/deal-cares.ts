import type { Fault } from "../parts/fault.ts";
import type { DealReason } from "./deal.ts";
import type { DealContext } from "./deal-context.ts";
import type { OfferedThing } from "./listing-things.ts";
import { unsafeFaults } from "./unsafe-faults.ts";

/** Reasons to look twice, in neutral words. */
export function dealCares(
  things: readonly OfferedThing[],
  askingMinor: number | undefined,
  context: DealContext,
): DealReason[] {
  return [
    ...farUnder(things, askingMinor, context.costs.farUnderPercent),
    ...unsafe(things),
    ...doubtsOf(context),
  ];
}

/** A price under the user's share of the low end of what its like goes for. */
function farUnder(
  things: readonly OfferedThing[],
  askingMinor: number | undefined,
  percent: number,
): DealReason[] {
  const lows = things.flatMap(({ asItIs }) => (asItIs.resale.known ? asItIs.resale.lowMinor : []));
  const lowMinor = lows.reduce((sum, low) => sum + low, 0);
  if (askingMinor === undefined || lows.length === 0 || askingMinor >= (lowMinor * percent) / 100) return [];
  return [
    {
      code: "price-far-under",
      text:
        "The price is far under what its like has gone for. There can be a good reason. It can also mean damage that is not " +
        "mentioned, a counterfeit, or something that is not the seller's to sell: ask where it comes from, and for clear " +
        "pictures of the face, the hosel and any serial number.",
    },
  ];
}

const faultWords: Readonly<Partial<Record<Fault, string>>> = {
  crack: "a crack",
  "caved-face": "a caved face",
  "crease-shaft": "a crease in the shaft",
  "dent-shaft": "a dent in the shaft",
  "exposed-fibre": "fibres showing on the shaft",
  "bent-shaft": "a bent shaft",
  "adapter-damaged": "a damaged adapter",
  "loose-joint": "a joint that moves or creaks",
};

function unsafe(things: readonly OfferedThing[]): DealReason[] {
  const faults = [...new Set(things.flatMap(({ parts }) => unsafeFaults(parts)))];
  return faults.map((fault) => ({
    code: `unsafe-${fault}`,
    text: `The words speak of ${faultWords[fault] ?? fault}: nothing with it is to be swung, or sold to be swung.`,
  }));
}

/** What a reader of the words would not be sure of. */
function doubtsOf({ input }: DealContext): DealReason[] {
  return input.listing.doubts.map(({ text }) => ({ code: "doubt", text }));
}
