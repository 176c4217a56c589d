import { inspect } from "node:util";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { errorTable } from "../../packages/server/src/errors.ts";
import { openTestApp, type TestApp } from "../api/server.test-kit.ts";
import { benchFields, benchWords, openWitness, stock } from "./attacked-bench.ts";
import { describedRoutes } from "./described-routes.ts";
import { foldersOf } from "./folders.ts";
import { type HostileRequest, requestsTo } from "./requests-to.ts";

/** How many requests each route gets; RUNS asks for more, SEED for others. */
const numRuns = Number(process.env["RUNS"] ?? 10);
const seed = Number(process.env["SEED"] ?? 20261125);
/** A busy machine is slow; what grows without bound takes far longer than this. */
const longestMs = 10_000;

const { routes, named } = await readDescription();
const world = { named, words: benchWords, fields: benchFields };

async function readDescription() {
  const app = await openTestApp();
  const described = await describedRoutes(app);
  await app.close();
  return described;
}

describe("every route that the server describes", () => {
  const folders = foldersOf();
  const counts = new Map<number, number>();
  let app: TestApp;
  let witness: ReturnType<typeof openWitness>;
  let asked = 0;
  let lastError: unknown;

  beforeAll(async () => {
    const dataFolder = folders.make();
    app = await openTestApp({ dataFolder });
    app.addHook("onError", async (_request, _reply, error) => {
      lastError = error;
    });
    witness = openWitness(dataFolder);
  });
  afterAll(async () => {
    witness.close();
    await app.close();
    folders.remove();
    process.stdout.write(`hostile requests by status: ${JSON.stringify([...counts].sort())}\n`);
  });

  /** Asks, and holds the answer to what every answer has to be. */
  async function attack(request: HostileRequest): Promise<void> {
    const before = { isBusy: witness.isBusy(), version: witness.version(), dump: witness.dump() };
    const started = performance.now();
    asked += 1;
    // No address asks so often that it is asked to wait.
    const remoteAddress = `127.0.${Math.floor(asked / 2000) % 256}.1`;
    const reply = await app.inject({ ...request, remoteAddress });
    const tookMs = performance.now() - started;
    counts.set(reply.statusCode, (counts.get(reply.statusCode) ?? 0) + 1);
    expect(tookMs, "the time it took").toBeLessThan(longestMs);
    expect(reply.statusCode, reply.statusCode < 500 ? "" : inspect(lastError)).toBeLessThan(500);
    expect(reply.headers["content-type"]).toMatch(/^(application\/json|text\/csv)/);
    expect(reply.headers["x-content-type-options"]).toBe("nosniff");
    if (reply.statusCode < 400) return;
    expectRefusal(reply.statusCode, reply.json());
    if (witness.version() !== before.version && !before.isBusy) expect(witness.dump()).toEqual(before.dump);
  }

  it.each(routes.map((route) => [route.method, route.path, route] as const))(
    "%s %s takes or refuses whatever comes, in words and in time, and a refusal changes nothing",
    async (_method, _path, route) => {
      await stock(app);
      await fc.assert(fc.asyncProperty(requestsTo(route, world), attack), {
        numRuns,
        seed,
        endOnFailure: true,
      });
      for (const url of ["/api/snapshot", "/api/bench/export.csv"])
        expect((await app.inject(url)).statusCode, url).toBe(200);
    },
    Math.max(60_000, numRuns * 3000),
  );

  it("still answer every question that needs no id, after all that", async () => {
    const questions = routes.filter(
      ({ method, path, query }) =>
        method === "GET" && !path.includes("{") && query.every(({ required }) => !required),
    );
    expect(questions.length).toBeGreaterThan(20);
    for (const { path } of questions) {
      const { statusCode } = await app.inject(path);
      expect([path, statusCode]).toEqual([path, path === "/api/trust" ? 404 : 200]);
    }
  });
});

/** A refusal is told in the one shape; of a request that was not understood, it says where and what was expected. */
function expectRefusal(
  status: number,
  body: { error: { code: keyof typeof errorTable; message: string; refusals?: unknown[] } },
) {
  const { code, message, refusals } = body.error;
  expect(errorTable[code]?.status, code).toBe(status);
  expect(message).toMatch(/\S/);
  if (status !== 400 || /^The address/.test(message)) return;
  expect(refusals?.length, message).toBeGreaterThan(0);
  for (const refusal of refusals ?? [])
    expect(refusal).toEqual({
      field: expect.stringMatching(/./s),
      got: expect.stringMatching(/\S/),
      expected: expect.stringMatching(/\S/),
    });
}
