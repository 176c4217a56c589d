import { type RequestOptions, request } from "node:http";
import { request as requestTls } from "node:https";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { openNetwork } from "../../packages/server/src/network/network.ts";
import { openSqlite } from "../../packages/server/src/store/sqlite.ts";
import { openTables } from "../../packages/server/src/store/tables.ts";
import { ask, looseParts, type TestApp, temporaryFolder, testApp } from "./server.test-kit.ts";

const { grip } = looseParts;

interface Heard {
  readonly event: string;
  readonly id: string;
  readonly data: { number: number; what?: string; ids?: Record<string, string[]>; isWhole?: boolean };
}

/** A stream of events, read by the rules of the HTML standard as far as they are used here. */
interface Stream {
  readonly status: number;
  readonly type: string;
  readonly headers: Record<string, unknown>;
  /** Resolved with the next so many events. */
  next(count: number): Promise<Heard[]>;
  readonly ended: Promise<void>;
  close(): void;
}

async function listening(app: TestApp): Promise<number> {
  await app.listen({ port: 0, host: "127.0.0.1" });
  return (app.server.address() as AddressInfo).port;
}

function listen(port: number, headers: Record<string, string> = {}, query = ""): Promise<Stream> {
  return listenAt({ port, host: "127.0.0.1", path: `/api/events${query}`, headers }, request);
}

function listenAt(at: RequestOptions & { ca?: string }, ask: typeof request): Promise<Stream> {
  return new Promise((resolve, reject) => {
    const asked = ask(at, (reply) => {
      const heard: Heard[] = [];
      let [text, taken] = ["", 0];
      let onMore = () => {};
      reply.setEncoding("utf8").on("data", (chunk: string) => {
        const blocks = (text + chunk).split("\n\n");
        text = blocks.pop() ?? "";
        for (const block of blocks) if (block.includes("event:")) heard.push(eventOf(block));
        onMore();
      });
      const ended = new Promise<void>((end) => reply.once("close", () => end()));
      const next = (count: number) =>
        new Promise<Heard[]>((got) => {
          onMore = () => {
            if (heard.length < taken + count) return;
            onMore = () => {};
            taken += count;
            got(heard.slice(taken - count, taken));
          };
          onMore();
        });
      const type = String(reply.headers["content-type"]);
      const close = () => asked.destroy();
      resolve({ status: reply.statusCode ?? 0, type, headers: reply.headers, next, ended, close });
    });
    asked.once("error", reject);
    asked.end();
    onTestFinished(() => void asked.destroy());
  });
}

function eventOf(block: string): Heard {
  const fields = Object.fromEntries(block.split("\n").map((line) => line.split(/: (.*)/s)));
  return { event: fields.event, id: fields.id, data: JSON.parse(fields.data) };
}

it("tells of every change once it is on disk: its number, who, what and the ids", async () => {
  const app = await testApp();
  const stream = await listen(await listening(app));
  expect([stream.status, stream.type]).toEqual([200, "text/event-stream; charset=utf-8"]);
  expect(stream.headers["content-security-policy"]).toContain("default-src 'self'");
  expect(await stream.next(1)).toEqual([{ event: "ready", id: "0", data: { number: 0 } }]);
  await ask(app, "POST", "/api/bench/parts", grip);
  await ask(app, "DELETE", "/api/bench/parts/none");
  await ask(app, "POST", "/api/history/1/undo");
  expect(await stream.next(2)).toEqual([
    {
      event: "change",
      id: "1",
      data: {
        number: 1,
        at: expect.any(String),
        who: { means: "here", device: null, name: null },
        what: "part-added",
        words: "Added the part g1",
        things: 1,
        ids: { parts: ["g1"] },
        isWhole: true,
        undoes: null,
      },
    },
    expect.objectContaining({ id: "2", data: expect.objectContaining({ what: "change-undone", undoes: 1 }) }),
  ]);
});

it("goes on after the last event that was heard, by the header or by the address", async () => {
  const app = await testApp();
  const port = await listening(app);
  for (const massG of [51, 52, 53])
    await ask(app, "POST", "/api/bench/parts", { ...grip, id: `g${massG}`, massG });
  const numbers = (heard: Heard[]) => heard.map(({ event, data }) => [event, data.number]);
  const byHeader = await listen(port, { "last-event-id": "1" });
  expect(numbers(await byHeader.next(2))).toEqual([
    ["change", 2],
    ["change", 3],
  ]);
  const byAddress = await listen(port, {}, "?after=2");
  expect(numbers(await byAddress.next(1))).toEqual([["change", 3]]);
  const ofAnother = await listen(port, { "last-event-id": "99" });
  expect(numbers(await ofAnother.next(1))).toEqual([["reload", 3]]);
  expect((await listen(port, {}, "?after=x")).status).toBe(400);
});

it("has everything read again where too much was missed, and names some ids of a large change", async () => {
  const app = await testApp();
  const port = await listening(app);
  const stream = await listen(port);
  await stream.next(1);
  const parts = Array.from({ length: 250 }, (_, at) => ({ ...grip, id: `g${at}` }));
  await ask(app, "POST", "/api/bench/import", {
    format: "json",
    text: JSON.stringify({ parts }),
    take: "good",
  });
  const [large] = await stream.next(1);
  expect([large?.data.ids?.["parts"]?.length, large?.data.isWhole]).toEqual([200, false]);
  for (let massG = 1; massG <= 502; massG += 1)
    await ask(app, "PATCH", "/api/bench/parts/g0", { massG: 50 + massG / 10 });
  const late = await listen(port, { "last-event-id": "1" });
  expect(await late.next(1)).toEqual([{ event: "reload", id: "503", data: { number: 503 } }]);
});

it("tells of what another program writes into the same database", async () => {
  const dataFolder = temporaryFolder();
  const app = await testApp({ dataFolder });
  const stream = await listen(await listening(app));
  await stream.next(1);
  const database = openSqlite(join(dataFolder, "bench.sqlite"));
  onTestFinished(() => database.close());
  const tables = openTables(database);
  tables.together(() => tables.parts.insert(grip as never), { what: "part-added" });
  const [heard] = await stream.next(1);
  expect(heard?.data).toMatchObject({ number: 1, who: { means: "command-line" }, ids: { parts: ["g1"] } });
});

it("ends when the server is closed, which does not wait for who listens", async () => {
  const app = await testApp();
  const port = await listening(app);
  const streams = await Promise.all([listen(port), listen(port)]);
  const from = performance.now();
  await app.close();
  await Promise.all(streams.map(({ ended }) => ended));
  expect(performance.now() - from).toBeLessThan(3000);
});

it("takes sixteen listeners of one machine and no more, until one of them leaves", async () => {
  const app = await testApp();
  const port = await listening(app);
  const streams = await Promise.all(Array.from({ length: 16 }, () => listen(port)));
  expect(streams.map(({ status }) => status)).toEqual(streams.map(() => 200));
  expect((await listen(port)).status).toBe(429);
  streams[0]?.close();
  await expect.poll(async () => (await listen(port)).status).toBe(200);
});

it("tells paired devices on the network, by HTTPS, until they are paired no more", async () => {
  const dataFolder = temporaryFolder();
  const names = () => ({ addresses: ["192.168.1.4"], hosts: ["shed", "shed.local"], subnets: [] });
  const network = await openNetwork(dataFolder, undefined, names);
  const app = await testApp({ dataFolder, network });
  await listening(app);
  await network.listen(app, 0);
  const url = new URL(network.urls().at(-1) ?? "");
  const at = (cookie: string) => ({
    host: "127.0.0.1",
    port: url.port,
    path: "/api/events",
    servername: "shed.local",
    ca: network.certificate().authority,
    agent: false as const,
    headers: { host: url.host, cookie },
  });
  const overTls = requestTls as unknown as typeof request;
  expect((await listenAt(at("ferrule-device=made-up"), overTls)).status).toBe(401);
  const { body: offer } = await ask(app, "POST", "/api/devices/offer");
  const payload = { code: offer.code, name: "Phone" };
  const paired = await app.inject({
    method: "POST",
    url: "/api/pair",
    remoteAddress: "192.168.1.20",
    payload,
  });
  const stream = await listenAt(at(String(paired.headers["set-cookie"]).split(";")[0] ?? ""), overTls);
  expect(stream.status).toBe(200);
  await stream.next(1);
  await ask(app, "POST", "/api/bench/parts", grip);
  expect((await stream.next(1))[0]?.data).toMatchObject({ number: 1, what: "part-added" });
  await ask(app, "DELETE", `/api/devices/${paired.json().id}`);
  await ask(app, "DELETE", "/api/bench/parts/g1");
  await stream.ended;
  const late = await Promise.race([stream.next(1), new Promise((end) => setTimeout(end, 100))]);
  expect(late).toBeUndefined();
});
