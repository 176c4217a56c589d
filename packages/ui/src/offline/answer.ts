import {
  type Build,
  type ClubParts,
  clubDimensions,
  estimateClub,
  findByCode,
  type Goal,
  goesWith,
  isSold,
  type Reference,
  type Refusal,
  type Resolution,
  readListing,
  readyCatalogue,
  resolveBench,
  rules,
  type Skill,
  unsold,
} from "@ferrule/core";
import { listPlace, thingsOf } from "./lists.ts";
import { OfflineProblem } from "./offline-problem.ts";
import type { Snapshot } from "./snapshot.ts";

/** The most that core returns of each; see the server's goes-with. */
const widest = 5000;

/** Whether a question can be answered from a snapshot at all. */
export const notWithout = () =>
  new OfflineProblem("unreachable", "The bench cannot be reached, and this needs it");

/** Answers what is only asked, as the server would, from what is kept here. */
export function answerFrom(snapshot: Snapshot, method: string, address: string, body: unknown): unknown {
  const { pathname, searchParams } = new URL(address, "http://bench");
  if (method === "POST") return answerPost(snapshot, pathname, body);
  if (method !== "GET") throw notWithout();
  const { example, parts, joints, claims, goal, undo, settings, costs } = snapshot;
  switch (pathname) {
    case "/api/bench":
      return { example, parts, joints, claims, goal, undo };
    case "/api/bench/goal":
      return goal;
    case "/api/bench/resolve":
      return resolved(snapshot, asked(goal, searchParams));
    case "/api/settings":
      return settings;
    case "/api/costs":
      return costs;
    default:
      if (pathname.startsWith("/api/codes/"))
        return findByCode(
          decodeURIComponent(pathname.slice("/api/codes/".length)),
          new Map(Object.entries(snapshot.codes ?? {})),
        );
      return answerList(snapshot, pathname, searchParams);
  }
}

function answerPost({ reference, models }: Snapshot, path: string, body: unknown): unknown {
  if (path === "/api/read") return readListing((body as { text: string }).text, readyCatalogue([...models]));
  if (path === "/api/estimate") return estimated(reference, body as Estimating);
  if (path === "/api/dimensions") {
    const { build = {}, ...parts } = body as Estimating;
    return clubDimensions(parts, build, reference);
  }
  throw notWithout();
}

type Estimating = ClubParts & { readonly build?: Build };

function estimated(reference: Reference, { build = {}, ...parts }: Estimating): unknown {
  const result = estimateClub(parts, build, reference);
  if (result.ok) return result.estimates;
  throw refused("The club cannot be estimated from this", result.refusals);
}

function answerList(snapshot: Snapshot, path: string, query: URLSearchParams): unknown {
  const at = listPlace(path);
  if (at === undefined) throw notWithout();
  const things = thingsOf(snapshot, at.list);
  if (at.id === undefined)
    return { [at.list.name]: at.list.name === "sightings" ? [...things].reverse() : things };
  const thing = things.find(({ id }) => id === at.id);
  if (thing === undefined) throw new OfflineProblem("not-found", `"${at.id}" is not among what is kept here`);
  if (at.about === undefined) return thing;
  if (at.about !== "goes-with" || at.list.name !== "parts") throw notWithout();
  return goesWithOf(snapshot, at.id, asked(snapshot.goal, query));
}

function goesWithOf(snapshot: Snapshot, id: string, goal: Goal): unknown {
  const part = snapshot.parts.find((each) => each.id === id);
  if (part === undefined) throw notWithout();
  if (isSold(part)) return goesWith(part, { clubs: [], nearMisses: [], wants: [], questions: [] }, widest);
  return goesWith(part, resolved(snapshot, { ...goal, limit: widest }, id), goal.limit ?? 200);
}

function resolved({ parts, joints, claims, reference }: Snapshot, goal: Goal, about?: string): Resolution {
  const result = resolveBench({ ...unsold({ parts, joints }), claims, goal }, rules, reference, about);
  if (result.ok) return result.resolution;
  throw refused("The bench does not hold together", result.refusals);
}

function asked(goal: Goal, query: URLSearchParams): Goal {
  const limit = query.get("limit");
  const skill = query.get("skill") as Skill | null;
  return { ...goal, ...(skill && { skill }), ...(limit && { limit: Number(limit) }) };
}

function refused(message: string, refusals: readonly Refusal[]): OfflineProblem {
  return new OfflineProblem("bad-request", message, refusals);
}
