import { once } from "node:events";
import { request } from "node:http";
import type { AddressInfo } from "node:net";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { ask, bondedShaft, looseParts, openTestApp, type TestApp, testApp } from "./server.test-kit.ts";
import { asked, headListing, model, sighting } from "./trade.test-kit.ts";

const eur = (amountMinor: number) => ({ amountMinor, currency: "EUR" });

/** What heads, shafts and clubs of one sort went for. */
const evidence = [
  ...[5000, 5200, 5400].map((amount) => ({ kind: "head", amount })),
  ...[3000, 3100, 3300].map((amount) => ({ kind: "shaft", amount })),
  ...[16_000, 16_500, 17_000].map((amount) => ({ kind: "club", amount })),
].map(({ kind, amount }, at) => ({
  ...asked,
  id: `p${at}`,
  what: "sold",
  kind,
  adapterFamily: "Quillon 2",
  price: eur(amount),
}));

const { head, adapter, shaft, grip } = looseParts;
const gripped = { id: "j2", type: "gripped", parts: ["g1", "s1"] } as const;

/** A head, and a shaft for it with its adapter and grip: worth more as a club than apart. */
const bench = {
  parts: [{ ...head, maker: "Northmoor", model: "Ombrel" }, adapter, shaft, grip],
  joints: [bondedShaft, gripped],
  goal: { skill: "regrip" },
  catalogue: [model],
  evidence,
  sightings: [],
};

/** The same bench without the head, which somebody else offers. */
const offered = {
  ...bench,
  parts: [adapter, shaft, grip],
  sightings: [{ ...sighting, roundTripKm: 0, listing: { ...headListing, postage: "included" } }],
};

/** One server for all that leaves nothing behind: its thread is started once. */
let app: TestApp;
beforeAll(async () => {
  app = await openTestApp();
});
afterAll(() => app.close());

const plan = (app: TestApp, body: object) => ask(app, "POST", "/api/plan", body);
const done = (body: { actions: { do: string }[] }) => body.actions.map((action) => action.do);

describe("POST /api/plan", () => {
  it("builds what is worth more built, with its proof and what is next best", async () => {
    const { status, body } = await plan(app, bench);
    expect(status).toBe(200);
    expect(done(body)).toEqual(["build"]);
    expect(body.actions[0].parts.toSorted()).toEqual(["a1", "g1", "h1", "s1"]);
    expect(body.actions[0].work.length).toBeGreaterThan(0);
    expect(body).toMatchObject({ currency: "EUR", gap: 0, stopped: false, kept: [], leftOut: [] });
    expect(body.boundMinor).toBe(body.netMinor);
    expect(body.netMinor).toBe(body.actions[0].netMinor);
    expect(body.nextBest.netMinor).toBeLessThan(body.netMinor);
    expect((await ask(app, "GET", "/api/bench")).body.parts).toEqual([]);
  });

  it("buys what completes a club, within the budget and the hours that are allowed", async () => {
    const { body } = await plan(app, offered);
    expect(done(body)).toEqual(["buy", "build"]);
    expect(body.actions[0]).toMatchObject({ sightings: ["s1"], outlayMinor: 4000 });
    const poor = (await plan(app, { ...offered, budgetMinor: 3000 })).body;
    expect(done(poor)).not.toContain("buy");
    expect(poor.netMinor).toBeLessThan(body.netMinor);
    const idle = (await plan(app, { ...offered, minutes: 0 })).body;
    expect(idle).toMatchObject({ actions: [], netMinor: 0 });
    const none = (await plan(app, { ...offered, mostOfType: { driver: 0 } })).body;
    expect(done(none)).not.toContain("build");
    const proud = (await plan(app, { ...offered, leastPerHourMinor: 1_000_000 })).body;
    expect(proud.actions).toEqual([]);
  });

  it("counts own hours as the user says, and allows the skill that the user says", async () => {
    const atRate = (await plan(app, bench)).body;
    const free = (await plan(app, { ...bench, hours: "for-nothing" })).body;
    expect(free.netMinor).toBeGreaterThan(atRate.netMinor);
    const loose = { ...bench, joints: [gripped], goal: {} };
    expect(done((await plan(app, { ...loose, skill: "screw" })).body)).not.toContain("build");
    expect(done((await plan(app, { ...loose, skill: "bond" })).body)).toContain("build");
  });

  it("says which open listings it had to leave out", async () => {
    const unpriced = { ...sighting, listing: { ...headListing, asking: null } };
    const { body } = await plan(app, { ...offered, sightings: [unpriced] });
    expect(body.leftOut).toEqual([{ sighting: "s1", code: "no-price", text: expect.any(String) }]);
  });

  it("plans the stored bench where none is sent, without what has been sold", async () => {
    const app = await testApp();
    for (const row of evidence) await ask(app, "POST", "/api/evidence", row);
    for (const part of bench.parts) await ask(app, "POST", "/api/bench/parts", part);
    for (const joint of bench.joints) await ask(app, "POST", "/api/bench/joints", joint);
    await ask(app, "PUT", "/api/bench/goal", bench.goal);
    expect(done((await ask(app, "POST", "/api/plan")).body)).toEqual(["build"]);
    await ask(app, "POST", "/api/books/sell", { parts: ["h1"], price: eur(5000), on: "2026-11-20" });
    const { body } = await plan(app, { seconds: 2 });
    expect(done(body)).not.toContain("build");
    expect(body.actions.flatMap(({ parts }: { parts: string[] }) => parts)).not.toContain("h1");
  });

  it("leaves out what is next best where nobody asks for it", async () => {
    const { body } = await plan(app, { ...bench, nextBest: false, seconds: 0.2 });
    expect(body).toMatchObject({ gap: 0, nextBest: null });
    expect(done(body)).toEqual(["build"]);
  });

  it("rests on what is stored now, however often it was asked for before", async () => {
    const app = await testApp();
    for (const row of evidence) await ask(app, "POST", "/api/evidence", row);
    const asked = async (body = {}) => (await plan(app, { seconds: 1, ...body })).body;
    expect((await asked()).actions).toEqual([]);
    for (const part of bench.parts) await ask(app, "POST", "/api/bench/parts", part);
    for (const joint of bench.joints) await ask(app, "POST", "/api/bench/joints", joint);
    const first = await asked({ skill: "regrip" });
    expect(done(first)).toEqual(["build"]);
    expect(await asked({ skill: "regrip" })).toEqual(first);
    expect(done(await asked({ skill: "regrip", mostOfType: { driver: 0 } }))).not.toContain("build");
    await ask(app, "PUT", "/api/costs", { hourValueMinor: 0 });
    expect((await asked({ skill: "regrip" })).netMinor).toBeGreaterThan(first.netMinor);
    await ask(app, "DELETE", "/api/bench/parts/h1");
    expect(done(await asked({ skill: "regrip" }))).not.toContain("build");
    await ask(app, "POST", "/api/bench/undo", {});
    expect(done(await asked({ skill: "regrip" }))).toContain("build");
  });

  it.each([
    [{ budgetMinor: -1 }, "budgetMinor"],
    [{ seconds: 0 }, "seconds"],
    [{ seconds: 61 }, "seconds"],
    [{ hours: "never" }, "hours"],
    [{ mostOfType: { trolley: 1 } }, "mostOfType"],
    [{ skill: "weld" }, "skill"],
    [{ costs: { sellsBy: "the moon" } }, "costs.sellsBy"],
    [{ parts: [grip, grip] }, "parts.1.id"],
    [{ colour: "green" }, "colour"],
  ])("refuses %j by its field", async (bad, field) => {
    const { status, body } = await plan(app, { ...bench, ...bad });
    expect(status).toBe(400);
    expect(body.error.refusals[0].field).toContain(field);
  });

  it("makes three plans at once; when a request is closed, its plan ends", async () => {
    const app = await testApp();
    await app.listen({ port: 0, host: "127.0.0.1" });
    const { port } = app.server.address() as AddressInfo;
    const headers = { "content-type": "application/json" };
    const open = request({ port, host: "127.0.0.1", path: "/api/plan", method: "POST", headers });
    open.on("error", () => undefined);
    const arrived = once(app.server, "request");
    open.end(JSON.stringify(bench));
    await arrived;
    const start = async () => (await ask(app, "POST", "/api/plan/jobs", bench)).status;
    expect([await start(), await start()]).toEqual([202, 202]);
    await vi.waitFor(async () => expect(await start()).toBe(429));
    open.destroy();
    await vi.waitFor(async () => expect(await start()).toBe(202));
  });
});

describe("/api/plan/jobs", () => {
  const start = async (app: TestApp, body: object) => await ask(app, "POST", "/api/plan/jobs", body);
  const read = async (app: TestApp, job: string) => (await ask(app, "GET", `/api/plan/jobs/${job}`)).body;
  const ended = (app: TestApp, job: string) =>
    vi.waitFor(
      async () => {
        const body = await read(app, job);
        expect(body.state).not.toBe("running");
        return body;
      },
      { timeout: 25_000, interval: 100 },
    );

  it("make a plan that somebody comes back for", async () => {
    const { status, body } = await start(app, bench);
    expect(status).toBe(202);
    expect(await read(app, body.job)).toMatchObject({ state: "running", plan: null });
    const job = await ended(app, body.job);
    expect(job).toMatchObject({
      state: "done",
      netMinor: job.plan.netMinor,
      boundMinor: job.plan.boundMinor,
    });
    expect(done(job.plan)).toEqual(["build"]);
  });

  it("can be stopped, with the best so far as the plan", async () => {
    const { job } = (await start(app, { ...bench, seconds: 60 })).body;
    const { status, body } = await ask(app, "DELETE", `/api/plan/jobs/${job}`);
    expect(status).toBe(200);
    expect(body.state).toBe("stopped");
    expect(body.plan).toMatchObject({ currency: "EUR", nextBest: null });
    expect(await read(app, job)).toEqual(body);
  });

  it("are kept when they are over, the last twenty", async () => {
    const tiny = { parts: [], sightings: [], evidence: [], seconds: 1 };
    const ids: string[] = [];
    for (let count = 0; count < 21; count += 1) {
      const { job } = (await start(app, tiny)).body;
      ids.push(job);
      await ask(app, "DELETE", `/api/plan/jobs/${job}`);
    }
    const first = await ask(app, "GET", `/api/plan/jobs/${ids[0]}`);
    expect(first.status).toBe(404);
    expect((await ask(app, "GET", `/api/plan/jobs/${ids[1]}`)).status).toBe(200);
  }, 120_000);

  it("are not there under another name", async () => {
    expect((await ask(app, "GET", "/api/plan/jobs/plan-900")).status).toBe(404);
    expect((await ask(app, "DELETE", "/api/plan/jobs/plan-900")).status).toBe(404);
  });

  it("end with the server", async () => {
    const app = await testApp();
    await start(app, { ...bench, seconds: 60 });
    await app.close();
  });
});
