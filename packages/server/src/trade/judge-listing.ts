import { isDeepStrictEqual } from "node:util";
import {
  type Deal,
  type DealQuery,
  judgeDeal,
  type Listing,
  type ReadyCatalogue,
  readListing,
  rules,
  type Sighting,
} from "@ferrule/core";
import type { Bench } from "../bench/bench.ts";
import { done, type Outcome, problem } from "../errors.ts";
import type { Judgements } from "./judgements.ts";
import { givenBench, type World, type WorldRequest, type WorldTools, worldOf } from "./world.ts";

export interface JudgeTools extends WorldTools {
  readonly judgements: Judgements;
  /** Differs after every change of the parts, the joints, the claims, the catalogue or the noted prices. */
  readonly benchStamp: () => string;
}

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
export async function judgeListing(tools: JudgeTools, request: JudgeRequest): Promise<Outcome<Judged>> {
  const today = request.today ?? tools.today();
  const heard = hear(tools, request);
  if (!heard.ok) return heard;
  const world = worldOf(tools, request, "The listing cannot be judged from this");
  if (!world.ok) return world;
  const { listing, sighting } = heard.value;
  const roundTripKm = request.roundTripKm ?? sighting?.roundTripKm;
  // The listing does not count among what turns up besides it, however often it is judged.
  const sightings = world.value.sightings.filter(({ id }) => id !== sighting?.id);
  const query = { listing, ...(roundTripKm === undefined ? {} : { roundTripKm }) };
  const deal = await dealOf(tools, request, { ...world.value, sightings }, query);
  if (!isLogged(request)) return done({ deal, listing, sighting: null });
  // Somebody may have had the same words judged meanwhile.
  const again = sighting ?? (request.text === undefined ? undefined : sameWords(tools.bench, request.text));
  const known = again ? { ...heard.value, sighting: again } : heard.value;
  const logged = log(tools.bench, known, request, deal, today);
  return logged.ok ? done({ deal, listing, sighting: logged.value }) : logged;
}

/** For the stored bench by what parts are worth to the whole of it; for one that comes with the request, part by part. */
function dealOf(
  tools: JudgeTools,
  request: JudgeRequest,
  world: World,
  query: DealQuery,
): Deal | Promise<Deal> {
  const { parts, joints, claims, goal, catalogue, evidence, sightings, costs } = request;
  const given = [parts, joints, claims, goal, catalogue, evidence, sightings, costs];
  if (given.some((each) => each !== undefined)) return judgeDeal({ ...world, ...query, rules });
  const priced = JSON.stringify([tools.benchStamp(), world.bench.goal, world.costs, world.today]);
  return tools.judgements.judge(priced, world, query);
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
