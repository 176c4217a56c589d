import { isDeepStrictEqual } from "node:util";
import {
  type Deal,
  judgeDeal,
  type Listing,
  type ReadyCatalogue,
  readListing,
  rules,
  type Sighting,
} from "@ferrule/core";
import type { Bench } from "../bench/bench.ts";
import { done, type Outcome, problem } from "../errors.ts";
import { givenBench, type WorldRequest, type WorldTools, worldOf } from "./world.ts";

export interface JudgeRequest extends WorldRequest {
  readonly text?: string;
  readonly listing?: Listing;
  /** The id of a sighting in the log. */
  readonly sighting?: string;
  readonly roundTripKm?: number;
  readonly place?: string;
  /** Whether it goes into the log; where left out, words and sightings do, and a listing without words does not. */
  readonly log?: boolean;
}

export interface Judged {
  readonly deal: Deal;
  readonly listing: Listing;
  /** The listing in the log; nothing where it was not logged. */
  readonly sighting: Sighting | null;
}

/** What is judged: words, what was read from them, what holds, and the sighting that they are in the log, if any. */
interface Heard {
  readonly text: string;
  readonly read: Listing;
  readonly listing: Listing;
  readonly sighting?: Sighting;
}

/** What a listing is worth to the stored bench, or to one that is given; a listing judged for the stored bench goes into the log. */
export function judgeListing(tools: WorldTools, request: JudgeRequest): Outcome<Judged> {
  const today = request.today ?? tools.today();
  const heard = hear(tools, request);
  if (!heard.ok) return heard;
  const world = worldOf(tools, request, "The listing cannot be judged from this");
  if (!world.ok) return world;
  const { listing, sighting } = heard.value;
  const roundTripKm = request.roundTripKm ?? sighting?.roundTripKm;
  const deal = judgeDeal({
    ...world.value,
    listing,
    rules,
    // The listing does not count among what turns up besides it, however often it is judged.
    sightings: world.value.sightings.filter(({ id }) => id !== sighting?.id),
    ...(roundTripKm === undefined ? {} : { roundTripKm }),
  });
  if (!isLogged(request)) return done({ deal, listing, sighting: null });
  const logged = log(tools.bench, heard.value, request, deal, today);
  return logged.ok ? done({ deal, listing, sighting: logged.value }) : logged;
}

function hear(tools: WorldTools, request: JudgeRequest): Outcome<Heard> {
  const { text, listing, sighting: id } = request;
  const isOne = id === undefined ? text !== undefined || listing !== undefined : text === undefined;
  if (!isOne) {
    const got = id === undefined ? "none of them" : "a sighting and words";
    const expected = "text, listing (with the text or the sighting that it corrects, if any) or sighting";
    return problem("bad-request", undefined, [{ field: "(the body)", got, expected }]);
  }
  if (id !== undefined) return storedSighting(tools.bench, id, listing);
  if (text === undefined) return done({ text: "", read: listing as Listing, listing: listing as Listing });
  const read = readListing(text, readyFor(tools, request));
  const sighting = isLogged(request) ? sameWords(tools.bench, text) : undefined;
  return done({ text, read, listing: listing ?? correctionOf(sighting) ?? read, sighting });
}

/** What the user made of the words, where that differs from what was read. */
export function correctionOf(sighting: Sighting | undefined): Listing | undefined {
  return isDeepStrictEqual(sighting?.listing, sighting?.read) ? undefined : sighting?.listing;
}

/** A listing that comes with it is what the user makes of its words now. */
function storedSighting(bench: Bench, id: string, corrected: Listing | undefined): Outcome<Heard> {
  const found = bench.sightings.get(id);
  if (!found.ok) return found;
  const { text, read, listing } = found.value;
  return done({ text, read, listing: corrected ?? listing, sighting: found.value });
}

function readyFor({ models }: WorldTools, { catalogue }: JudgeRequest): ReadyCatalogue {
  return catalogue ? models.readyOnly(catalogue) : models.ready();
}

/** The same words on any day are the same listing, judged again, as long as nothing has become of it. */
function sameWords(bench: Bench, text: string): Sighting | undefined {
  if (text.trim() === "") return undefined;
  return bench.sightings.all().findLast((one) => one.outcome === "open" && one.text === text);
}

/** Only what is judged for the stored bench goes into the log. */
function isLogged(request: JudgeRequest): boolean {
  const { text, sighting, log: wanted = text !== undefined || sighting !== undefined } = request;
  return wanted && givenBench(request) === undefined;
}

function log(
  bench: Bench,
  { text, read, listing, sighting }: Heard,
  { roundTripKm, place }: JudgeRequest,
  { verdict, mostToPay }: Deal,
  today: string,
): Outcome<Sighting> {
  const { mostToPay: _before, ...kept } = sighting ?? { seenOn: today, outcome: "open" as const };
  const judged = {
    ...kept,
    text,
    read,
    listing,
    verdict,
    ...(mostToPay ? { mostToPay } : {}),
    ...(roundTripKm === undefined ? {} : { roundTripKm }),
    ...(place === undefined ? {} : { place }),
  };
  if (sighting) return bench.sightings.put(sighting.id, judged as Sighting);
  return bench.sightings.add(judged as Sighting);
}
