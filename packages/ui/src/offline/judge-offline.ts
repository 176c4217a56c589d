import {
  canonicalText,
  type Deal,
  judgeDeal,
  type Listing,
  readListing,
  readyCatalogue,
  rules,
  type Sighting,
} from "@ferrule/core";
import type { JudgeReply, JudgeRequest } from "../trade-api.ts";
import { OfflineProblem } from "./offline-problem.ts";
import type { Snapshot } from "./snapshot.ts";

/** A judgement, and the sighting as it is to be kept, where it is. */
export type OfflineJudgement = JudgeReply & { readonly known: Sighting | undefined };

/**
 * Judges a listing from what is kept here, part by part: what parts are worth to the whole bench needs the solver, which
 * stays with the bench. The deal says so.
 */
export function judgeOffline(
  snapshot: Snapshot,
  request: JudgeRequest,
  today: string,
  asOf: string,
  newId: () => string,
): OfflineJudgement {
  const { text, known, read, listing } = heard(snapshot, request);
  const roundTripKm = request.roundTripKm ?? known?.roundTripKm;
  const place = request.place ?? known?.place;
  const deal = dealOf(snapshot, listing, roundTripKm, known?.id, today, asOf);
  const isLogged = request.log ?? (request.text !== undefined || request.sighting !== undefined);
  if (!isLogged) return { deal, listing, sighting: null, known };
  const { mostToPay: _before, ...kept } = known ?? { id: newId(), seenOn: today, outcome: "open" as const };
  const sighting: Sighting = {
    ...kept,
    text,
    read,
    listing,
    verdict: deal.verdict,
    ...(deal.mostToPay && { mostToPay: deal.mostToPay }),
    ...(roundTripKm !== undefined && { roundTripKm }),
    ...(place !== undefined && { place }),
  };
  return { deal, listing, sighting, known };
}

interface Heard {
  readonly text: string;
  readonly read: Listing;
  readonly listing: Listing;
  readonly known: Sighting | undefined;
}

function heard({ models, sightings }: Snapshot, { text, listing, sighting: id }: JudgeRequest): Heard {
  if (id !== undefined) {
    const known = sightings.find((each) => each.id === id);
    if (known === undefined) throw new OfflineProblem("not-found", `"${id}" is not among what is kept here`);
    return { text: known.text, read: known.read, listing: listing ?? known.listing, known };
  }
  if (text === undefined) {
    if (listing === undefined) throw new OfflineProblem("bad-request", "There is nothing to judge");
    return { text: "", read: listing, listing, known: undefined };
  }
  const read = readListing(text, readyCatalogue([...models]));
  const known = sightings.findLast((each) => each.outcome === "open" && each.text === text);
  return { text, read, listing: listing ?? correctionOf(known) ?? read, known };
}

function correctionOf(known: Sighting | undefined): Listing | undefined {
  return known && canonicalText(known.listing) !== canonicalText(known.read) ? known.listing : undefined;
}

function dealOf(
  { parts, joints, claims, goal, reference, models, evidence, sightings, costs }: Snapshot,
  listing: Listing,
  roundTripKm: number | undefined,
  itself: string | undefined,
  today: string,
  asOf: string,
): Deal {
  const deal = judgeDeal({
    bench: { parts, joints, claims, goal },
    reference,
    rules,
    catalogue: models,
    evidence,
    sightings: sightings.filter(({ id }) => id !== itself),
    costs,
    today,
    listing,
    ...(roundTripKm !== undefined && { roundTripKm }),
  });
  const notice = `Judged without a signal, part by part, on the bench as of ${asOf.slice(0, 16).replace("T", " ")} UTC; with a signal it is judged again for the bench as a whole`;
  return { ...deal, notices: [...deal.notices, notice] };
}
