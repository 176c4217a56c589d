import { canonicalText } from "@ferrule/core";
import type { Kept } from "./kept.ts";
import { mergeThree } from "./merge-three.ts";
import { tagOf } from "./tag-of.ts";
import type { Thing, WaitingChange } from "./waiting-change.ts";

/** An id that was made up here and that the bench has another for. */
export interface Renamed {
  readonly from: string;
  readonly to: string;
}

export interface Sent {
  readonly count: number;
  readonly renamed: readonly Renamed[];
  /** Why sending stopped before the end, if it did. */
  readonly stopped: "no-signal" | "not-paired" | "later" | undefined;
}

/** How often in a row a change is put together with what came meanwhile, before it waits for the next time. */
const triesMost = 10;

type Fetch = (path: string, init?: RequestInit) => Promise<Response>;

/**
 * Sends what waits, in the order in which it was entered. What rests on something in conflict or refused stays where it is;
 * nothing is dropped but what the bench has taken.
 */
export async function sendWaiting(kept: Kept, ask: Fetch): Promise<Sent> {
  const renamed: Renamed[] = [];
  let count = 0;
  const said = (stopped?: Sent["stopped"]): Sent => ({ count, renamed, stopped });
  const places = (await kept.changes()).map(({ place }) => place);
  for (const place of places) {
    const all = await kept.changes();
    const change = all.find((each) => each.place === place);
    if (change?.state !== "waiting" || isHeldUp(change, all)) continue;
    await kept.put({ ...change, tries: change.tries + 1 });
    const result = await sendOne(kept, change, ask);
    if (result === "no-signal" || result === "not-paired" || result === "later") return said(result);
    if (result === "stays") continue;
    count += 1;
    if (result && result.to !== result.from) renamed.push(result);
  }
  return said();
}

/** Whether something entered before it, that it rests on, is not settled. */
function isHeldUp(change: WaitingChange, all: readonly WaitingChange[]): boolean {
  const words = JSON.stringify([change.id, change.path, change.body]);
  return all.some(
    ({ place, state, id }) =>
      place < change.place &&
      state !== "waiting" &&
      (words.includes(`"${id}"`) || words.includes(`/${encodeURIComponent(id)}`)),
  );
}

type Result = Sent["stopped"] | "stays" | Renamed;

async function sendOne(kept: Kept, change: WaitingChange, ask: Fetch): Promise<Result> {
  const reply = await ask(change.path, await requestOf(change)).catch(() => undefined);
  if (reply === undefined) return "no-signal";
  const answer = (await reply.json().catch(() => undefined)) as Thing | undefined;
  const code = (answer?.["error"] as { code?: string } | undefined)?.code;
  if (reply.ok) return taken(kept, change, answer ?? {});
  if (reply.status === 401) return "not-paired";
  if (reply.status === 429 || reply.status >= 500 || code === "still-at-it") return "later";
  if (code === "changed-meanwhile" || code === "id-taken" || code === "not-found") {
    const present = await presentOf(change, ask);
    return present === undefined ? "no-signal" : unlike(kept, change, present, answer, ask);
  }
  return refuse(kept, change, answer);
}

/** Changes and deletes name the version that they were made from; what was tried before may have been taken already. */
async function requestOf({ method, body, key, before, path, list }: WaitingChange): Promise<RequestInit> {
  const isHeld = before !== null && path.slice(list.length + 1).split("/").length === 1;
  return {
    method,
    headers: {
      "idempotency-key": key,
      ...(body !== undefined && { "content-type": "application/json" }),
      ...(isHeld && { "if-match": `"${await tagOf(before)}"` }),
    },
    ...(body !== undefined && { body: JSON.stringify(body) }),
  };
}

/** What is there now; null where there is nothing, undefined where nobody answers. */
async function presentOf({ list, id }: WaitingChange, ask: Fetch): Promise<Thing | null | undefined> {
  const reply = await ask(`${list}/${encodeURIComponent(id)}`).catch(() => undefined);
  if (reply?.status === 404) return null;
  return reply?.ok ? ((await reply.json()) as Thing) : undefined;
}

async function taken(kept: Kept, change: WaitingChange, answer: Thing): Promise<Renamed | undefined> {
  const id = answer["id"] ?? (answer["sighting"] as Thing | undefined)?.["id"];
  const renamed = {
    from: change.id,
    to: typeof id === "string" && change.method === "POST" ? id : change.id,
  };
  await kept.drop(change.place);
  const isWhole = change.method === "PUT" || change.path === change.list;
  for (const later of await kept.changes()) {
    const next = goneOn(later, change, renamed, isWhole ? answer : undefined);
    if (next !== later) await kept.put(next);
  }
  return renamed;
}

/** A later change of the same thing starts from what the bench made of this one. */
function goneOn(
  later: WaitingChange,
  change: WaitingChange,
  { from, to }: Renamed,
  answer: Thing | undefined,
): WaitingChange {
  const isSame = later.list === change.list && later.id === change.id && later.state === "waiting";
  const moved = from === to ? later : renamedIn(later, from, to);
  return isSame && answer && moved.before ? { ...moved, before: answer } : moved;
}

/** Ids that are made up here are like no other word, so that they can be replaced wherever they stand. */
function renamedIn(change: WaitingChange, from: string, to: string): WaitingChange {
  const words = JSON.stringify(change);
  const path = change.path.replace(`/${encodeURIComponent(from)}`, `/${encodeURIComponent(to)}`);
  const renamed = words.replaceAll(JSON.stringify(from), JSON.stringify(to));
  if (renamed === words && path === change.path) return change;
  return { ...(JSON.parse(renamed) as WaitingChange), path };
}

/** The bench has something else there than the change was made from: put together where that goes, else for a person to choose. */
async function unlike(
  kept: Kept,
  change: WaitingChange,
  present: Thing | null,
  answer: Thing | undefined,
  ask: Fetch,
): Promise<Result> {
  const { method, before, body } = change;
  const isGone = method === "DELETE" && present === null;
  const isThere = present !== null && method !== "DELETE" && canonicalText(present) === canonicalText(body);
  if (isGone || isThere) return taken(kept, change, present ?? {});
  if (method === "POST") return refuse(kept, change, answer);
  if (method === "PUT" && before !== null && present !== null) {
    const { merged, clashes } = mergeThree(before, body as Thing, present);
    if (clashes.length === 0) {
      const both = {
        ...change,
        key: crypto.randomUUID(),
        tries: change.tries + 1,
        before: present,
        body: merged,
      };
      await kept.put(both);
      return both.tries < triesMost ? sendOne(kept, both, ask) : "later";
    }
  }
  await kept.put({ ...change, state: "conflict", present });
  return "stays";
}

async function refuse(kept: Kept, change: WaitingChange, answer: Thing | undefined): Promise<Result> {
  const { message = "The bench gave no reason", refusals = [] } = (answer?.["error"] ?? {}) as {
    message?: string;
    refusals?: readonly { field: string; got: string; expected: string }[];
  };
  const at = refusals.map(({ field, got, expected }) => `${field} is ${got}, expected ${expected}`);
  await kept.put({ ...change, state: "refused", problem: [message, ...at].join(". ") });
  return "stays";
}
