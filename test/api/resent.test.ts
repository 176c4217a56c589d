import { createHash } from "node:crypto";
import { canonicalText } from "@ferrule/core";
import { expect, it } from "vitest";
import { ask, looseParts, temporaryFolder, testApp } from "./server.test-kit.ts";

const key = "3b1f6a52-7d0e-4c56-9a51-3f3c1c1e4d10";
const grip = { kind: "grip", massG: 50 };
const tagOf = (value: unknown) => `"${createHash("sha256").update(canonicalText(value)).digest("hex")}"`;

it("adds a part once, however often the same request comes", async () => {
  const app = await testApp();
  const send = () =>
    app.inject({
      method: "POST",
      url: "/api/bench/parts",
      payload: grip,
      headers: { "idempotency-key": key },
    });
  const first = await send();
  const second = await send();
  expect([first.statusCode, second.statusCode]).toEqual([201, 201]);
  expect(second.json()).toEqual(first.json());
  expect(second.headers["idempotency-replayed"]).toBe("true");
  expect((await ask(app, "GET", "/api/bench/parts")).body.parts).toHaveLength(1);
});

it("knows a request again after a new start, for thirty days", async () => {
  const dataFolder = temporaryFolder();
  const on = async (today: string) => {
    const app = await testApp({ dataFolder, today: () => today });
    const reply = await app.inject({
      method: "POST",
      url: "/api/bench/parts",
      payload: grip,
      headers: { "idempotency-key": key },
    });
    await app.inject({
      method: "POST",
      url: "/api/bench/parts",
      payload: { ...grip, id: `other-${today}` },
      headers: { "idempotency-key": `other-${today}` },
    });
    const { body } = await ask(app, "GET", "/api/bench/parts");
    await app.close();
    return { id: reply.json().id, count: body.parts.length };
  };
  expect(await on("2026-11-01")).toEqual({ id: "grip-1", count: 2 });
  expect(await on("2026-12-01")).toEqual({ id: "grip-1", count: 3 });
  expect(await on("2026-12-02")).toEqual({ id: "grip-1", count: 4 });
  expect((await on("2026-12-03")).id).not.toBe("grip-1");
});

it("does not keep a refusal, which may be mended", async () => {
  const app = await testApp();
  const send = (payload: object) =>
    app.inject({ method: "POST", url: "/api/bench/parts", payload, headers: { "idempotency-key": key } });
  expect((await send({ kind: "grip", massG: "heavy" })).statusCode).toBe(400);
  expect((await send(grip)).statusCode).toBe(201);
});

it("refuses a key that is none", async () => {
  const app = await testApp();
  const reply = await app.inject({
    method: "POST",
    url: "/api/bench/parts",
    payload: grip,
    headers: { "idempotency-key": "a b" },
  });
  expect([reply.statusCode, reply.json().error.refusals[0].field]).toEqual([400, "Idempotency-Key"]);
});

it("changes, patches and deletes only the version that was meant", async () => {
  const app = await testApp();
  const { body: part } = await ask(app, "POST", "/api/bench/parts", looseParts.grip);
  const send = (method: "PUT" | "PATCH" | "DELETE", version: unknown, payload?: object) =>
    app.inject({
      method,
      url: "/api/bench/parts/g1",
      headers: { "if-match": tagOf(version) },
      ...(payload && { payload }),
    });
  const stale = { ...part, massG: 51 };
  for (const method of ["PUT", "PATCH", "DELETE"] as const) {
    const reply = await send(method, stale, method === "DELETE" ? undefined : { ...part, massG: 52 });
    expect([method, reply.statusCode, reply.json().error.code]).toEqual([method, 409, "changed-meanwhile"]);
  }
  expect((await ask(app, "GET", "/api/bench/parts/g1")).body).toEqual(part);
  const changed = await send("PATCH", part, { massG: 52 });
  expect(changed.json().massG).toBe(52);
  expect((await send("PUT", changed.json(), { ...part, massG: 53 })).statusCode).toBe(200);
  expect((await send("DELETE", { ...part, massG: 53 })).statusCode).toBe(200);
});

it("gives a snapshot of what a device takes along, and none where the stamp still holds", async () => {
  const app = await testApp();
  const { body: first } = await ask(app, "GET", "/api/snapshot");
  expect(Object.keys(first.snapshot)).toEqual(
    expect.arrayContaining([
      "parts",
      "joints",
      "claims",
      "goal",
      "models",
      "evidence",
      "sightings",
      "costs",
      "settings",
      "reference",
    ]),
  );
  const since = () => ask(app, "GET", `/api/snapshot?since=${encodeURIComponent(first.stamp)}`);
  expect((await since()).body).toEqual({ stamp: first.stamp, snapshot: null });
  await ask(app, "POST", "/api/bench/parts", grip);
  expect((await since()).body.snapshot.parts).toHaveLength(1);
});
