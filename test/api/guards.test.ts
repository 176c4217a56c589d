import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { ask, looseParts, temporaryFolder, testApp } from "./server.test-kit.ts";

describe("requests", () => {
  it.each([
    ["localhost:4310", 200],
    ["127.0.0.1:4310", 200],
    ["[::1]:4310", 200],
    ["shed.local", 200],
    ["example.org", 403],
    ["localhost.example.org:4310", 403],
    ["a b", 403],
  ])("for the host %j are answered %i", async (host, status) => {
    const app = await testApp({ allowedHosts: ["shed.local"] });
    const reply = await app.inject({ url: "/api/health", headers: { host } });
    expect(reply.statusCode).toBe(status);
    if (status === 403) expect(reply.json().error.code).toBe("foreign-host");
  });

  it.each([
    ["http://localhost:4310", 200],
    ["https://example.org", 403],
    ["null", 403],
  ])("from a page at %s are answered %i", async (origin, status) => {
    const app = await testApp();
    const reply = await app.inject({
      method: "POST",
      url: "/api/bench/example",
      headers: { origin, host: "localhost:4310" },
    });
    expect(reply.statusCode).toBe(status);
  });

  it.each([
    [
      "text that is not JSON",
      { headers: { "content-type": "application/json" }, payload: "{" },
      400,
      "bad-request",
    ],
    [
      "a form",
      { headers: { "content-type": "application/x-www-form-urlencoded" }, payload: "a=1" },
      415,
      "wrong-media-type",
    ],
    ["plain text", { headers: { "content-type": "text/plain" }, payload: "{}" }, 415, "wrong-media-type"],
    [
      "more than 8 MB",
      { headers: { "content-type": "application/json" }, payload: `"${"x".repeat(8 * 1024 * 1024)}"` },
      413,
      "too-large",
    ],
    ["nothing", { headers: { "content-type": "application/json" }, payload: "" }, 400, "bad-request"],
    [
      "lists too deep in one another",
      {
        headers: { "content-type": "application/json" },
        payload: `{"parts":${"[".repeat(10_000)}${"]".repeat(10_000)}}`,
      },
      400,
      "bad-request",
    ],
    [
      "a prototype",
      { headers: { "content-type": "application/json" }, payload: '{"__proto__":{"x":1}}' },
      400,
      "bad-request",
    ],
  ])("with %s for a body are refused in the one shape", async (_title, request, status, code) => {
    const app = await testApp();
    const reply = await app.inject({ method: "POST", url: "/api/resolve", ...request });
    expect(reply.statusCode).toBe(status);
    expect(reply.json().error.code).toBe(code);
  });

  it("may come often from this machine, and not without end", async () => {
    const app = await testApp();
    const statuses = new Map<number, number>();
    for (let at = 0; at < 310; at += 1) {
      const { statusCode } = await app.inject({ url: "/api/health", remoteAddress: "192.0.2.7" });
      statuses.set(statusCode, (statuses.get(statusCode) ?? 0) + 1);
    }
    expect([...statuses]).toEqual([
      [401, 300],
      [429, 10],
    ]);
    expect((await ask(app, "GET", "/api/health")).headers["x-ratelimit-limit"]).toBe("6000");
  });

  it("that meet a bug of ours are told so without its details, and the bench stays as it was", async () => {
    const app = await testApp();
    app.addHook("preHandler", async () => {
      throw new TypeError("secret of the house");
    });
    const reply = await app.inject({ method: "POST", url: "/api/bench/parts", payload: looseParts.grip });
    expect(reply.statusCode).toBe(500);
    expect(reply.json().error.code).toBe("our-bug");
    expect(reply.body).not.toContain("secret");
  });
});

describe("the page", () => {
  function pageFolder(): string {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "assets"));
    writeFileSync(join(folder, "index.html"), "<!doctype html><title>Ferrule</title>");
    writeFileSync(join(folder, "assets", "page.js"), "export const page = 1;");
    return folder;
  }

  it("is served with its files, and for every view that it makes itself", async () => {
    const app = await testApp({ pageFolder: pageFolder() });
    for (const url of ["/", "/bench", "/parts/h1", "/clubs/h1%2Ba1?x=1"]) {
      const { status, body, headers } = await ask(app, "GET", url);
      expect([url, status]).toEqual([url, 200]);
      expect(headers["content-type"]).toContain("text/html");
      expect(body).toContain("<title>Ferrule</title>");
    }
    expect((await ask(app, "GET", "/assets/page.js")).headers["content-type"]).toContain("javascript");
  });

  it("allows no script or style but its own", async () => {
    const app = await testApp({ pageFolder: pageFolder() });
    const policy = String((await ask(app, "GET", "/")).headers["content-security-policy"]);
    expect(policy).toContain("default-src 'self'");
    expect(policy).not.toContain("unsafe");
    expect(policy).not.toContain("upgrade-insecure-requests");
  });

  it.each(["/api/nothing", "/api", "/assets/none.js", "/../package.json"])(
    "is not given for %s",
    async (url) => {
      const app = await testApp({ pageFolder: pageFolder() });
      const { status, body } = await ask(app, "GET", url);
      expect(status).toBe(404);
      expect(body.error.code).toBe("not-found");
    },
  );

  it("says how it is built when it is not there", async () => {
    const app = await testApp({ pageFolder: join(temporaryFolder(), "none") });
    const { status, body } = await ask(app, "GET", "/");
    expect(status).toBe(404);
    expect(body.error.message).toContain("npm start");
  });
});
