import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { type AddressInfo, createServer } from "node:net";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { readEnvironment } from "../../packages/server/src/environment.ts";
import { listenProblem, StartupProblem } from "../../packages/server/src/startup-problem.ts";
import { namesIn } from "../../packages/server/src/store/backups-folder.ts";
import { makeOlderBench } from "../durability/older-bench.test-kit.ts";
import { ask, looseParts, temporaryFolder, testApp } from "./server.test-kit.ts";

describe("the data folder", () => {
  it("keeps the bench, its deletes and the settings over a restart", async () => {
    const dataFolder = join(temporaryFolder(), "made", "on", "demand");
    const first = await testApp({ dataFolder });
    await ask(first, "POST", "/api/bench/parts", looseParts.head);
    await ask(first, "POST", "/api/bench/parts", looseParts.grip);
    await ask(first, "DELETE", "/api/bench/parts/g1");
    await ask(first, "PUT", "/api/settings", { theme: "dark" });
    const before = (await ask(first, "GET", "/api/bench")).body;
    await first.close();
    const second = await testApp({
      dataFolder,
      demo: { parts: [], joints: [], claims: [], goal: { skill: "bond" } },
    });
    expect((await ask(second, "GET", "/api/bench")).body).toEqual(before);
    expect((await ask(second, "GET", "/api/settings")).body.theme).toBe("dark");
    expect((await ask(second, "POST", "/api/bench/undo")).body.restored.parts).toEqual([looseParts.grip]);
  });

  it("has each change on disk when it is acknowledged, whatever becomes of the server", async () => {
    const dataFolder = temporaryFolder();
    const first = await testApp({ dataFolder });
    await ask(first, "POST", "/api/bench/parts", looseParts.head);
    // The first server is still open: what the second sees has been written, not held back for an orderly end.
    const second = await testApp({ dataFolder });
    expect((await ask(second, "GET", "/api/bench/parts/h1")).status).toBe(200);
  });

  it("with a damaged database is refused in words, and the file is left as it is", async () => {
    const dataFolder = temporaryFolder();
    const file = join(dataFolder, "bench.sqlite");
    writeFileSync(file, "not a database ".repeat(500));
    const before = readFileSync(file);
    await expect(testApp({ dataFolder })).rejects.toThrow(StartupProblem);
    await expect(testApp({ dataFolder })).rejects.toThrow(
      /bench\.sqlite is damaged .* left as it is.*FERRULE_DATA/,
    );
    expect(readFileSync(file)).toEqual(before);
  });

  it("with a database damaged in the middle is refused too", async () => {
    const dataFolder = temporaryFolder();
    const app = await testApp({ dataFolder });
    for (let at = 0; at < 200; at += 1)
      await ask(app, "POST", "/api/bench/parts", { kind: "grip", note: "x".repeat(200) });
    await app.close();
    const file = join(dataFolder, "bench.sqlite");
    const bytes = readFileSync(file);
    bytes.fill(0xa5, 4096 * 3, 4096 * 8);
    writeFileSync(file, bytes);
    await expect(testApp({ dataFolder })).rejects.toThrow(/is damaged/);
    expect(readFileSync(file)).toEqual(bytes);
  });

  it("that cannot be a folder is refused with a way out", async () => {
    const inTheWay = join(temporaryFolder(), "file");
    writeFileSync(inTheWay, "");
    await expect(testApp({ dataFolder: inTheWay })).rejects.toThrow(
      /folder .* cannot be written .*FERRULE_DATA/,
    );
    await expect(testApp({ dataFolder: join(inTheWay, "below") })).rejects.toThrow(StartupProblem);
  });

  it("whose database cannot be opened is refused with a way out", async () => {
    const dataFolder = temporaryFolder();
    mkdirSync(join(dataFolder, "bench.sqlite"));
    await expect(testApp({ dataFolder })).rejects.toThrow(/bench\.sqlite is a folder.*FERRULE_DATA/);
  });

  it("from a newer version is left alone", async () => {
    const dataFolder = temporaryFolder();
    await (await testApp({ dataFolder })).close();
    const { openDatabase } = await import("../../packages/server/src/store/database.ts");
    const database = openDatabase(dataFolder);
    database.exec("PRAGMA user_version = 99");
    database.close();
    await expect(testApp({ dataFolder })).rejects.toThrow(/newer version of Ferrule/);
  });
});

describe("the environment", () => {
  it("has defaults for all that is left out", () => {
    const { port, host, dataFolder } = readEnvironment({ XDG_DATA_HOME: "/data" });
    expect({ port, host, dataFolder }).toEqual({
      port: 4310,
      host: "127.0.0.1",
      dataFolder: "/data/ferrule",
    });
    expect(readEnvironment({}).dataFolder).toMatch(/\.local[\\/]share[\\/]ferrule$/);
  });

  it("is read as it is set", () => {
    const env = {
      FERRULE_PORT: "0",
      FERRULE_HOST: "0.0.0.0",
      FERRULE_DATA: "/bench",
      FERRULE_ALLOWED_HOSTS: "shed.local, bench",
    };
    expect(readEnvironment(env)).toEqual({
      port: 0,
      host: "0.0.0.0",
      dataFolder: "/bench",
      allowedHosts: ["0.0.0.0", "shed.local", "bench"],
      dailyBackups: true,
    });
  });

  it.each(["http", "-1", "65536", "43.1"])("refuses the port %s in words", (port) => {
    expect(() => readEnvironment({ FERRULE_PORT: port })).toThrow(/whole number from 0 to 65535/);
  });

  it("leaves an unforeseen failure to listen as it is", () => {
    const error = new Error("odd");
    expect(listenProblem(error, "127.0.0.1", 1)).toBe(error);
  });
});

const start = fileURLToPath(new URL("./start-server.test-kit.mjs", import.meta.url));

/** The server as its own process, from source. */
function startServer(env: Record<string, string>) {
  const child = spawn(process.execPath, [start], {
    env: { ...process.env, ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const said = { out: "", err: "" };
  child.stdout.setEncoding("utf8").on("data", (text) => (said.out += text));
  child.stderr.setEncoding("utf8").on("data", (text) => (said.err += text));
  return { child, said, ended: once(child, "exit") };
}

async function until(isSo: () => boolean): Promise<void> {
  for (let tries = 0; tries < 1200 && !isSo(); tries += 1)
    await new Promise((resolve) => setTimeout(resolve, 50));
}

// A process of its own has to read the whole source first.
describe("the server's process", { timeout: 120_000 }, () => {
  it.each(["SIGTERM", "SIGINT"] as const)(
    "prints its address, shows the example, and ends cleanly by %s",
    async (signal) => {
      const { child, said, ended } = startServer({ FERRULE_PORT: "0", FERRULE_DATA: temporaryFolder() });
      await until(() => said.out.includes("http://") || child.exitCode !== null);
      const url = /http:\/\/127\.0\.0\.1:\d+\//.exec(said.out)?.[0];
      expect(said.err).toBe("");
      const health = await (await fetch(`${url}api/health`)).json();
      expect(health).toMatchObject({ ok: true, example: true });
      expect(health.parts).toBeGreaterThan(30);
      child.kill(signal);
      expect(await ended).toEqual([0, null]);
      expect(said.err).toBe("");
    },
  );

  it("says that an older bench is brought up to date and where it is kept, and makes the backup of the day", async () => {
    const folder = temporaryFolder();
    makeOlderBench(folder, 3);
    const { child, said, ended } = startServer({ FERRULE_PORT: "0", FERRULE_DATA: folder });
    const backups = join(folder, "backups");
    await until(
      () => namesIn(backups).some((name) => /^daily-.*sqlite$/.test(name)) || child.exitCode !== null,
    );
    expect(said.out).toMatch(
      /brought up to date \(schema 3 to \d+\); as it was before it is kept in .*before-schema/,
    );
    expect(said.out.indexOf("brought up to date")).toBeLessThan(said.out.indexOf("http://"));
    expect(namesIn(backups)).toEqual([
      expect.stringMatching(/^\d{4}-\d\d-\d\d-before-schema-\d+\.sqlite$/),
      expect.stringMatching(/^daily-\d{4}-\d\d-\d\d\.sqlite$/),
    ]);
    child.kill("SIGTERM");
    expect(await ended).toEqual([0, null]);
    expect(said.err).toBe("");
  });

  it("serves and says why where the backup of the day cannot be made", async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "backups"), "a file in the way");
    const { child, said, ended } = startServer({ FERRULE_PORT: "0", FERRULE_DATA: folder });
    await until(() => said.err !== "" || child.exitCode !== null);
    expect(said.err).toMatch(/^Today's backup of the bench could not be made: .*backups.*\n$/);
    const url = /http:\/\/127\.0\.0\.1:\d+\//.exec(said.out)?.[0];
    expect((await fetch(`${url}api/health`)).status).toBe(200);
    child.kill("SIGTERM");
    expect(await ended).toEqual([0, null]);
  });

  it("says in one line that the port is in use, and ends with 1", async () => {
    const other = createServer().listen(0, "127.0.0.1");
    await once(other, "listening");
    const { port } = other.address() as AddressInfo;
    const { said, ended } = startServer({ FERRULE_PORT: String(port), FERRULE_DATA: temporaryFolder() });
    expect(await ended).toEqual([1, null]);
    other.close();
    expect(said.out).toBe("");
    expect(said.err).toMatch(
      new RegExp(
        `^Ferrule cannot start\\. Port ${port} on 127\\.0\\.0\\.1 is in use .*FERRULE_PORT=${port + 1}\n$`,
      ),
    );
  });

  it("says in one line that the database is damaged, and ends with 1", async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "bench.sqlite"), "rust ".repeat(2000));
    const { said, ended } = startServer({ FERRULE_PORT: "0", FERRULE_DATA: folder });
    expect(await ended).toEqual([1, null]);
    expect(said.err).toMatch(/^Ferrule cannot start\. The bench's database .*bench\.sqlite is damaged .*\n$/);
    expect(said.err.trim().split("\n")).toHaveLength(1);
  });
});
