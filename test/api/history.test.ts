import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { ferrule } from "../../packages/server/src/command-line/terminal.test-kit.ts";
import { keptChanges } from "../../packages/server/src/store/history-kept.ts";
import { openSqlite } from "../../packages/server/src/store/sqlite.ts";
import { openTables } from "../../packages/server/src/store/tables.ts";
import {
  ask,
  bondedShaft,
  looseParts,
  type TestApp,
  temporaryFolder,
  testApp,
  today,
} from "./server.test-kit.ts";
import { headListing, model } from "./trade.test-kit.ts";

const { head, adapter, shaft, grip } = looseParts;

interface Told {
  readonly number: number;
  readonly what: string;
  readonly words: string;
  readonly who: { means: string; device: string | null; name: string | null };
  readonly things: number;
  readonly entries: { table: string; id: string; before: unknown; after: unknown }[];
  readonly undoes: number | null;
  readonly undoneBy: number | null;
}

const historyOf = async (app: TestApp, query = ""): Promise<Told[]> =>
  (await ask(app, "GET", `/api/history${query}`)).body.changes;
const last = async (app: TestApp): Promise<Told> => (await historyOf(app))[0] as Told;
const undo = (app: TestApp, { number }: Pick<Told, "number">) =>
  ask(app, "POST", `/api/history/${number}/undo`);
const undoLast = async (app: TestApp) => undo(app, await last(app));
const bench = async (app: TestApp) => (await ask(app, "GET", "/api/bench")).body;
const part = async (app: TestApp, id: string) => (await ask(app, "GET", `/api/bench/parts/${id}`)).body;

async function benchOf(...parts: readonly object[]): Promise<TestApp> {
  const app = await testApp();
  for (const one of parts) expect((await ask(app, "POST", "/api/bench/parts", one)).status).toBe(201);
  return app;
}

/** A device on the network that has been paired under a name. */
async function pairedPhone(app: TestApp, name: string) {
  const { body: offer } = await ask(app, "POST", "/api/devices/offer");
  const remoteAddress = "192.168.1.20";
  const payload = { code: offer.code, name };
  const paired = await app.inject({ method: "POST", url: "/api/pair", remoteAddress, payload });
  const cookie = String(paired.headers["set-cookie"]).split(";")[0] ?? "";
  const fromPhone = (method: "POST" | "PUT", url: string, body: object) =>
    app.inject({ method, url, remoteAddress, headers: { cookie }, payload: body });
  return { device: paired.json().id as string, fromPhone };
}

/** Everything that a request can see of what the history keeps. */
async function everything(app: TestApp) {
  const urls = ["bench", "catalogue", "evidence", "sightings", "books", "measurements", "costs", "settings"];
  const seen = await Promise.all(urls.map(async (url) => (await ask(app, "GET", `/api/${url}`)).body));
  const labels = (await ask(app, "GET", "/api/labels")).body;
  const template = (await ask(app, "GET", "/api/advert/template")).body;
  const { undo: _undo, ...rest } = seen[0];
  return [rest, ...seen.slice(1), labels, template];
}

const sighting = {
  id: "seen1",
  seenOn: today,
  text: "Northmoor Ombrel driver head and a grip, 40 euros",
  read: headListing,
  listing: headListing,
  outcome: "open",
};

describe("the history", () => {
  it("tells who changed what when, the newest first", async () => {
    const app = await testApp({ now: () => Date.UTC(2026, 10, 25, 9, 30) });
    await ask(app, "POST", "/api/bench/parts", grip);
    await ask(app, "PATCH", "/api/bench/parts/g1", { massG: 52 });
    await ask(app, "DELETE", "/api/bench/parts/g1");
    const { body } = await ask(app, "GET", "/api/history");
    expect(body.next).toBeNull();
    expect(body.changes).toEqual([
      expect.objectContaining({ number: 3, what: "part-deleted", words: "Deleted the part g1" }),
      {
        number: 2,
        at: "2026-11-25T09:30:00.000Z",
        who: { means: "here", device: null, name: null },
        what: "part-changed",
        words: "Changed the part g1",
        things: 1,
        entries: [{ table: "parts", id: "g1", before: grip, after: { ...grip, massG: 52 } }],
        undoes: null,
        undoneBy: null,
      },
      expect.objectContaining({ number: 1, what: "part-added", words: "Added the part g1" }),
    ]);
  });

  it("names the paired device, by the name that it had, and this machine by the name that it is given", async () => {
    const app = await testApp();
    const { device, fromPhone } = await pairedPhone(app, "Bench phone");
    expect((await fromPhone("POST", "/api/bench/parts", grip)).statusCode).toBe(201);
    await ask(app, "PATCH", `/api/devices/${device}`, { name: "Phone" });
    await fromPhone("PUT", "/api/bench/goal", { skill: "bond" });
    expect((await fromPhone("PUT", "/api/own-name", { name: "Mine" })).statusCode).toBe(403);
    expect((await ask(app, "PUT", "/api/own-name", { name: "Front desk" })).body).toEqual({
      name: "Front desk",
    });
    expect((await ask(app, "GET", "/api/own-name")).body).toEqual({ name: "Front desk" });
    await ask(app, "PUT", "/api/bench/goal", {});
    expect((await historyOf(app)).map(({ who }) => who)).toEqual([
      { means: "here", device: null, name: "Front desk" },
      { means: "device", device, name: "Phone" },
      { means: "device", device, name: "Bench phone" },
    ]);
  });

  it("is written with the change or not at all: what is refused, or changes nothing, leaves none", async () => {
    const app = await benchOf(grip);
    await ask(app, "POST", "/api/bench/parts", grip);
    await ask(app, "PUT", "/api/bench/parts/g1", grip);
    await ask(app, "PUT", "/api/settings", { theme: "auto" });
    await ask(app, "DELETE", "/api/bench/parts/none");
    await ask(app, "POST", "/api/bench/joints", bondedShaft);
    expect(await historyOf(app)).toHaveLength(1);
  });

  it("comes in pages, of one table, and of one thing", async () => {
    const app = await benchOf(head, adapter, shaft, grip);
    await ask(app, "PATCH", "/api/bench/parts/h1", { massG: 201 });
    await ask(app, "PUT", "/api/bench/goal", { skill: "bond" });
    const numbers = async (query: string) => (await historyOf(app, query)).map(({ number }) => number);
    const { body: first } = await ask(app, "GET", "/api/history?limit=4");
    expect(first.next).toBe(3);
    expect(await numbers(`?limit=4&before=${first.next}`)).toEqual([2, 1]);
    expect(await numbers("?table=goal")).toEqual([6]);
    expect(await numbers("?table=parts&id=h1")).toEqual([5, 1]);
    expect(await numbers("?table=parts&id=nobody")).toEqual([]);
    expect((await ask(app, "GET", "/api/history?id=h1")).status).toBe(400);
    expect((await ask(app, "GET", "/api/history?limit=x")).status).toBe(400);
  });

  it("tells all the things of a large change, some at a time", async () => {
    const app = await testApp();
    const parts = Array.from({ length: 12 }, (_, at) => ({ ...grip, id: `g${at}` }));
    const file = { format: "json", text: JSON.stringify({ parts }), take: "all-or-none" };
    expect((await ask(app, "POST", "/api/bench/import", file)).body.taken).toBe(12);
    const change = await last(app);
    expect(change).toMatchObject({
      what: "taken-in",
      things: 12,
      words: "Brought things in from a file (12)",
    });
    expect(change.entries).toHaveLength(5);
    const page = async (query: string) => (await ask(app, "GET", `/api/history/1${query}`)).body;
    expect((await page("")).entries).toHaveLength(12);
    const first = await page("?limit=8");
    expect([first.entries.length, first.next]).toEqual([8, 8]);
    const rest = await page("?from=8&limit=8");
    expect(rest.entries.map(({ id }: { id: string }) => id)).toEqual(["g8", "g9", "g10", "g11"]);
    expect(rest.next).toBeNull();
    expect((await ask(app, "GET", "/api/history/2")).status).toBe(404);
  });

  it("outlasts a restart", async () => {
    const dataFolder = temporaryFolder();
    const first = await testApp({ dataFolder });
    await ask(first, "POST", "/api/bench/parts", grip);
    await first.close();
    const second = await testApp({ dataFolder });
    expect(await last(second)).toMatchObject({ number: 1, what: "part-added" });
    expect((await undoLast(second)).status).toBe(200);
    expect((await bench(second)).parts).toEqual([]);
  });

  it("has an import by the command line as one change of the command line", async () => {
    const dataFolder = temporaryFolder();
    const first = await testApp({ dataFolder });
    const input = JSON.stringify({ parts: [head, adapter, shaft], joints: [bondedShaft] });
    const { exit } = await ferrule(["import", "-", "--format", "json"], { data: dataFolder, input });
    expect(exit).toBe(0);
    expect(await historyOf(first)).toMatchObject([
      { number: 1, what: "taken-in", things: 4, who: { means: "command-line", device: null, name: null } },
    ]);
    expect((await undoLast(first)).status).toBe(200);
    expect((await bench(first)).parts).toEqual([]);
  });

  it("has what a batch enters as changes of who began it", async () => {
    const app = await testApp();
    const { device, fromPhone } = await pairedPhone(app, "Phone");
    const text = "Northmoor Ombrel driver head, right handed, 40 euros";
    expect((await fromPhone("POST", "/api/batches", { text })).statusCode).toBe(202);
    await expect.poll(async () => (await last(app))?.what, { timeout: 28_000 }).toBe("batch-entered");
    expect(await last(app)).toMatchObject({ things: 1, who: { means: "device", device, name: "Phone" } });
    expect((await undoLast(app)).status).toBe(200);
    expect((await ask(app, "GET", "/api/sightings")).body.sightings).toEqual([]);
  });

  it("is forgotten after a year", async () => {
    let now = Date.UTC(2026, 0, 1);
    const app = await testApp({ now: () => now });
    await ask(app, "POST", "/api/bench/parts", grip);
    now = Date.UTC(2027, 0, 2);
    for (let massG = 51; massG < 150; massG += 1) await ask(app, "PATCH", "/api/bench/parts/g1", { massG });
    const { body } = await ask(app, "GET", "/api/history?limit=200");
    expect(body.changes).toHaveLength(99);
    expect((await undo(app, { number: 1 })).body.error.code).toBe("not-found");
    expect(keptChanges).toBe(10_000);
  });
});

describe("undoing any one change", () => {
  it("takes away what was added, brings back what was taken, and gives fields back what they were", async () => {
    const app = await benchOf(head, grip);
    await ask(app, "PATCH", "/api/bench/parts/h1", { massG: 205 });
    await ask(app, "DELETE", "/api/bench/parts/h1");
    expect((await undo(app, { number: 4 })).body).toMatchObject({
      change: { number: 5, what: "change-undone", words: "Undid change 4", undoes: 4, undoneBy: null },
      undo: 0,
    });
    expect((await bench(app)).parts).toEqual([{ ...head, massG: 205 }, grip]);
    expect((await undo(app, { number: 3 })).status).toBe(200);
    expect((await bench(app)).parts).toEqual([head, grip]);
    expect((await undo(app, { number: 1 })).status).toBe(200);
    expect((await bench(app)).parts).toEqual([grip]);
    expect((await historyOf(app)).map(({ undoneBy }) => undoneBy)).toEqual([null, null, null, 5, 6, null, 7]);
  });

  it("leaves what was changed since in other fields, also within a group of fields", async () => {
    const app = await benchOf(head);
    const socket = (fields: object) => ask(app, "PATCH", "/api/bench/parts/h1", { socket: fields });
    await socket({ seatToGroundIn: 2.2 });
    await socket({ family: "Quillon 1" });
    await ask(app, "PATCH", "/api/bench/parts/h1", { note: "on the shelf", massG: 203 });
    expect((await undo(app, { number: 2 })).status).toBe(200);
    expect(await part(app, "h1")).toEqual({
      ...head,
      note: "on the shelf",
      massG: 203,
      socket: { ...head.socket, family: "Quillon 1" },
    });
  });

  it("does nothing where the same field was changed since, and names that change and both versions", async () => {
    const app = await benchOf(head);
    await ask(app, "PATCH", "/api/bench/parts/h1", { massG: 205 });
    await ask(app, "PATCH", "/api/bench/parts/h1", { massG: 207 });
    const { status, body } = await undo(app, { number: 2 });
    expect(status).toBe(409);
    expect(body.error).toEqual({
      code: "changed-since",
      message: expect.any(String),
      conflicts: [
        {
          table: "parts",
          id: "h1",
          left: { ...head, massG: 205 },
          present: { ...head, massG: 207 },
          changes: [3],
        },
      ],
    });
    expect(await part(app, "h1")).toEqual({ ...head, massG: 207 });
    expect(await historyOf(app)).toHaveLength(3);
    await undo(app, { number: 3 });
    expect((await undo(app, { number: 2 })).status).toBe(200);
    expect(await part(app, "h1")).toEqual(head);
  });

  it("does not take a part from under a joint, and names the joint and the change that made it", async () => {
    const app = await benchOf(adapter, shaft);
    await ask(app, "POST", "/api/bench/joints", bondedShaft);
    const { status, body } = await undo(app, { number: 1 });
    expect([status, body.error.code]).toEqual([409, "would-break"]);
    expect(body.error.conflicts).toEqual([
      { table: "joints", id: "j1", left: null, present: bondedShaft, changes: [3] },
    ]);
    expect(body.error.refusals[0].field).toBe("joints.j1.parts.0");
    expect((await bench(app)).parts).toEqual([adapter, shaft]);
    expect(await historyOf(app)).toHaveLength(3);
  });

  it("does not mind a joint that was in the air before", async () => {
    const dataFolder = temporaryFolder();
    const app = await testApp({ dataFolder });
    for (const one of [shaft, grip]) await ask(app, "POST", "/api/bench/parts", one);
    const database = openSqlite(join(dataFolder, "bench.sqlite"));
    onTestFinished(() => database.close());
    openTables(database).joints.insert(bondedShaft as never);
    expect((await undo(app, { number: 2 })).status).toBe(200);
    expect((await bench(app)).parts).toEqual([shaft]);
  });

  it("does not bring back a joint whose place has been taken", async () => {
    const app = await benchOf(adapter, shaft, { ...shaft, id: "s2" });
    await ask(app, "POST", "/api/bench/joints", bondedShaft);
    await ask(app, "DELETE", "/api/bench/joints/j1");
    await ask(app, "POST", "/api/bench/joints", { id: "j2", type: "bonded", parts: ["a1", "s2"] });
    const { status, body } = await undo(app, { number: 5 });
    expect([status, body.error.code]).toEqual([409, "would-break"]);
    expect(body.error.conflicts).toMatchObject([{ table: "joints", id: "j2", changes: [6] }]);
    expect((await bench(app)).joints).toHaveLength(1);
  });

  it("is a change itself: undone again, what it took back stands again and can be undone once more", async () => {
    const app = await benchOf(grip);
    await undo(app, { number: 1 });
    expect((await undo(app, { number: 1 })).body.error).toMatchObject({ code: "undone-already" });
    await undo(app, { number: 2 });
    expect((await bench(app)).parts).toEqual([grip]);
    expect((await historyOf(app)).map(({ undoneBy }) => undoneBy)).toEqual([null, 3, null]);
    await undo(app, { number: 3 });
    expect((await historyOf(app)).map(({ undoneBy }) => undoneBy)).toEqual([null, 4, null, 2]);
    expect((await bench(app)).parts).toEqual([]);
  });

  it("brings a part back with the joints that went with it", async () => {
    const app = await benchOf(adapter, shaft, grip);
    await ask(app, "POST", "/api/bench/joints", bondedShaft);
    const before = await bench(app);
    await ask(app, "DELETE", "/api/bench/parts/s1");
    await undoLast(app);
    expect(await bench(app)).toEqual(before);
  });

  const changes: readonly [string, "POST" | "PUT" | "PATCH" | "DELETE", string, object | undefined][] = [
    ["goal-changed", "PUT", "/api/bench/goal", { skill: "machine" }],
    ["goal-deleted", "DELETE", "/api/bench/goal", undefined],
    ["costs-changed", "PUT", "/api/costs", { perKmMinor: 33 }],
    ["settings-changed", "PUT", "/api/settings", { theme: "dark" }],
    [
      "settings-put-in",
      "POST",
      "/api/settings/file",
      {
        text: JSON.stringify({
          format: "ferrule-settings",
          version: 1,
          display: { lengthUnit: "cm" },
          goal: { skill: "screw" },
        }),
      },
    ],
    [
      "labels-changed",
      "PUT",
      "/api/labels/setup",
      { paper: "roll", widthMm: 50, heightMm: 25, gapAcrossMm: 0, gapDownMm: 0, leftMm: null, topMm: null },
    ],
    ["template-changed", "PUT", "/api/advert/template", { template: "Sold as seen: {title}" }],
    ["model-added", "POST", "/api/catalogue", model],
    [
      "claim-added",
      "POST",
      "/api/bench/claims",
      { id: "c1", receiver: "Quillon 2", adapter: "Quillon 1", verdict: "fits", evidence: "tried" },
    ],
    ["sighting-changed", "PATCH", "/api/sightings/seen1", { note: "ask again" }],
    [
      "listing-bought",
      "POST",
      "/api/sightings/seen1/buy",
      { paid: { amountMinor: 3800, currency: "EUR" }, on: today, roundTripKm: 12 },
    ],
    [
      "parts-sold",
      "POST",
      "/api/books/sell",
      { parts: ["g1"], price: { amountMinor: 900, currency: "EUR" }, on: today, club: "a grip" },
    ],
    [
      "part-inspected",
      "POST",
      "/api/inspection",
      { part: "s1", answers: [{ row: "shaft-crack", answer: "yes" }] },
    ],
    [
      "club-measured",
      "POST",
      "/api/sheet/measured",
      { club: "h1+a1+s1+g1", built: true, measured: { playingLengthIn: 45 } },
    ],
    [
      "entry-added",
      "POST",
      "/api/books",
      { type: "other", on: today, amount: { amountMinor: -500, currency: "EUR" } },
    ],
    ["example-loaded", "POST", "/api/bench/example", { confirm: true }],
  ];
  it.each(changes)("takes back %s, and does it again", async (what, method, url, body) => {
    const app = await testApp({ demo: undefined });
    for (const one of [head, adapter, shaft, grip]) await ask(app, "POST", "/api/bench/parts", one);
    await ask(app, "POST", "/api/bench/joints", bondedShaft);
    await ask(app, "PUT", "/api/bench/goal", { skill: "bond" });
    await ask(app, "POST", "/api/sightings", sighting);
    const before = await everything(app);
    const reply = await ask(app, method, url, body);
    expect(reply.status, JSON.stringify(reply.body)).toBeLessThan(300);
    const after = await everything(app);
    const change = await last(app);
    expect(change.what).toBe(what);
    expect((await undo(app, change)).status).toBe(200);
    expect(await everything(app)).toEqual(before);
    expect((await bench(app)).undo).toBe(0);
    expect((await undoLast(app)).status).toBe(200);
    expect(await everything(app)).toEqual(after);
  });

  it("notes labels as printed, each for itself", async () => {
    const app = await benchOf(head, grip);
    const { labels } = (await ask(app, "GET", "/api/labels")).body;
    const print = (at: number) =>
      ask(app, "POST", "/api/labels/printed", { codes: [labels[at].code], printed: true });
    await print(0);
    await print(1);
    const printed = async () =>
      (await ask(app, "GET", "/api/labels")).body.labels.map((one: { printed: boolean }) => one.printed);
    expect(await printed()).toEqual([true, true]);
    expect((await undo(app, { number: 3 })).status).toBe(200);
    expect(await printed()).toEqual([false, true]);
  });

  it("does not mix a bench that comes back with what has been put on the bench since", async () => {
    const app = await testApp({ demo: { parts: [head], joints: [], claims: [], goal: {} } });
    await ask(app, "POST", "/api/bench/start-own");
    await ask(app, "POST", "/api/bench/parts", grip);
    const { status, body } = await undo(app, { number: 1 });
    expect([status, body.error.code]).toEqual([409, "would-break"]);
    expect((await bench(app)).parts).toEqual([grip]);
    await undo(app, { number: 2 });
    expect((await undo(app, { number: 1 })).status).toBe(200);
    expect(await bench(app)).toMatchObject({ example: true, parts: [head] });
  });
});

describe("a fault of safety", () => {
  it("is taken back with what was done last, and with nothing before that", async () => {
    const app = await benchOf(head, grip);
    await ask(app, "PATCH", "/api/bench/parts/h1", { faults: ["crack"] });
    await ask(app, "PATCH", "/api/bench/parts/g1", { massG: 51 });
    const { status, body } = await undo(app, { number: 3 });
    expect([status, body.error.code]).toEqual([409, "unsafe"]);
    expect((await part(app, "h1")).faults).toEqual(["crack"]);
    await undo(app, { number: 4 });
    expect((await undo(app, { number: 3 })).status).toBe(200);
    expect(await part(app, "h1")).toEqual(head);
  });

  it("that was found in an inspection goes with it as long as the bench's own undo would take it back", async () => {
    const app = await benchOf(shaft, grip);
    const answers = [{ row: "shaft-crack", answer: "yes" }];
    await ask(app, "POST", "/api/inspection", { part: "s1", answers });
    expect((await part(app, "s1")).faults).toHaveLength(1);
    await ask(app, "PATCH", "/api/bench/parts/g1", { massG: 51 });
    expect((await undo(app, { number: 3 })).status).toBe(200);
    expect(await part(app, "s1")).toEqual(shaft);
  });
});

describe("the history and the bench's own undo", () => {
  it("agree: what the history takes back is no longer on the stack", async () => {
    const app = await benchOf(head, grip);
    await ask(app, "DELETE", "/api/bench/parts/h1");
    await ask(app, "DELETE", "/api/bench/parts/g1");
    expect((await undo(app, { number: 3 })).body.undo).toBe(1);
    const stack = await ask(app, "POST", "/api/bench/undo");
    expect(stack.body).toMatchObject({ restored: { parts: [grip] }, undo: 0 });
    expect((await bench(app)).parts).toEqual([head, grip]);
  });

  it("agree: what the stack takes back is undone in the history", async () => {
    const app = await benchOf(head);
    await ask(app, "DELETE", "/api/bench/parts/h1");
    await ask(app, "POST", "/api/bench/undo");
    const [newest, deleted] = await historyOf(app);
    expect(newest).toMatchObject({ number: 3, what: "delete-undone", undoes: 2 });
    expect(deleted).toMatchObject({ number: 2, undoneBy: 3 });
    expect((await undo(app, { number: 2 })).body.error.code).toBe("undone-already");
    expect((await undo(app, { number: 3 })).status).toBe(200);
    expect((await bench(app)).parts).toEqual([]);
    expect((await undo(app, { number: 2 })).status).toBe(200);
    expect((await bench(app)).parts).toEqual([head]);
  });

  it("agree on a whole bench that comes back over the present one", async () => {
    const app = await testApp({ demo: { parts: [head], joints: [], claims: [], goal: {} } });
    await ask(app, "POST", "/api/bench/start-own");
    await ask(app, "POST", "/api/bench/parts", grip);
    await ask(app, "POST", "/api/bench/undo");
    expect(await bench(app)).toMatchObject({ example: true, parts: [head], undo: 1 });
    expect((await undoLast(app)).status).toBe(200);
    expect(await bench(app)).toMatchObject({ example: false, parts: [grip], undo: 0 });
  });
});
