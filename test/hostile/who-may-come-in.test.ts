import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { type AddressInfo, connect } from "node:net";
import { networkInterfaces } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readEnvironment } from "../../packages/server/src/environment.ts";
import { databaseFileName } from "../../packages/server/src/store/database.ts";
import { ask, looseParts, openTestApp, type TestApp } from "../api/server.test-kit.ts";
import { foldersOf } from "./folders.ts";
import { rawRequest } from "./raw-request.ts";

const secret = "what only the file beside the page says";
const folders = foldersOf();
let dataFolder: string;
let app: TestApp;
let port: number;
let nowMs = Date.UTC(2026, 10, 25);

beforeAll(async () => {
  dataFolder = folders.make();
  const pageFolder = join(folders.make(), "page");
  mkdirSync(join(pageFolder, "assets"), { recursive: true });
  writeFileSync(join(pageFolder, "..", "secret.txt"), secret);
  for (const name of ["index", "pair", "trust"])
    writeFileSync(join(pageFolder, `${name}.html`), `<!doctype html><title>${name}</title>`);
  writeFileSync(join(pageFolder, "assets", "page.js"), "export const page = 1;");
  app = await openTestApp({
    dataFolder,
    pageFolder,
    now: () => nowMs,
    limits: { headersMs: 600, requestMs: 1200, checkEveryMs: 100 },
  });
  const { host } = readEnvironment({});
  await app.listen({ port: 0, host });
  port = (app.server.address() as AddressInfo).port;
  await ask(app, "POST", "/api/bench/parts", looseParts.grip);
});
afterAll(async () => {
  await app.close();
  folders.remove();
});

const own = () => `127.0.0.1:${port}`;
/** Stands in a text for the address, which is not known before the server listens. */
const here = "<here>";
const raw = (pieces: readonly string[], timing?: Parameters<typeof rawRequest>[2]) =>
  rawRequest(
    port,
    pieces.map((piece) => piece.replace(here, own())),
    timing,
  );
const bench = async () => JSON.stringify((await ask(app, "GET", "/api/bench")).body);
const request = (line: string, headers: readonly string[] = [], body = "") =>
  [`${line} HTTP/1.1`, `Host: ${here}`, "Connection: close", ...headers, "", body].join("\r\n");

describe("a server as it is started without a word", () => {
  it("answers at loopback and at no other address of this machine", async () => {
    expect((app.server.address() as AddressInfo).address).toBe("127.0.0.1");
    const others = Object.values(networkInterfaces())
      .flatMap((all) => all ?? [])
      .filter(({ family, internal }) => family === "IPv4" && !internal)
      .map(({ address }) => address);
    // 127.0.0.2 is this machine too, and a server on all addresses would answer there.
    for (const address of [...others, ...(process.platform === "linux" ? ["127.0.0.2"] : [])])
      expect(await reached(address), address).toBe(false);
    expect(await reached("127.0.0.1")).toBe(true);
  });

  function reached(address: string): Promise<boolean> {
    return new Promise((resolve) => {
      const socket = connect({ port, host: address, timeout: 2000 });
      const end = (isReached: boolean) => {
        socket.destroy();
        resolve(isReached);
      };
      socket.once("connect", () => end(true));
      socket.once("error", () => end(false));
      socket.once("timeout", () => end(false));
    });
  }
});

describe("a name that is made to point here (DNS rebinding)", () => {
  it.each([
    "attacker.example",
    "localhost.",
    "localhost.attacker.example",
    "127.0.0.1.attacker.example",
    "127.0.0.1@attacker.example",
    "[::ffff:7f00:1]",
    "0.0.0.0",
  ])("is refused as the host %j", async (host) => {
    const reply = await app.inject({ url: "/api/bench", headers: { host } });
    expect([reply.statusCode, reply.json().error.code]).toEqual([403, "foreign-host"]);
    expect(reply.headers["content-security-policy"]).toContain("default-src 'self'");
  });

  it.each([
    ["a whole address in the request line", "GET http://attacker.example/api/bench HTTP/1.1", true, 403],
    ["a whole address of ours in it", "GET http://127.0.0.1/api/bench HTTP/1.1", true, 403],
    ["no host at all", "GET /api/bench HTTP/1.1", false, 400],
  ])("is refused with %s", async (_title, line, hasHost, status) => {
    const host = hasHost ? [`Host: ${here}`] : [];
    const reply = await raw([[line, ...host, "Connection: close", "", ""].join("\r\n")]);
    expect(reply.status).toBe(status);
    expect(reply.text).not.toContain("coreDiameterIn");
  });
});

describe("a page from another origin", () => {
  const form = { "content-type": "application/x-www-form-urlencoded" };
  const plain = { "content-type": "text/plain" };
  const json = { "content-type": "application/json" };
  const payload = JSON.stringify({ id: "g9", kind: "grip" });

  it.each([
    ["a form", { origin: "https://attacker.example", ...form }],
    ["plain text that is JSON", { origin: "https://attacker.example", ...plain }],
    ["JSON", { origin: "https://attacker.example", ...json }],
    ["JSON from a frame without an origin", { origin: "null", ...json }],
    ["JSON from another program's page on this machine", { origin: "http://127.0.0.1:3000", ...json }],
    ["JSON from a page at another of our names", { origin: "http://localhost:4310", ...json }],
    ["JSON from a page at our name without a port", { origin: "http://127.0.0.1", ...json }],
    ["JSON without an origin, but from another site", { "sec-fetch-site": "cross-site", ...json }],
    ["JSON without an origin, but from another port", { "sec-fetch-site": "same-site", ...json }],
  ])("cannot send %s", async (_title, headers) => {
    const before = await bench();
    const reply = await app.inject({
      method: "POST",
      url: "/api/bench/parts",
      headers: { host: "127.0.0.1:4310", ...headers },
      payload,
    });
    expect([reply.statusCode, reply.json().error.code]).toEqual([403, "foreign-host"]);
    expect(reply.headers["access-control-allow-origin"]).toBeUndefined();
    expect(await bench()).toBe(before);
  });

  it.each(["form", "plain"])(
    "cannot send a %s even from a browser that says nothing of where it is",
    async (kind) => {
      const before = await bench();
      const headers = kind === "form" ? form : plain;
      const reply = await app.inject({ method: "POST", url: "/api/bench/parts", headers, payload });
      expect(reply.statusCode).toBe(415);
      expect(await bench()).toBe(before);
    },
  );

  it("is not told that it may ask", async () => {
    const reply = await app.inject({
      method: "OPTIONS",
      url: "/api/bench/parts",
      headers: { origin: "https://attacker.example", "access-control-request-method": "POST" },
    });
    expect(reply.statusCode).toBeGreaterThanOrEqual(400);
    expect(Object.keys(reply.headers).filter((name) => name.startsWith("access-control"))).toEqual([]);
  });

  it.each(["/api/bench/resolve", "/api/snapshot", "/api/bench/export.csv", "/assets/page.js", "/api/events"])(
    "cannot have %s worked out or loaded for it",
    async (url) => {
      for (const mode of ["no-cors", "cors", "navigate"]) {
        const headers = { "sec-fetch-site": "same-site", "sec-fetch-mode": mode, "sec-fetch-dest": "image" };
        expect((await app.inject({ url, headers })).statusCode).toBe(403);
      }
    },
  );

  it("may link to a view, but neither frame it nor open the API", async () => {
    const from = (dest: string, url: string) =>
      app.inject({
        url,
        headers: { "sec-fetch-site": "cross-site", "sec-fetch-mode": "navigate", "sec-fetch-dest": dest },
      });
    expect((await from("document", "/parts/g1")).statusCode).toBe(200);
    expect((await from("iframe", "/parts/g1")).statusCode).toBe(403);
    expect((await from("document", "/api/bench")).statusCode).toBe(403);
    expect((await from("document", "//api/bench")).statusCode).toBe(403);
  });

  it("is another thing than our own page", async () => {
    const headers = { host: own(), origin: `http://${own()}`, "sec-fetch-site": "same-origin" };
    expect((await app.inject({ url: "/api/bench", headers })).statusCode).toBe(200);
  });
});

describe("every answer", () => {
  it.each([
    ["/", 200],
    ["/pair", 200],
    ["/trust", 200],
    ["/assets/page.js", 200],
    ["/api/bench", 200],
    ["/api/nothing", 404],
    ["/api/bench/parts/none", 404],
    ["/api/bench/export.csv", 200],
  ])("such as that of %s has the headers that keep others out", async (url, status) => {
    const reply = await app.inject(url);
    expect(reply.statusCode).toBe(status);
    const policy = String(reply.headers["content-security-policy"]);
    expect(policy).toMatch(/default-src 'self'.*object-src 'none'.*base-uri 'none'.*frame-ancestors 'none'/);
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    expect(reply.headers).toMatchObject({
      "x-content-type-options": "nosniff",
      "x-frame-options": "DENY",
      "referrer-policy": "no-referrer",
      "cross-origin-opener-policy": "same-origin",
      "cross-origin-resource-policy": "same-origin",
      "permissions-policy": expect.stringContaining("microphone=()"),
    });
    expect(reply.headers["x-powered-by"]).toBeUndefined();
  });
});

describe("a path that leads out of the folder", () => {
  const ways = [
    ...[
      "/../secret.txt",
      "/assets/../../secret.txt",
      "/..%2fsecret.txt",
      "/%2e%2e/secret.txt",
      "/%2e%2e%2fsecret.txt",
    ],
    ...[
      "/assets/..%5c..%5csecret.txt",
      "/..%c0%afsecret.txt",
      "/%252e%252e%252fsecret.txt",
      "/assets/%00../secret.txt",
    ],
    ...[
      "//secret.txt",
      "/./../secret.txt",
      "/assets/....//secret.txt",
      "/secret.txt%00.js",
      "/file:///etc/passwd",
    ],
    ...["/etc/passwd", "//etc/passwd", "/assets//etc/passwd", "/%2fetc%2fpasswd", "/pair/../../secret.txt"],
    ...[`/${databaseFileName}`, `/..%2f${databaseFileName}`, "/network/key.pem"],
  ];

  it.each(ways)("is %s, and gives nothing away", async (path) => {
    const reply = await raw([request(`GET ${path}`)]);
    expect([200, 400, 403, 404]).toContain(reply.status);
    for (const word of [secret, "root:", "SQLite format", "PRIVATE KEY"])
      expect(reply.text).not.toContain(word);
    if (reply.status === 200) expect(reply.text).toContain("<title>index</title>");
  });

  it("is no id of anything either", async () => {
    const { body } = await ask(app, "GET", "/api/openapi.json");
    const before = readFileSync(join(dataFolder, databaseFileName)).length;
    for (const [path, operations] of Object.entries(body.paths as Record<string, object>))
      for (const method of Object.keys(operations))
        for (const id of ["..%2f..%2fbench.sqlite", "%2fetc%2fpasswd", "a%00b", "%2e%2e"]) {
          if (!path.includes("{")) continue;
          const url = path.replace(/\{\w+\}/, id);
          const reply = await app.inject({ method: method.toUpperCase() as "GET", url });
          expect([method, url, reply.statusCode >= 400 || /^\/api\/codes/.test(url)]).toEqual([
            method,
            url,
            true,
          ]);
          expect(reply.statusCode).toBeLessThan(500);
          expect(reply.body).not.toMatch(/root:|SQLite format/);
        }
    expect(readFileSync(join(dataFolder, databaseFileName)).length).toBe(before);
  });
});

describe("a request that is meant to hold the server up", () => {
  const post = (headers: readonly string[]) =>
    request("POST /api/bench/parts", ["Content-Type: application/json", ...headers]);

  it.each([
    ["its headers come byte by byte", [`GET /api/health HTTP/1.1\r\nHost: x\r\nX: `, ..."a".repeat(200)]],
    ["its body comes byte by byte", [post(["Content-Length: 5000"]), ..." ".repeat(200)]],
    ["its body never comes", [post(["Content-Length: 5000"])]],
    ["it never begins", [""]],
    ["its pieces never end", [post(["Transfer-Encoding: chunked"]), ...Array(200).fill("1\r\n \r\n")]],
  ])("is closed in time where %s", async (_title, pieces) => {
    const { status, tookMs, text } = await raw(pieces as string[], { everyMs: 50 });
    expect([408, 0]).toContain(status);
    if (status === 408) expect(text).toContain('"code":"too-slow"');
    expect(tookMs).toBeLessThan(8000);
  });

  it("does not keep others waiting", async () => {
    const slow = Array.from({ length: 100 }, () => raw([post(["Content-Length: 5000"])]));
    const started = performance.now();
    expect((await raw([request("GET /api/health")])).status).toBe(200);
    expect(performance.now() - started).toBeLessThan(3000);
    await Promise.all(slow);
  });

  it.each([
    ["a header", request("GET /api/health", [`X-Long: ${"x".repeat(20_000)}`]), 431, "headers-too-large"],
    ["an address", request(`GET /api/health?${"x".repeat(20_000)}`), 431, "headers-too-large"],
    [
      "many headers",
      request(
        "GET /api/health",
        Array.from({ length: 3000 }, (_, at) => `X-${at}: 1`),
      ),
      431,
      "headers-too-large",
    ],
    ["an id", request(`GET /api/bench/parts/${"x".repeat(5000)}`), 400, "bad-request"],
  ])("is refused in the one shape where %s is too long", async (_title, text, status, code) => {
    const reply = await raw([text]);
    expect(reply.status).toBe(status);
    expect(reply.text).toContain(`"code":"${code}"`);
  });

  it("is refused by what it says of its length, before it is sent", async () => {
    const reply = await raw([post(["Content-Length: 52428800"])]);
    expect(reply.status).toBe(413);
    expect(reply.text).toContain('"code":"too-large"');
  });
});

describe("a request that could be read in two ways", () => {
  const smuggled = "GET /api/bench HTTP/1.1\r\nHost: x\r\n\r\n";
  it.each([
    ["two lengths", ["Content-Length: 5", "Content-Length: 6"], "12345"],
    ["a length and pieces", ["Content-Length: 5", "Transfer-Encoding: chunked"], `0\r\n\r\n${smuggled}`],
    ["pieces written otherwise", ["Transfer-Encoding: xchunked"], `0\r\n\r\n${smuggled}`],
    ["pieces twice", ["Transfer-Encoding: chunked, identity"], `0\r\n\r\n${smuggled}`],
    ["a length that is no number", ["Content-Length: +5"], "12345"],
    ["a header without a name", [": x"], ""],
    ["a header over two lines", ["X: a", " b"], ""],
    ["a blank before the colon", ["Content-Length : 5"], "12345"],
    ["a piece of a size that is no number", ["Transfer-Encoding: chunked"], "zz\r\n"],
  ])("is refused, and the connection closed, with %s", async (_title, headers, body) => {
    const before = await bench();
    const text = [
      `POST /api/bench/parts HTTP/1.1`,
      `Host: ${here}`,
      "Content-Type: application/json",
      ...headers,
      "",
      body,
    ];
    const reply = await raw([text.join("\r\n")]);
    expect(reply.status).toBe(400);
    expect(reply.text).toContain('"code":"bad-request"');
    expect(reply.text.match(/HTTP\/1\.1 /g)).toHaveLength(1);
    expect(await bench()).toBe(before);
  });

  it.each(["TRACE", "CONNECT", "PROPFIND", "OPTIONS", "BREW"])("has no method %s", async (method) => {
    const target = method === "CONNECT" ? "127.0.0.1:1" : "/api/bench";
    const reply = await raw([request(`${method} ${target}`)]);
    expect([0, 400, 404, 405]).toContain(reply.status);
    expect(reply.text).not.toContain("coreDiameterIn");
  });
});

describe("a device that is none of ours", () => {
  const minuteMs = 60_000;
  const offered = async () => (await ask(app, "POST", "/api/devices/offer")).body.code as string;
  const from = (address: string, method: "GET" | "POST" | "DELETE", url: string, more: object = {}) =>
    app.inject({ method, url, remoteAddress: address, ...more });
  const pair = (address: string, code: string) =>
    from(address, "POST", "/api/pair", { payload: { code, name: "Phone" } });
  const cookieOf = (headers: object) =>
    String((headers as Record<string, unknown>)["set-cookie"]).split(";")[0] ?? "";

  it("gets nothing of any route, however the address is written", async () => {
    const { body } = await ask(app, "GET", "/api/openapi.json");
    const urls = Object.keys(body.paths as object).map((path) => path.replace(/\{\w+\}/g, "g1"));
    const written = [
      "//api/bench",
      "/api/pair/../bench",
      "/assets/../api/bench",
      "/api/trust/..%2fbench",
      "/icons/;/api/bench",
      "/API/bench",
    ];
    let address = 0;
    for (const url of [...urls, "/api/openapi.json", ...written]) {
      if (/^\/api\/(pair|trust)$/.test(url)) continue;
      address += 1;
      const reply = await from(`192.0.2.${address % 200}`, "GET", url);
      expect([url, [401, 404, 200].includes(reply.statusCode)]).toEqual([url, true]);
      expect(reply.body).not.toContain("coreDiameterIn");
      if (reply.statusCode === 200) expect(reply.body).toContain("<title>");
      if (urls.includes(url)) expect([url, reply.statusCode]).toEqual([url, 401]);
    }
  });

  it("cannot use a code that was used, that has ended, or that was guessed for", async () => {
    const used = await offered();
    expect((await pair("192.0.2.201", used)).statusCode).toBe(201);
    expect((await pair("192.0.2.202", used)).json().error.code).toBe("wrong-code");
    const ended = await offered();
    nowMs += 5 * minuteMs;
    expect((await pair("192.0.2.203", ended)).json().error.code).toBe("wrong-code");
    const guessed = await offered();
    for (let guess = 0; guess < 5; guess += 1) await pair("192.0.2.204", "AAAAAAAA");
    expect((await pair("192.0.2.204", guessed)).json().error.code).toBe("too-many");
    nowMs += 5 * minuteMs;
  });

  it("cannot use two codes at once, nor one code twice at once", async () => {
    const code = await offered();
    const replies = await Promise.all(
      Array.from({ length: 10 }, (_, at) => pair(`192.0.2.${210 + at}`, code)),
    );
    expect(replies.filter(({ statusCode }) => statusCode === 201)).toHaveLength(1);
    nowMs += 5 * minuteMs;
  });

  it("cannot go on with a stolen cookie once it is revoked, nor do here what is only for here", async () => {
    const paired = await pair("192.0.2.230", await offered());
    expect(String(paired.headers["set-cookie"])).toMatch(/HttpOnly; SameSite=Strict/);
    const headers = { cookie: cookieOf(paired.headers) };
    // The thief is somewhere else: a cookie is not bound to an address, since phones change theirs.
    expect((await from("192.0.2.231", "GET", "/api/bench", { headers })).statusCode).toBe(200);
    expect((await from("192.0.2.231", "POST", "/api/devices/offer", { headers })).statusCode).toBe(403);
    await ask(app, "DELETE", `/api/devices/${paired.json().id}`);
    for (const address of ["192.0.2.230", "192.0.2.231"])
      expect((await from(address, "GET", "/api/bench", { headers })).statusCode).toBe(401);
  });

  it.each([
    "ferrule-device=",
    "ferrule-device=' OR 1=1 --",
    `ferrule-device=${"x".repeat(5000)}`,
    "ferrule-device=\u0000",
    "Ferrule-Device=x; ferrule-device =y",
  ])("cannot make up a cookie such as %j", async (cookie) => {
    expect((await from("192.0.2.240", "GET", "/api/bench", { headers: { cookie } })).statusCode).toBe(401);
  });

  it("finds no token and no code in the database, nor in what is logged on the way", async () => {
    const code = await offered();
    const paired = await pair("192.0.2.241", code);
    const token = cookieOf(paired.headers).split("=")[1] ?? "";
    expect(token).toHaveLength(43);
    const files = [databaseFileName, `${databaseFileName}-wal`].map((name) =>
      readFileSync(join(dataFolder, name), "latin1"),
    );
    for (const file of files) {
      expect(file).not.toContain(token);
      expect(file).not.toContain(code);
    }
    nowMs += 5 * minuteMs;
  });

  it("cannot pass for this machine by what it says of itself", async () => {
    for (const headers of [
      { "x-forwarded-for": "127.0.0.1" },
      { forwarded: "for=127.0.0.1" },
      { "x-real-ip": "127.0.0.1" },
      { "x-forwarded-host": "localhost" },
    ])
      expect((await from("192.0.2.242", "GET", "/api/bench", { headers })).statusCode).toBe(401);
  });

  it("is held to so many requests a minute, refused ones included", async () => {
    const statuses = new Set<number>();
    for (let at = 0; at < 305; at += 1)
      statuses.add((await from("192.0.2.250", "GET", "/api/bench")).statusCode);
    expect([...statuses]).toEqual([401, 429]);
    expect((await from("192.0.2.251", "GET", "/api/bench")).statusCode).toBe(401);
  });
});
