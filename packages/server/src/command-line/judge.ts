import {
  type Deal,
  type DealVerdict,
  dealJudge,
  type Listing,
  readListing,
  readyCatalogue,
  rules,
  type Sighting,
} from "@ferrule/core";
import { valueOrThrow } from "../errors.ts";
import { correctionOf } from "../trade/judge-listing.ts";
import { type World, worldOf } from "../trade/world.ts";
import { shortDeal } from "../wire/deal.ts";
import type { Answer, Command, Given, Surroundings } from "./command.ts";
import { dealText } from "./deal-text.ts";
import { type ExitCode, exitCodes } from "./exit-code.ts";
import { givenWorld } from "./given-world.ts";
import { listingTexts, manyOption } from "./listing-texts.ts";
import { benchToRead, type OpenedBench } from "./open-bench.ts";
import { numberOption } from "./option-value.ts";
import { marketOptions } from "./world-options.ts";
import { WrongUse } from "./wrong-use.ts";

export const judgeCommand: Command = {
  name: "judge",
  summary: "whether a listing is worth buying for this bench, and the most to pay",
  takes: "[FILE…]",
  words: { least: 0, most: 1000 },
  options: {
    ...manyOption,
    km: { takes: "N", text: "the way there and back in kilometres, where it has to be fetched" },
    sighting: { takes: "ID", text: "a listing of the log, in the place of files" },
    ...marketOptions,
  },
  more: [
    "Each file is one listing. Without a file, or with -, the words come from standard input. Nothing is kept: " +
      "only a listing that is judged in the page goes into the log.",
    "A verdict speaks of money. Nothing here says that a part is safe to swing: look at it before you pay, and again before you use it.",
  ],
  exits: [
    [exitCodes.done, "buy it; of several listings, at least one"],
    [exitCodes.no, "leave it; of several, all of them"],
    [exitCodes.open, "offer less, or ask first; of several, at least one and none to buy"],
  ],
  examples: [
    {
      text: "A listing in a file, 30 km there and back",
      line: "ferrule judge listing.txt --km 30",
      exit: exitCodes.open,
    },
    {
      text: "In a script: what to do, by the exit code",
      line: "ferrule judge listing.txt > verdict.txt; case $? in 0) echo buy;; 3) echo leave;; 4) cat verdict.txt;; esac",
      exit: exitCodes.done,
    },
    {
      text: "Against an exported bench and its prices, whatever is stored here",
      line: "ferrule judge listing.txt --bench bench.json --catalogue models.csv --evidence prices.csv --today 2026-11-25",
      exit: exitCodes.open,
    },
  ],
  run: runJudge,
};

interface Heard {
  readonly from: string;
  readonly text: string;
  readonly listing: Listing;
  readonly roundTripKm?: number;
}

interface Judged extends Heard {
  readonly deal: Deal;
}

async function runJudge(given: Given, around: Surroundings): Promise<Answer> {
  const km = numberOption(given, "km", 0, 5000);
  const id = given.value("sighting");
  if (id !== undefined && given.words.length > 0)
    throw new WrongUse("expected files or --sighting, got both");
  const texts = id === undefined ? await listingTexts(given, around) : [];
  const request = await givenWorld(given, around);
  const opened = benchToRead(given, around);
  try {
    const world = valueOrThrow(worldOf(opened.tools, request, "The listing cannot be judged from this"));
    const heard = id === undefined ? hear(texts, world) : [logged(opened, id)];
    const listings = judgeAll(heard, world, km);
    return {
      exit: exitOf(listings.map(({ deal }) => deal.verdict)),
      json: { listings: listings.map(({ deal, ...rest }) => ({ ...rest, deal: shortDeal(deal) })) },
      text: (width) =>
        listings.map((one) => dealText(one, world.costs.currency, listings.length > 1, width)).join("\n\n\n"),
    };
  } finally {
    opened.close();
  }
}

/** What was corrected in the same words of the log before is kept to. */
function hear(texts: readonly { readonly from: string; readonly text: string }[], world: World): Heard[] {
  const ready = readyCatalogue(world.catalogue);
  return texts.map(({ from, text }) => {
    const same = sameWords(world.sightings, text);
    return { from, text, listing: correctionOf(same) ?? readListing(text, ready), ...wayOf(same) };
  });
}

const sameWords = (sightings: readonly Sighting[], text: string) =>
  sightings.findLast((one) => one.outcome === "open" && one.text.trim() === text.trim());

const wayOf = (sighting: Sighting | undefined) =>
  sighting?.roundTripKm === undefined ? {} : { roundTripKm: sighting.roundTripKm };

function logged({ tools }: OpenedBench, id: string): Heard {
  const sighting = valueOrThrow(tools.bench.sightings.get(id));
  return { from: `sighting ${id}`, text: sighting.text, listing: sighting.listing, ...wayOf(sighting) };
}

/** A listing does not count among what turns up besides it, so what is judged is taken out of the log. */
function judgeAll(heard: readonly Heard[], world: World, km: number | undefined): Judged[] {
  const texts = new Set(heard.map(({ text }) => text.trim()));
  const sightings = world.sightings.filter(({ text }) => !texts.has(text.trim()));
  const judge = dealJudge({ ...world, sightings, rules });
  return heard.map((one) => {
    const roundTripKm = km ?? one.roundTripKm;
    const deal = judge({ listing: one.listing, ...(roundTripKm === undefined ? {} : { roundTripKm }) });
    return { ...one, deal };
  });
}

function exitOf(verdicts: readonly DealVerdict[]): ExitCode {
  if (verdicts.includes("buy")) return exitCodes.done;
  return verdicts.every((verdict) => verdict === "leave") ? exitCodes.no : exitCodes.open;
}
