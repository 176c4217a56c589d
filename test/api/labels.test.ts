import { describe, expect, it } from "vitest";
import {
  ask,
  bondedShaft,
  looseParts,
  openTestApp,
  type TestApp,
  temporaryFolder,
  testApp,
} from "./server.test-kit.ts";

async function bench(app: TestApp) {
  for (const part of Object.values(looseParts)) await ask(app, "POST", "/api/bench/parts", part);
  await ask(app, "POST", "/api/bench/joints", bondedShaft);
}

const labelsOf = async (app: TestApp) => (await ask(app, "GET", "/api/labels")).body.labels;
const codeOf = async (app: TestApp, part: string) =>
  (await labelsOf(app)).find((label: { part: string }) => label.part === part)?.code as string;

describe("labels", () => {
  it("are one for each thing, and what is joined goes by one of its parts", async () => {
    const app = await testApp();
    await bench(app);
    expect(await labelsOf(app)).toMatchObject([
      { part: "h1", joined: [], printed: false },
      { part: "s1", joined: ["a1"], printed: false },
      { part: "g1", joined: [], printed: false },
    ]);
  });

  it("leave out what is sold, whose code is found all the same", async () => {
    const app = await testApp();
    await bench(app);
    const code = await codeOf(app, "g1");
    await ask(app, "PUT", "/api/bench/parts/g1", { ...looseParts.grip, soldOn: "2026-11-20" });
    expect(await codeOf(app, "g1")).toBeUndefined();
    expect((await ask(app, "GET", `/api/codes/${code}`)).body).toEqual({ code, part: "g1", near: [] });
  });

  it("keep which have been printed, and forget it when told", async () => {
    const app = await testApp();
    await bench(app);
    const [h1, g1] = [await codeOf(app, "h1"), await codeOf(app, "g1")];
    const mark = (codes: string[], printed: boolean) =>
      ask(app, "POST", "/api/labels/printed", { codes, printed });
    const printedOf = (labels: { part: string; printed: boolean }[]) =>
      labels.filter(({ printed }) => printed).map(({ part }) => part);
    expect(printedOf((await mark([h1, g1], true)).body.labels)).toEqual(["h1", "g1"]);
    expect(printedOf((await mark([g1], false)).body.labels)).toEqual(["h1"]);
    expect(printedOf(await labelsOf(app))).toEqual(["h1"]);
    expect((await mark([h1, "ZZZZZ"], false)).status).toBe(404);
    expect(printedOf(await labelsOf(app))).toEqual(["h1"]);
  });

  it("are laid out as somebody sets them, and no wider than paper is", async () => {
    const app = await testApp();
    const setup = {
      ...(await ask(app, "GET", "/api/labels")).body.setup,
      paper: "roll",
      widthMm: 62,
      heightMm: 29,
    };
    expect((await ask(app, "PUT", "/api/labels/setup", setup)).body).toEqual(setup);
    expect((await ask(app, "GET", "/api/labels")).body.setup).toEqual(setup);
    const wide = await ask(app, "PUT", "/api/labels/setup", { ...setup, widthMm: 900 });
    expect(wide.status).toBe(400);
    expect(wide.body.error.refusals[0]).toMatchObject({ field: "widthMm", got: "900" });
  });

  it("carry no address that only this machine could open, and the network's where there is one", async () => {
    const names = () => ["bench.example"];
    const network = { names, urls: () => ["https://192.168.1.20:4311"], certificate: () => ({}) as never };
    expect((await ask(await testApp(), "GET", "/api/labels")).body.address).toBeNull();
    expect((await ask(await testApp({ network }), "GET", "/api/labels")).body.address).toBe(
      "https://192.168.1.20:4311",
    );
    const named = await testApp({ allowedHosts: ["bench.example"] });
    const reply = await named.inject({ url: "/api/labels", headers: { host: "bench.example:4310" } });
    expect(reply.json().address).toBe("http://bench.example:4310");
  });
});

describe("a code", () => {
  it("finds its part as it is typed, and outlasts a restart", async () => {
    const dataFolder = temporaryFolder();
    const first = await openTestApp({ dataFolder });
    await bench(first);
    const code = await codeOf(first, "h1");
    await first.close();
    const second = await testApp({ dataFolder });
    expect(await codeOf(second, "h1")).toBe(code);
    const typed = encodeURIComponent(` ${code.slice(0, 3).toLowerCase()} ${code.slice(3)}`);
    expect((await ask(second, "GET", `/api/codes/${typed}`)).body).toEqual({ code, part: "h1", near: [] });
    const scanned = encodeURIComponent(`https://192.168.1.20:4311/code/${code}`);
    expect((await ask(second, "GET", `/api/codes/${scanned}`)).body.part).toBe("h1");
  });

  it("of a part that is not known to have it leads to those one slip away", async () => {
    const app = await testApp();
    await bench(app);
    const code = await codeOf(app, "s1");
    const misread = (code[0] === "7" ? "8" : "7") + code.slice(1);
    expect((await ask(app, "GET", `/api/codes/${misread}`)).body).toEqual({
      code: misread,
      part: null,
      near: [{ code, part: "s1" }],
    });
    expect((await ask(app, "GET", "/api/codes/tarn")).body).toEqual({ code: "tarn", part: null, near: [] });
  });

  it("comes back with a part whose delete is undone, and is never another's", async () => {
    const app = await testApp();
    await bench(app);
    const code = await codeOf(app, "h1");
    await ask(app, "DELETE", "/api/bench/parts/h1");
    expect((await ask(app, "GET", `/api/codes/${code}`)).body.part).toBeNull();
    await ask(app, "POST", "/api/bench/undo");
    expect(await codeOf(app, "h1")).toBe(code);
    await ask(app, "DELETE", "/api/bench/parts/h1");
    await ask(app, "POST", "/api/bench/parts", looseParts.head);
    expect(await codeOf(app, "h1")).not.toBe(code);
  });
});
