import { describe, expect, it } from "vitest";
import type { BenchContents } from "../../packages/server/src/bench/bench-contents.ts";
import { ask, bondedShaft, looseParts, type TestApp, testApp } from "./server.test-kit.ts";

const { head, adapter, shaft, grip } = looseParts;
const claim = { receiver: "Quillon 2", adapter: "Quillon 1", verdict: "fits", evidence: "tried" } as const;
const demo = {
  parts: [head, adapter, shaft, grip],
  joints: [bondedShaft],
  claims: [claim],
  goal: { skill: "regrip" },
} as unknown as BenchContents;

async function benchOf(app: TestApp) {
  return (await ask(app, "GET", "/api/bench")).body;
}

async function withParts(): Promise<TestApp> {
  const app = await testApp();
  for (const part of Object.values(looseParts))
    expect((await ask(app, "POST", "/api/bench/parts", part)).status).toBe(201);
  expect((await ask(app, "POST", "/api/bench/joints", bondedShaft)).status).toBe(201);
  return app;
}

describe("parts of the bench", () => {
  it("are added, read, replaced, changed and deleted", async () => {
    const app = await testApp();
    expect((await ask(app, "POST", "/api/bench/parts", head)).body).toEqual(head);
    expect((await ask(app, "GET", "/api/bench/parts/h1")).body).toEqual(head);
    const { id: _id, ...rest } = head;
    expect((await ask(app, "PUT", "/api/bench/parts/h1", { ...rest, loftDeg: 9 })).body).toEqual({
      ...head,
      loftDeg: 9,
    });
    const patched = await ask(app, "PATCH", "/api/bench/parts/h1", {
      hand: null,
      socket: { family: "Quillon 1" },
    });
    expect(patched.status).toBe(200);
    expect(patched.body.hand).toBeUndefined();
    expect(patched.body.socket).toEqual({ ...head.socket, family: "Quillon 1" });
    expect((await ask(app, "DELETE", "/api/bench/parts/h1")).body.undo).toBe(1);
    expect((await ask(app, "GET", "/api/bench/parts")).body).toEqual({ parts: [] });
  });

  it("get an id when they have none, and keep a field we do not know", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/bench/parts", {
      kind: "grip",
      massG: 50,
      colour: "green",
    });
    expect(status).toBe(201);
    expect(body).toEqual({ id: "grip-1", kind: "grip", massG: 50, colour: "green" });
  });

  it("are listed by kind", async () => {
    const app = await withParts();
    const { body } = await ask(app, "GET", "/api/bench/parts?kind=shaft");
    expect(body.parts.map(({ id }: { id: string }) => id)).toEqual(["s1"]);
  });

  it("are refused with the field, what was got and what was expected", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/bench/parts", {
      ...shaft,
      tip: { diameterIn: 9.4 },
    });
    expect(status).toBe(400);
    expect(body.error.refusals).toEqual([
      {
        field: "tip.diameterIn",
        got: "9.4",
        expected: "diameter of the shaft at its tip: a number from 0.2 to 0.7 in",
      },
    ]);
    const noKind = await ask(app, "POST", "/api/bench/parts", { massG: 50 });
    expect(noKind.body.error.refusals[0]).toMatchObject({
      field: "kind",
      expected: expect.stringContaining("head, adapter, shaft, grip"),
    });
    const badPatch = await (async () => {
      await ask(app, "POST", "/api/bench/parts", head);
      return ask(app, "PATCH", "/api/bench/parts/h1", { loftDeg: "ten" });
    })();
    expect(badPatch.status).toBe(400);
    expect(badPatch.body.error.refusals[0]).toMatchObject({ field: "loftDeg", got: '"ten"' });
    expect((await ask(app, "GET", "/api/bench/parts/h1")).body.loftDeg).toBe(10.5);
  });

  it("do not take an id that another has, nor change theirs", async () => {
    const app = await testApp();
    await ask(app, "POST", "/api/bench/parts", head);
    const again = await ask(app, "POST", "/api/bench/parts", head);
    expect(again.status).toBe(409);
    expect(again.body.error).toMatchObject({ code: "id-taken", refusals: [{ field: "id", got: '"h1"' }] });
    const renamed = await ask(app, "PUT", "/api/bench/parts/h1", { ...head, id: "h2" });
    expect(renamed.status).toBe(400);
    expect(renamed.body.error.refusals[0]).toMatchObject({ field: "id", got: '"h2"' });
  });

  it("keep their kind while they are joined", async () => {
    const app = await withParts();
    const { status, body } = await ask(app, "PUT", "/api/bench/parts/s1", { kind: "grip", massG: 50 });
    expect(status).toBe(400);
    expect(body.error.refusals[0]).toMatchObject({ field: "kind", got: '"grip"' });
  });

  it.each(["GET", "PUT", "PATCH", "DELETE"] as const)(
    "are not found by %s when they are not there",
    async (method) => {
      const app = await testApp();
      const { status, body } = await ask(
        app,
        method,
        "/api/bench/parts/h9",
        method === "PUT" ? head : method === "PATCH" ? {} : undefined,
      );
      expect(status).toBe(404);
      expect(body.error).toMatchObject({ code: "not-found", message: 'There is no part "h9" on the bench' });
    },
  );

  it("may have an id with any signs in it", async () => {
    const app = await testApp();
    const id = "driver / 10.5° ?#%";
    await ask(app, "POST", "/api/bench/parts", { ...head, id });
    expect((await ask(app, "GET", `/api/bench/parts/${encodeURIComponent(id)}`)).body.id).toBe(id);
  });
});

describe("joints and claims", () => {
  it("are kept under ids of their own", async () => {
    const app = await withParts();
    expect(
      (await ask(app, "POST", "/api/bench/joints", { type: "gripped", parts: ["g1", "s1"] })).body.id,
    ).toBe("joint-1");
    expect((await ask(app, "GET", "/api/bench/joints")).body.joints).toHaveLength(2);
    expect((await ask(app, "POST", "/api/bench/claims", claim)).body).toEqual({ ...claim, id: "claim-1" });
    expect(
      (await ask(app, "PATCH", "/api/bench/claims/claim-1", { verdict: "does-not-fit" })).body.verdict,
    ).toBe("does-not-fit");
    expect((await ask(app, "PUT", "/api/bench/claims/claim-1", claim)).body.verdict).toBe("fits");
    expect((await ask(app, "DELETE", "/api/bench/claims/claim-1")).body.deleted.claims).toHaveLength(1);
    expect((await ask(app, "GET", "/api/bench/claims")).body).toEqual({ claims: [] });
  });

  it("are refused where a part is missing, or the place is taken", async () => {
    const app = await withParts();
    const toNowhere = await ask(app, "POST", "/api/bench/joints", { type: "gripped", parts: ["g1", "s9"] });
    expect(toNowhere.status).toBe(400);
    expect(toNowhere.body.error.refusals[0]).toMatchObject({ field: "parts.1", got: '"s9"' });
    const twice = await ask(app, "POST", "/api/bench/joints", { type: "bonded", parts: ["h1", "s1"] });
    expect(twice.body.error.refusals[0]).toMatchObject({
      field: "parts.1",
      got: expect.stringContaining('the tip of "s1", bonded already'),
    });
    const badClaim = await ask(app, "POST", "/api/bench/claims", { ...claim, evidence: "a dream" });
    expect(badClaim.status).toBe(400);
    expect(badClaim.body.error.refusals[0]).toMatchObject({ field: "evidence", got: '"a dream"' });
  });

  it("are not found when they are not there", async () => {
    const app = await testApp();
    expect((await ask(app, "GET", "/api/bench/joints/j9")).status).toBe(404);
    expect((await ask(app, "DELETE", "/api/bench/claims/c9")).status).toBe(404);
  });
});

describe("undo", () => {
  it("brings a part back with its joints, where it stood, delete by delete", async () => {
    const app = await withParts();
    const before = await benchOf(app);
    const gone = await ask(app, "DELETE", "/api/bench/parts/a1");
    expect(gone.body).toMatchObject({ deleted: { parts: [{ id: "a1" }], joints: [{ id: "j1" }] }, undo: 1 });
    expect((await ask(app, "DELETE", "/api/bench/parts/h1")).body.undo).toBe(2);
    expect((await ask(app, "POST", "/api/bench/undo")).body).toMatchObject({
      restored: { parts: [{ id: "h1" }], joints: [] },
      undo: 1,
    });
    expect((await ask(app, "POST", "/api/bench/undo")).body).toMatchObject({
      restored: { parts: [{ id: "a1" }], joints: [{ id: "j1" }] },
      undo: 0,
    });
    expect(await benchOf(app)).toEqual(before);
    const more = await ask(app, "POST", "/api/bench/undo");
    expect(more.status).toBe(409);
    expect(more.body.error.code).toBe("nothing-to-undo");
  });

  it("gives a part another id when its own has been taken, and leaves a joint undone whose place has been taken", async () => {
    const app = await withParts();
    await ask(app, "DELETE", "/api/bench/parts/a1");
    await ask(app, "POST", "/api/bench/parts", { ...adapter, note: "another" });
    await ask(app, "POST", "/api/bench/joints", { type: "bonded", parts: ["a1", "s1"] });
    const { body } = await ask(app, "POST", "/api/bench/undo");
    expect(body.restored).toMatchObject({ parts: [{ id: "a1-2" }], joints: [] });
    expect((await ask(app, "GET", "/api/bench/parts/a1")).body.note).toBe("another");
  });
});

describe("the example", () => {
  it("is on the bench at the first start, and is said to be one", async () => {
    const app = await testApp({ demo });
    const bench = await benchOf(app);
    expect(bench).toMatchObject({ example: true, goal: { skill: "regrip" }, undo: 0 });
    expect(bench.parts).toHaveLength(4);
    expect(bench.claims[0].id).toBe("claim-1");
  });

  it("is left for an empty bench, and comes back by undo", async () => {
    const app = await testApp({ demo });
    const before = await benchOf(app);
    const own = await ask(app, "POST", "/api/bench/start-own");
    expect(own.body).toEqual({ example: false, parts: [], joints: [], claims: [], goal: {}, undo: 1 });
    expect((await ask(app, "POST", "/api/bench/start-own")).body.error.code).toBe("not-the-example");
    expect((await ask(app, "POST", "/api/bench/undo")).status).toBe(200);
    expect(await benchOf(app)).toEqual(before);
  });

  it("is put on an empty bench at once, and on another only when confirmed, without losing it", async () => {
    const app = await testApp({ demo });
    await ask(app, "POST", "/api/bench/start-own");
    expect((await ask(app, "POST", "/api/bench/example", {})).body.example).toBe(true);
    await ask(app, "POST", "/api/bench/start-own");
    await ask(app, "POST", "/api/bench/parts", { ...grip, id: "mine" });
    const refused = await ask(app, "POST", "/api/bench/example");
    expect(refused.status).toBe(409);
    expect(refused.body.error.code).toBe("bench-not-empty");
    expect((await ask(app, "POST", "/api/bench/example", { confirm: true })).body.parts).toHaveLength(4);
    await ask(app, "POST", "/api/bench/undo");
    expect(await benchOf(app)).toMatchObject({ example: false, parts: [{ id: "mine" }] });
  });

  it("takes nothing for good that was added to it before an undo brings the own bench back", async () => {
    const app = await testApp({ demo });
    await ask(app, "POST", "/api/bench/start-own");
    await ask(app, "POST", "/api/bench/parts", { ...grip, id: "mine" });
    await ask(app, "POST", "/api/bench/example", { confirm: true });
    await ask(app, "POST", "/api/bench/parts", { ...grip, id: "added" });
    const withAdded = await benchOf(app);
    await ask(app, "POST", "/api/bench/undo");
    expect(await benchOf(app)).toMatchObject({ example: false, parts: [{ id: "mine" }], undo: 2 });
    await ask(app, "POST", "/api/bench/undo");
    await ask(app, "POST", "/api/bench/undo");
    expect({ ...(await benchOf(app)), undo: 0 }).toEqual({ ...withAdded, undo: 0 });
    await ask(app, "POST", "/api/bench/undo");
    expect(await benchOf(app)).toMatchObject({ example: false, parts: [{ id: "mine" }] });
  });

  it("keeps nothing to undo of an untouched example that an undo takes off the bench", async () => {
    const app = await testApp({ demo });
    await ask(app, "POST", "/api/bench/example", { confirm: true });
    expect((await benchOf(app)).undo).toBe(0);
    await ask(app, "POST", "/api/bench/start-own");
    await ask(app, "POST", "/api/bench/parts", { ...grip, id: "mine" });
    await ask(app, "POST", "/api/bench/undo");
    expect(await benchOf(app)).toMatchObject({ example: true, undo: 1 });
    await ask(app, "POST", "/api/bench/undo");
    expect(await benchOf(app)).toMatchObject({ example: false, parts: [{ id: "mine" }], undo: 0 });
  });

  it("does not lose a goal that stood alone on the bench", async () => {
    const app = await testApp({ demo });
    await ask(app, "POST", "/api/bench/start-own");
    await ask(app, "PUT", "/api/bench/goal", { skill: "bond" });
    expect((await ask(app, "POST", "/api/bench/example", {})).body.goal).toEqual({ skill: "regrip" });
    await ask(app, "POST", "/api/bench/undo");
    expect(await benchOf(app)).toMatchObject({ example: false, parts: [], goal: { skill: "bond" } });
  });
});

describe("goal and settings", () => {
  it("are empty or usual at first, and kept when set", async () => {
    const app = await testApp();
    expect((await ask(app, "GET", "/api/bench/goal")).body).toEqual({});
    const goal = { skill: "bond", hand: "left", targets: { driver: { playingLengthIn: 45 } } };
    expect((await ask(app, "PUT", "/api/bench/goal", goal)).body).toEqual(goal);
    expect((await ask(app, "GET", "/api/bench/goal")).body).toEqual(goal);
    expect((await ask(app, "GET", "/api/settings")).body).toEqual({
      lengthUnit: "in",
      currency: "EUR",
      theme: "auto",
    });
    await ask(app, "PUT", "/api/settings", { lengthUnit: "cm" });
    expect((await ask(app, "GET", "/api/settings")).body).toEqual({
      lengthUnit: "cm",
      currency: "EUR",
      theme: "auto",
    });
  });

  it("are refused by field", async () => {
    const app = await testApp();
    const goal = await ask(app, "PUT", "/api/bench/goal", { skill: "weld" });
    expect(goal.status).toBe(400);
    expect(goal.body.error.refusals[0]).toMatchObject({ field: "skill", got: '"weld"' });
    const settings = await ask(app, "PUT", "/api/settings", { currency: "XXX" });
    expect(settings.status).toBe(400);
    expect(settings.body.error.refusals[0]).toMatchObject({ field: "currency", got: '"XXX"' });
  });
});

describe("what the bench comes to", () => {
  it("is resolved under its goal, or under another skill for once", async () => {
    const app = await withParts();
    expect((await ask(app, "GET", "/api/bench/resolve")).body).toMatchObject({
      skill: "screw",
      counts: { clubs: 0 },
    });
    expect((await ask(app, "GET", "/api/bench/resolve?skill=regrip")).body).toMatchObject({
      skill: "regrip",
      counts: { clubs: 1 },
    });
    expect((await benchOf(app)).goal).toEqual({});
    const bad = await ask(app, "GET", "/api/bench/resolve?limit=0");
    expect(bad.status).toBe(400);
    expect(bad.body.error.refusals).toEqual([
      { field: "limit", got: '"0"', expected: "a whole number from 1 to 5000" },
    ]);
  });

  it("is told anew after every change", async () => {
    const app = await withParts();
    const clubs = async () => (await ask(app, "GET", "/api/bench/resolve?skill=regrip")).body.counts.clubs;
    expect(await clubs()).toBe(1);
    expect(await clubs()).toBe(1);
    await ask(app, "DELETE", "/api/bench/parts/h1");
    expect(await clubs()).toBe(0);
    await ask(app, "POST", "/api/bench/undo");
    expect(await clubs()).toBe(1);
    await ask(app, "PUT", "/api/bench/goal", { hand: "left" });
    expect(await clubs()).toBe(0);
  });

  it("is told for one part: what it goes with", async () => {
    const app = await withParts();
    await ask(app, "POST", "/api/bench/parts", { ...grip, id: "g2" });
    const { status, body } = await ask(app, "GET", "/api/bench/parts/h1/goes-with?skill=regrip");
    expect(status).toBe(200);
    expect(body.part.id).toBe("h1");
    expect(body.counts.clubs).toBe(1);
    expect(body.clubs.every(({ head: id }: { head: string }) => id === "h1")).toBe(true);
    expect((await ask(app, "GET", "/api/bench/parts/h9/goes-with")).status).toBe(404);
  });

  it("tells its health", async () => {
    const app = await withParts();
    expect((await ask(app, "GET", "/api/health")).body).toEqual({
      ok: true,
      version: "0.1.0",
      parts: 4,
      example: false,
    });
  });
});

describe("the goal", () => {
  it("is set, read, changed and deleted, and its delete is undone", async () => {
    const app = await testApp();
    expect((await ask(app, "GET", "/api/bench/goal")).body).toEqual({});
    await ask(app, "PUT", "/api/bench/goal", { skill: "bond" });
    await ask(app, "PUT", "/api/bench/goal", { skill: "bond", hand: "left" });
    expect((await ask(app, "DELETE", "/api/bench/goal")).body.undo).toBe(1);
    expect((await ask(app, "GET", "/api/bench/goal")).body).toEqual({});
    expect((await ask(app, "POST", "/api/bench/undo")).body.undo).toBe(0);
    expect((await ask(app, "GET", "/api/bench/goal")).body).toEqual({ skill: "bond", hand: "left" });
  });
});
