import { fileURLToPath } from "node:url";
import { dealJudge, judgeDeal, readListing, readyCatalogue, rules } from "../../packages/core/dist/index.js";
import { readDemo, readReference } from "../../packages/server/dist/reference-files.js";
import { timedCpu } from "../measure.mjs";
import { grownBench, seededListings } from "../seeded-batch.mjs";

export const sizes = [50, 150, 500];
export const sizeText = (count) => `${count} parts`;
export const about =
  "A listing of a batch of 100 judged for the bench, against each judged by itself; the verdicts have to be equal.";
const [listingCount, aloneCount, seed] = [100, 12, 20261125];

export function ready() {
  const dataFolder = fileURLToPath(new URL("../../data", import.meta.url));
  const [reference, demo] = [readReference(dataFolder), readDemo(dataFolder)];
  const ready = readyCatalogue(demo.models);
  const listings = seededListings(demo.models, listingCount, seed).map((text) => readListing(text, ready));
  return (count) => {
    const world = {
      ...{ bench: grownBench(demo, count, seed), rules, reference, catalogue: demo.models },
      ...{
        evidence: demo.evidence,
        sightings: demo.sightings,
        costs: reference.firstCosts,
        today: "2026-11-25",
      },
    };
    const batch = timedCpu(() => {
      const judge = dealJudge(world);
      return listings.map((listing) => judge({ listing }));
    });
    const alone = timedCpu(() =>
      listings.slice(0, aloneCount).map((listing) => judgeDeal({ ...world, listing })),
    );
    const said = ({ verdict, mostToPay }) => `${verdict} ${mostToPay?.amountMinor ?? null}`;
    alone.result.forEach((deal, at) => {
      if (said(deal) !== said(batch.result[at]))
        throw new Error(`listing ${at + 1} is judged otherwise alone`);
    });
    return [
      {
        ...{ what: "judging a listing of a batch", unit: "ms of processor", against: "each alone" },
        ...{ ours: batch.ms / listingCount, baseline: alone.ms / aloneCount },
      },
    ];
  };
}
