import { createHash } from "node:crypto";
import { expect, it } from "vitest";
import { openDatabase } from "../../packages/server/src/store/database.ts";
import { ask, type TestApp, temporaryFolder, testApp } from "./server.test-kit.ts";

const phone = "192.168.1.20";
const minuteMs = 60_000;

/** A server whose clock a test sets. */
async function clockedApp(options: { dataFolder?: string } = {}) {
  let now = Date.UTC(2026, 10, 25);
  const app = await testApp({ ...options, now: () => now });
  return { app, pass: (ms: number) => (now += ms) };
}

/** Asks as another device would. */
function from(
  app: TestApp,
  method: "GET" | "POST" | "DELETE",
  url: string,
  rest: { payload?: object; cookie?: string; address?: string; accept?: string } = {},
) {
  const { payload, cookie, address = phone, accept = "*/*" } = rest;
  return app.inject({
    method,
    url,
    remoteAddress: address,
    headers: { accept, ...(cookie && { cookie }) },
    ...(payload && { payload }),
  });
}

async function offered(app: TestApp): Promise<string> {
  const { status, body } = await ask(app, "POST", "/api/devices/offer");
  expect(status).toBe(201);
  return body.code;
}

const pairWith = (app: TestApp, code: string, address = phone) =>
  from(app, "POST", "/api/pair", { payload: { code, name: "Phone" }, address });

const cookieOf = (reply: { headers: Record<string, unknown> }) =>
  String(reply.headers["set-cookie"]).split(";")[0] ?? "";

it("answers another device only once it is paired, and sends its pages to the pairing", async () => {
  const { app } = await clockedApp();
  const refused = await from(app, "GET", "/api/bench");
  expect([refused.statusCode, refused.json().error.code]).toEqual([401, "not-paired"]);
  const page = await from(app, "GET", "/parts/h1", { accept: "text/html" });
  expect([page.statusCode, page.headers["location"]]).toEqual([303, "/pair"]);
  const paired = await pairWith(app, await offered(app));
  expect(paired.statusCode).toBe(201);
  expect((await from(app, "GET", "/api/bench", { cookie: cookieOf(paired) })).statusCode).toBe(200);
  expect((await from(app, "GET", "/api/bench", { cookie: "ferrule-device=made-up" })).statusCode).toBe(401);
});

it("tells the token in a cookie that no script and no other site gets", async () => {
  const { app } = await clockedApp();
  const paired = await pairWith(app, await offered(app));
  expect(String(paired.headers["set-cookie"])).toMatch(/; HttpOnly; SameSite=Strict/);
  expect(Object.keys(paired.json())).toEqual(["id", "name", "pairedOn", "seenOn"]);
});

it("takes a code once, in whatever letters it is typed", async () => {
  const { app } = await clockedApp();
  const code = await offered(app);
  expect(code).toMatch(/^[A-HJKMNP-Z2-9]{8}$/);
  const typed = `${code.slice(0, 4)}-${code.slice(4)} `.toLowerCase();
  expect((await pairWith(app, typed)).statusCode).toBe(201);
  expect((await pairWith(app, code)).json().error.code).toBe("wrong-code");
});

it.each([
  ["just before five minutes", 5 * minuteMs - 1, 201],
  ["at five minutes", 5 * minuteMs, 403],
])("takes a code or not %s", async (_when, ms, status) => {
  const { app, pass } = await clockedApp();
  const code = await offered(app);
  pass(ms);
  expect((await pairWith(app, code)).statusCode).toBe(status);
});

it("voids a code when another is made", async () => {
  const { app } = await clockedApp();
  const former = await offered(app);
  const code = await offered(app);
  expect((await pairWith(app, former)).statusCode).toBe(403);
  expect((await pairWith(app, code)).statusCode).toBe(201);
});

it("lets an address guess five times in five minutes, and not the right code after that", async () => {
  const { app, pass } = await clockedApp();
  const code = await offered(app);
  for (let guess = 0; guess < 5; guess += 1)
    expect((await pairWith(app, "AAAAAAAA")).json().error.code).toBe("wrong-code");
  expect((await pairWith(app, code)).json().error.code).toBe("too-many");
  expect((await pairWith(app, code, "192.168.1.21")).statusCode).toBe(201);
  pass(5 * minuteMs);
  expect((await pairWith(app, await offered(app))).statusCode).toBe(201);
});

it("withdraws the code after twenty wrong guesses from anywhere", async () => {
  const { app } = await clockedApp();
  const code = await offered(app);
  for (let guess = 0; guess < 20; guess += 1) await pairWith(app, "AAAAAAAA", `192.168.1.${100 + guess}`);
  expect((await pairWith(app, code)).json().error.code).toBe("wrong-code");
});

it("shuts out a device that was revoked, at once", async () => {
  const { app } = await clockedApp();
  const paired = await pairWith(app, await offered(app));
  const cookie = cookieOf(paired);
  expect(
    (await ask(app, "PATCH", `/api/devices/${paired.json().id}`, { name: "Bench phone" })).body.name,
  ).toBe("Bench phone");
  expect((await ask(app, "DELETE", `/api/devices/${paired.json().id}`)).status).toBe(200);
  expect((await from(app, "GET", "/api/bench", { cookie })).statusCode).toBe(401);
  expect((await ask(app, "GET", "/api/devices")).body.devices).toEqual([]);
});

it("makes codes and revokes devices only at the machine that serves", async () => {
  const { app } = await clockedApp();
  const paired = await pairWith(app, await offered(app));
  const cookie = cookieOf(paired);
  for (const [method, url] of [
    ["POST", "/api/devices/offer"],
    ["DELETE", `/api/devices/${paired.json().id}`],
  ] as const) {
    const reply = await from(app, method, url, { cookie });
    expect([reply.statusCode, reply.json().error.code]).toEqual([403, "only-here"]);
  }
});

it("keeps of a token only its SHA-256", async () => {
  const dataFolder = temporaryFolder();
  const { app } = await clockedApp({ dataFolder });
  const token = cookieOf(await pairWith(app, await offered(app))).split("=")[1] ?? "";
  await app.close();
  const database = openDatabase(dataFolder);
  const rows = database.prepare("SELECT * FROM devices").all();
  database.close();
  expect(token).toHaveLength(43);
  expect(JSON.stringify(rows)).not.toContain(token);
  expect(rows).toMatchObject([
    { name: "Phone", tokenHash: createHash("sha256").update(token).digest("hex") },
  ]);
});
