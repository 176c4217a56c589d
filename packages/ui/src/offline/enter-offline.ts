import { canonicalText, mergePatch } from "@ferrule/core";
import { notWithout } from "./answer.ts";
import type { Kept } from "./kept.ts";
import { type ListPlace, listPlace, type OfflineList, thingsOf } from "./lists.ts";
import { OfflineProblem } from "./offline-problem.ts";
import type { Snapshot } from "./snapshot.ts";
import type { Thing, WaitingChange } from "./waiting-change.ts";

/** A change to be entered, and the version that the user saw, where that is known. */
export interface Entering {
  readonly method: string;
  readonly path: string;
  readonly body: unknown;
  readonly key: string;
  readonly seen: Thing | null;
}

/** Puts a change into the queue, and answers it as the server would have. What cannot wait is refused. */
export async function enterOffline(
  kept: Kept,
  world: Snapshot,
  entering: Entering,
  now: Date,
): Promise<unknown> {
  const { method, path, body, key } = entering;
  const at = listPlace(path);
  if (at === undefined) throw notWithout();
  const blank = {
    key,
    enteredAt: now.toISOString(),
    list: at.list.path,
    tries: 0,
    state: "waiting",
  } as const;
  if (at.id === undefined) return add(kept, at.list, body as Thing, world, blank);
  const before = thingsOf(world, at.list).find(({ id }) => id === at.id);
  if (before === undefined)
    throw new OfflineProblem("not-found", `"${at.id}" is not among what is kept here`);
  const change = { ...blank, path, id: at.id, before: entering.seen ?? before };
  if (at.about === "buy" && method === "POST") return buy(kept, { ...change, method, body }, before);
  if (at.about !== undefined) throw notWithout();
  if (method === "DELETE") return remove(kept, { ...change, method }, world, at, before);
  if (method !== "PUT" && method !== "PATCH") throw notWithout();
  const changed = method === "PUT" ? (body as Thing) : (mergePatch(before, body) as Thing);
  const thing = checked(at.list, { ...changed, id: at.id });
  await kept.add({ ...change, method: "PUT", body: thing }, (last) => joined(last, thing));
  return thing;
}

type Blank = Pick<WaitingChange, "key" | "enteredAt" | "list" | "tries" | "state">;

async function add(
  kept: Kept,
  list: OfflineList,
  body: Thing,
  world: Snapshot,
  blank: Blank,
): Promise<Thing> {
  const id = typeof body["id"] === "string" ? body["id"] : newId(list.stem(body));
  if (thingsOf(world, list).some((thing) => thing["id"] === id))
    throw new OfflineProblem("id-taken", `There is something with the id "${id}" already`);
  const thing = checked(list, { ...body, id });
  const change = { ...blank, method: "POST", path: list.path, id, body: thing, before: null } as const;
  await kept.add(change, () => undefined);
  return thing;
}

/** What is bought shows on the bench once the bench has heard of it. */
async function buy(kept: Kept, change: Omit<WaitingChange, "place">, sighting: Thing): Promise<unknown> {
  await kept.add(change, () => undefined);
  return { parts: [], joints: [], entries: [], sighting: { ...sighting, outcome: "bought" } };
}

async function remove(
  kept: Kept,
  change: Omit<WaitingChange, "place">,
  { undo }: Snapshot,
  { list }: ListPlace,
  before: Thing,
): Promise<unknown> {
  await kept.add(change, () => undefined);
  const none = { parts: [], joints: [], claims: [] };
  const isOnBench = list.path.startsWith("/api/bench/");
  return { deleted: isOnBench ? { ...none, [list.name]: [before] } : before, undo };
}

/** A change of what has not been sent yet is part of it. */
function joined(last: WaitingChange, thing: Thing): WaitingChange | undefined {
  const isOpen = last.state === "waiting" && last.tries === 0 && last.method !== "DELETE";
  return isOpen && listPlace(last.path)?.about === undefined ? { ...last, body: thing } : undefined;
}

function checked(list: OfflineList, thing: Thing): Thing {
  const parsed = list.parse(thing);
  if (!parsed.ok) throw new OfflineProblem("bad-request", "The request was not understood", parsed.refusals);
  return JSON.parse(canonicalText(parsed.value)) as Thing;
}

const signs = "abcdefghjkmnpqrstuvwxyz23456789";

/** An id that no other device makes up at the same time: 31^6 of them, and the bench refuses one that is taken. */
export function newId(stem: string): string {
  const bytes = crypto.getRandomValues(new Uint8Array(6));
  return `${stem}-${[...bytes].map((byte) => signs[byte % signs.length]).join("")}`;
}
