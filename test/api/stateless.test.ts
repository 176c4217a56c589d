import { describe, expect, it } from "vitest";
import { ask, bondedShaft, looseParts, testApp } from "./server.test-kit.ts";

const parts = Object.values(looseParts);
const { head, adapter, shaft, grip } = looseParts;

describe("POST /api/resolve", () => {
  it("finds the club that the parts make once the skill allows it", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/resolve", {
      parts,
      joints: [bondedShaft],
      goal: { skill: "regrip" },
    });
    expect(status).toBe(200);
    expect(body.counts.clubs).toBe(1);
    expect(body.clubs[0]).toMatchObject({ head: "h1", adapter: "a1", shaft: "s1", grip: "g1" });
  });

  it("answers 200 with a near miss when the parts do not fit", async () => {
    const app = await testApp();
    const leftAdapter = { ...adapter, family: "Pinfold" };
    const { status, body } = await ask(app, "POST", "/api/resolve", {
      parts: [head, leftAdapter, shaft, grip],
      joints: [bondedShaft],
      claims: [{ receiver: "Quillon 2", adapter: "Pinfold", verdict: "does-not-fit", evidence: "tried" }],
      goal: { skill: "regrip" },
    });
    expect(status).toBe(200);
    expect(body.clubs).toEqual([]);
    expect(body.nearMisses[0].proof.text).not.toBe("");
  });

  it("names the field, what it got and what it expected", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/resolve", { parts: [{ ...head, massG: 2000 }] });
    expect(status).toBe(400);
    expect(body.error.code).toBe("bad-request");
    expect(body.error.refusals).toEqual([
      { field: "parts.0.massG", got: "2000", expected: "mass: a number from 0.5 to 1000 g" },
    ]);
  });

  it.each([
    ["an id used twice", { parts: [head, head] }, "parts.1.id", '"h1"'],
    [
      "a joint to a part that is not there",
      { parts: [head], joints: [{ type: "screwed", parts: ["h1", "a9"] }] },
      "joints.0.parts.1",
      '"a9"',
    ],
    [
      "a joint between parts that it cannot join",
      { parts, joints: [{ type: "gripped", parts: ["g1", "h1"] }] },
      "joints.0.parts",
      "the grip",
    ],
    [
      "a part gripped twice",
      {
        parts: [...parts, { ...grip, id: "g2" }],
        joints: [
          { type: "gripped", parts: ["g1", "s1"] },
          { type: "gripped", parts: ["g2", "s1"] },
        ],
      },
      "joints.1.parts.1",
      'the butt of "s1", gripped already',
    ],
    [
      "a ring of joints",
      {
        parts,
        joints: [
          { type: "screwed", parts: ["h1", "a1"] },
          { type: "bonded", parts: ["a1", "s1"] },
          { type: "bonded", parts: ["h1", "s1"] },
        ],
      },
      "joints.2.parts.0",
      'the socket of "h1", screwed already',
    ],
    [
      "a joint of a part with itself",
      { parts, joints: [{ type: "bonded", parts: ["s1", "s1"] }] },
      "joints.0.parts",
      "the shaft",
    ],
  ])("refuses %s", async (_title, request, field, got) => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/resolve", request);
    expect(status).toBe(400);
    expect(body.error.refusals[0]).toMatchObject({ field, got: expect.stringContaining(got) });
    expect(body.error.refusals[0].expected).not.toBe("");
  });
});

describe("POST /api/estimate", () => {
  it("estimates a club whose parts state neither id nor kind", async () => {
    const app = await testApp();
    const bare = ({ id: _id, kind: _kind, ...rest }: { id: string; kind: string }) => rest;
    const { status, body } = await ask(app, "POST", "/api/estimate", {
      head: bare(head),
      adapter: bare(adapter),
      shaft: bare(shaft),
      grip: bare(grip),
    });
    expect(status).toBe(200);
    // Cut length + (seat to ground − tip stop) + cap: 43.5 + (2.1 − 0.6) + 0.15 (derived, no published source).
    expect(body.playingLengthIn.value).toBeCloseTo(45.15, 9);
    expect(body.playingLengthIn.low).toBeLessThan(45.15);
    // The parts, and the epoxy and tape that hold them.
    expect(body.massG.value).toBeGreaterThanOrEqual(200 + 8 + 60 + 50);
    expect(body.massG.value).toBeLessThan(335);
    expect(body.settings.map(({ label }: { label: string }) => label)).toEqual(["STD", "UP"]);
    expect(body.playingLengthIn.basis.map(({ part }: { part: string }) => part)).toContain("head");
  });

  // A with-adapter length ends at the cap's edge where the grip is on (common practice, no source): 43.5 counts a 0.15-in cap.
  it.each(["/api/estimate", "/api/tune"])(
    "takes the cap out of a with-adapter length read with the grip on, by %s",
    async (url) => {
      const app = await testApp();
      const read = {
        head,
        adapter: { ...adapter, endBelowTipIn: 0.4 },
        shaft: { ...shaft, length: { lengthIn: 43.5, basis: "with-adapter" } },
        grip,
        bonded: true,
        ...(url === "/api/tune" ? { target: { playingLengthIn: 44 } } : {}),
      };
      const lengthOf = async (gripped: boolean) => {
        const { status, body } = await ask(app, "POST", url, { ...read, gripped });
        expect(status).toBe(200);
        return (url === "/api/tune" ? body.before : body).playingLengthIn.value;
      };
      expect((await lengthOf(false)) - (await lengthOf(true))).toBeCloseTo(0.15, 9);
    },
  );

  it("asks for the grip", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/estimate", { head, shaft });
    expect(status).toBe(400);
    expect(body.error.refusals).toEqual([{ field: "grip", got: "nothing", expected: expect.any(String) }]);
  });

  it("refuses a build that states both a trim and a length", async () => {
    const app = await testApp();
    const build = { buttTrimIn: 1, playingLengthIn: 44 };
    const { status, body } = await ask(app, "POST", "/api/estimate", { head, adapter, shaft, grip, build });
    expect(status).toBe(400);
    expect(body.error.refusals[0]).toMatchObject({
      field: "build",
      expected: "either buttTrimIn or playingLengthIn, not both",
    });
  });

  it("refuses a build that nobody could make, as data", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/estimate", {
      head,
      adapter,
      shaft,
      grip,
      build: { playingLengthIn: 60 },
    });
    expect(status).toBe(400);
    expect(body.error.refusals[0].field).toContain("playingLengthIn");
  });
});

describe("POST /api/tune", () => {
  it("gives builds that reach the target, the smallest change first", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/tune", {
      head,
      adapter,
      shaft,
      grip,
      target: { playingLengthIn: 44.5 },
    });
    expect(status).toBe(200);
    expect(body.solutions.length).toBeGreaterThan(0);
    expect(body.solutions[0].estimates.playingLengthIn.value).toBeCloseTo(44.5, 6);
    expect(body.cautions).toContainEqual({ code: "sharp-ends", text: expect.stringContaining("shaft") });
  });

  it.each([-20, 90])("answers 200 for a swing weight of %s points, however far off", async (points) => {
    const app = await testApp();
    const club = { head: { ...head, massG: 230 }, adapter, shaft, grip };
    const target = { swingWeightPoints: points };
    const { status } = await ask(app, "POST", "/api/tune", { ...club, target });
    expect(status).toBe(200);
  });

  it("asks for a target", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/tune", { head, adapter, shaft, grip, target: {} });
    expect(status).toBe(400);
    expect(body.error.refusals).toEqual([
      { field: "target", got: "{}", expected: "playingLengthIn, swingWeightPoints or both" },
    ]);
  });
});
