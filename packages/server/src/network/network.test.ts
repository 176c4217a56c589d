import { mkdtempSync, rmSync } from "node:fs";
import { get } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { openTestApp } from "../../../../test/api/server.test-kit.ts";
import { openNetwork } from "./network.ts";

it("serves other devices by HTTPS under its names on the network, and this machine as before", async () => {
  const dataFolder = mkdtempSync(join(tmpdir(), "ferrule-network-"));
  onTestFinished(() => rmSync(dataFolder, { recursive: true, force: true }));
  const names = () => ({ addresses: ["192.168.1.4"], hosts: ["shed", "shed.local"], subnets: [] });
  const network = await openNetwork(dataFolder, undefined, names);
  const app = await openTestApp({ dataFolder, network });
  await app.listen({ port: 0, host: "127.0.0.1" });
  await network.listen(app, 0);
  onTestFinished(() => app.close());
  const url = new URL(network.urls().at(-1) ?? "");
  expect(network.urls()[0]).toBe(`https://192.168.1.4:${url.port}`);
  const ask = (host: string) =>
    new Promise<number | undefined>((resolve, reject) => {
      const ca = network.certificate().authority;
      const to = {
        host: "127.0.0.1",
        port: url.port,
        path: "/api/bench",
        servername: "shed.local",
        ca,
        agent: false,
      };
      get({ ...to, headers: { host } }, (reply) => {
        reply.resume();
        resolve(reply.statusCode);
      }).on("error", reject);
    });
  expect(await ask(url.host)).toBe(401);
  expect(await ask("example.org")).toBe(403);
  expect((await app.inject("/api/bench")).statusCode).toBe(200);
});
