import type { Part } from "@ferrule/core";
import { clubListing, sighting } from "../api/trade.test-kit.ts";
import { type BenchState, type Change, ownIdStart } from "./ledger.test-kit.ts";

const on = "2026-11-25";
const eur = (amountMinor: number) => ({ amountMinor, currency: "EUR" });

/** What one client of a storm has to hand. */
interface Lane {
  readonly changes: Change[];
  /** A number from 0 up to and without 1, from a seed. */
  readonly random: () => number;
  readonly newId: (stem: string) => string;
  /** Sends a change and waits; rejects when the server dies meanwhile. */
  readonly send: (method: string, path: string, body?: object) => Promise<unknown>;
}

interface StormOptions {
  /** Takes up all that is asked for. */
  readonly changes: Change[];
  readonly random: () => number;
  /** Begins the ids of what this client adds. */
  readonly name: string;
  /** Is called at every answer. */
  readonly answered: () => void;
}

/** Changes over and over until the server is gone. */
export async function storm(
  address: string,
  { changes, random, name, answered }: StormOptions,
): Promise<void> {
  let count = 0;
  const lane: Lane = {
    changes,
    random,
    newId: (stem) => {
      count += 1;
      return `${ownIdStart}${name}-${count}-${stem}`;
    },
    send: async (method, path, body) => {
      const answer = await send(address, method, path, body);
      answered();
      return answer;
    },
  };
  const acts = [addOne, importMany, buyClub, sellGrip, writeEntry, editThenDelete];
  try {
    for (;;) await (acts[Math.floor(random() * acts.length)] as (lane: Lane) => Promise<void>)(lane);
  } catch (error) {
    if (error instanceof Refused) throw error;
  }
}

/** An answer that no change of a storm should get. */
class Refused extends Error {}

async function send(address: string, method: string, path: string, body?: object): Promise<unknown> {
  const reply = await fetch(address + path, {
    method,
    ...(body && { headers: { "content-type": "application/json" }, body: JSON.stringify(body) }),
  });
  const text = await reply.text();
  if (!reply.ok) throw new Refused(`${method} ${path} answered ${reply.status}: ${text}`);
  return JSON.parse(text);
}

type Holds = (state: BenchState) => boolean;

/** One request, and how its change is seen once it is done. */
interface Step {
  readonly does: string;
  readonly request: () => Promise<unknown>;
  readonly isDone: Holds;
}

/** Makes changes of the same things one after the other, each noted before it is asked for and again once it is acknowledged. */
async function inSteps(lane: Lane, isUntouched: Holds, steps: readonly Step[]): Promise<void> {
  const change: Change = { what: "", acknowledged: true, isDone: isUntouched, isUndone: isUntouched };
  lane.changes.push(change);
  for (const { does, request, isDone } of steps) {
    const isUndone = change.isDone;
    Object.assign(change, { what: does, acknowledged: false, isDone, isUndone });
    await request();
    change.acknowledged = true;
  }
}

const grip = (id: string) => ({ id, kind: "grip", note: `of ${id}` });
const shaft = (id: string) => ({ id, kind: "shaft", massG: 61, note: `of ${id}` });
const gripped = (id: string, one: string, other: string) => ({
  id,
  type: "gripped",
  parts: [one, other],
});

const isHere = (state: BenchState, part: { id: string; note: string }) =>
  state.parts.get(part.id)?.note === part.note;

const addPart = (lane: Lane, part: { id: string; note: string }): Step => ({
  does: `add ${part.id}`,
  request: () => lane.send("POST", "/api/bench/parts", part),
  isDone: (state) => isHere(state, part),
});

const withoutPart =
  (id: string): Holds =>
  ({ parts }) =>
    !parts.has(id);

async function addOne(lane: Lane): Promise<void> {
  const id = lane.newId("grip");
  await inSteps(lane, withoutPart(id), [addPart(lane, grip(id))]);
}

/** Forty parts and their twenty joints in one file. */
async function importMany(lane: Lane): Promise<void> {
  const pairs = Array.from({ length: 20 }, () => [lane.newId("grip"), lane.newId("shaft")] as const);
  const parts = pairs.flatMap(([one, other]) => [grip(one), shaft(other)]);
  const joints = pairs.map(([one, other]) => gripped(lane.newId("joint"), one, other));
  const text = JSON.stringify({ parts, joints });
  const step: Step = {
    does: `import of ${parts[0]?.id} and ${parts.length + joints.length - 1} more`,
    request: () => lane.send("POST", "/api/bench/import", { format: "json", text, take: "all-or-none" }),
    isDone: (state) =>
      parts.every((part) => isHere(state, part)) && joints.every(({ id }) => state.joints.has(id)),
  };
  const isUntouched: Holds = (state) =>
    !parts.some(({ id }) => state.parts.has(id)) && !joints.some(({ id }) => state.joints.has(id));
  await inSteps(lane, isUntouched, [step]);
}

/** A club in the log, then bought: five parts, three joints, a line of the books, the sighting, and its undo. */
async function buyClub(lane: Lane): Promise<void> {
  const id = lane.newId("sighting");
  let told: readonly Part[] = [];
  const see: Step = {
    does: `add ${id}`,
    request: () => lane.send("POST", "/api/sightings", { ...sighting, id, listing: clubListing }),
    isDone: (state) => state.sightings.get(id)?.outcome === "open" && linesOfPurchase(state, id).length === 0,
  };
  const buy: Step = {
    does: `purchase of ${id}`,
    request: async () => {
      const body = { paid: eur(9000), on };
      told = ((await lane.send("POST", `/api/sightings/${id}/buy`, body)) as { parts: readonly Part[] })
        .parts;
    },
    isDone: (state) => isBought(state, id) && told.every((part) => state.parts.has(part.id)),
  };
  await inSteps(lane, ({ sightings }) => !sightings.has(id), [see, buy]);
}

const linesOfPurchase = ({ entries }: BenchState, sightingId: string) =>
  entries.filter((entry) => entry.sighting === sightingId);

function isBought(state: BenchState, sightingId: string): boolean {
  const [line] = linesOfPurchase(state, sightingId);
  const parts = line?.parts ?? [];
  const between = [...state.joints.values()].filter((joint) => joint.parts.every((id) => parts.includes(id)));
  return (
    state.sightings.get(sightingId)?.outcome === "bought" &&
    parts.length === 5 &&
    parts.every((id) => state.parts.get(id)?.acquiredOn === on) &&
    between.length === 3 &&
    canBeUndone(state, line?.id)
  );
}

const canBeUndone = ({ deletions }: BenchState, id: string | undefined) =>
  deletions.filter((text) => text.includes(JSON.stringify(id))).length === 1;

/** A grip, then its sale: the part, a line of the books, a noted price, and its undo. */
async function sellGrip(lane: Lane): Promise<void> {
  const part = grip(lane.newId("grip"));
  const lines = ({ entries }: BenchState) =>
    entries.filter(({ type, parts }) => type === "sale" && parts?.includes(part.id));
  const soldFor = (state: BenchState) => state.parts.get(part.id)?.soldFor?.amountMinor;
  const add = addPart(lane, part);
  const sell: Step = {
    does: `sale of ${part.id}`,
    request: () => lane.send("POST", "/api/books/sell", { parts: [part.id], price: eur(1250), on }),
    isDone: (state) =>
      soldFor(state) === 1250 && lines(state).length === 1 && canBeUndone(state, lines(state)[0]?.id),
  };
  const isUnsold: Holds = (state) =>
    add.isDone(state) && soldFor(state) === undefined && lines(state).length === 0;
  await inSteps(lane, withoutPart(part.id), [{ ...add, isDone: isUnsold }, sell]);
}

async function writeEntry(lane: Lane): Promise<void> {
  const id = lane.newId("entry");
  const isDone: Holds = ({ entries }) => entries.some((entry) => entry.id === id);
  const request = () => lane.send("POST", "/api/books", { id, on, type: "material", amount: eur(-350) });
  await inSteps(lane, (state) => !isDone(state), [{ does: `add ${id}`, request, isDone }]);
}

/** A shaft that is joined to a grip, changed, and deleted, which takes its joint with it. */
async function editThenDelete(lane: Lane): Promise<void> {
  const [one, other, joint] = [lane.newId("grip"), lane.newId("shaft"), lane.newId("joint")];
  const edited = { ...shaft(other), note: `changed ${other}` };
  const path = `/api/bench/parts/${other}`;
  const isJoined: Holds = ({ joints }) => joints.has(joint);
  await inSteps(lane, withoutPart(one), [addPart(lane, grip(one))]);
  const add = addPart(lane, shaft(other));
  await inSteps(lane, withoutPart(other), [
    { ...add, isDone: (state) => add.isDone(state) && !isJoined(state) },
    {
      does: `join ${other}`,
      request: () => lane.send("POST", "/api/bench/joints", gripped(joint, one, other)),
      isDone: (state) => add.isDone(state) && isJoined(state),
    },
    {
      does: `change ${other}`,
      request: () => lane.send("PUT", path, edited),
      isDone: (state) => isHere(state, edited) && isJoined(state) && !canBeUndone(state, other),
    },
    {
      does: `delete ${other}`,
      request: () => lane.send("DELETE", path),
      isDone: (state) => withoutPart(other)(state) && !isJoined(state) && canBeUndone(state, other),
    },
  ]);
}
