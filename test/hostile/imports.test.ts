import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ferrule } from "../../packages/server/src/command-line/terminal.test-kit.ts";
import { ask, looseParts, openTestApp, type TestApp } from "../api/server.test-kit.ts";
import { asked, emptyListing, entry, model } from "../api/trade.test-kit.ts";
import { foldersOf } from "./folders.ts";
import { hostileTexts } from "./hostile-values.ts";

const folders = foldersOf();
let app: TestApp;
beforeAll(async () => {
  app = await openTestApp();
});
afterAll(async () => {
  await app.close();
  folders.remove();
});

const put = (text: string, more: object = {}, url = "/api/bench/import") =>
  ask(app, "POST", url, { format: "csv", text, take: "good", existing: "replace", ...more });
const part = async (id: string) => (await ask(app, "GET", `/api/bench/parts/${id}`)).body;

describe("a file in another encoding", () => {
  const text = "kind,id,maker,note\r\ngrip,E1,Haldenbach,müde – 3 €\r\n";
  const wide = (mark: boolean) => Buffer.from(`${mark ? "\ufeff" : ""}${text}`, "utf16le");
  const windows = Buffer.from(text.replace("–", "\u0096").replace("€", "\u0080"), "latin1");

  it.each([
    ["UTF-8", Buffer.from(text)],
    ["UTF-8 with a mark", Buffer.from(`\ufeff${text}`)],
    ["UTF-16, the low byte first", wide(true)],
    ["UTF-16, the high byte first", Buffer.from(wide(true)).swap16()],
    ["Windows-1252", windows],
  ])("is brought in from %s with every sign as it was", async (_title, bytes) => {
    const data = join(folders.make(), "bench");
    const said = await ferrule(["import", "-", "--format", "csv"], { input: bytes, data });
    expect([said.err, said.exit]).toEqual(["", 0]);
    const exported = await ferrule(["export", "--format", "csv"], { data });
    expect(exported.out).toContain("müde – 3 €");
  });

  it.each([
    ["UTF-16 without a mark", wide(false)],
    ["a picture", Buffer.from("89504e470d0a1a0a0000000d49484452", "hex")],
  ])("is refused where it is %s, and no bench is made", async (_title, bytes) => {
    const data = join(folders.make(), "bench");
    const said = await ferrule(["import", "-"], { input: bytes, data });
    expect(said.exit).not.toBe(0);
    expect(said.err + said.out).toContain("bytes that are no text");
  });
});

describe("a CSV in another dialect", () => {
  it.each([
    ["semicolons and decimal commas", 'kind;id;massG;note\r\ngrip;D1;"50,5";"a;b"\r\n', "a;b"],
    ["semicolons and points", "kind;id;massG;note\r\ngrip;D1;50.5;a,b\r\n", "a,b"],
    ["tabs", "kind\tid\tmassG\tnote\r\ngrip\tD1\t50.5\ta,b;c\r\n", "a,b;c"],
    ["carriage returns alone", "kind,id,massG,note\rgrip,D1,50.5,a\r", "a"],
    ["line feeds alone", "kind,id,massG,note\ngrip,D1,50.5,a", "a"],
    [
      "line breaks and quotes within quotes",
      'kind,id,massG,note\r\ngrip,D1,50.5,"a\r\n""b"""\r\n',
      'a\r\n"b"',
    ],
    ["a mark and blank lines", "\ufeffkind,id,massG,note\n\n,,,\ngrip,D1,50.5,a\n\n", "a"],
    ["a comma within a quoted name of a column", 'kind;id;massG;note;"x,y,z,w,v"\ngrip;D1;50,5;a;\n', "a"],
  ])("with %s is read as it is meant", async (_title, text, note) => {
    expect((await put(text)).body).toEqual({ taken: 1, dryRun: false, refused: [] });
    expect(await part("D1")).toMatchObject({ massG: 50.5, note });
  });

  it.each([
    ['kind,id,massG\ngrip,D2,"50,5"\n', "massG", '"50,5"'],
    ["kind\tid\tmassG\ngrip\tD2\t1,250\n", "massG", '"1,250"'],
    ["kind;id;massG\ngrip;D2;1.250,50\n", "massG", '"1.250,50"'],
  ])("%j is refused where a comma could mean two things", async (text, column, got) => {
    const { body } = await put(text);
    expect(body).toMatchObject({ taken: 0, refused: [{ line: 2, column, got }] });
  });

  it.each([
    ["a quote left open", 'kind,id\ngrip,"D3\n'],
    ["a quote in the middle", 'kind,id\ngrip,D"3\n'],
    ["a column twice", "kind,id,id\ngrip,D3,D4\n"],
    ["a column of all objects", "kind,id,__proto__.x\ngrip,D3,1\n"],
    ["more columns than anything has", `kind,id,${"x,".repeat(3000)}y\ngrip,D3\n`],
  ])("with %s is refused whole, by line", async (_title, text) => {
    const { status, body } = await put(text);
    expect([status, body.taken]).toEqual([200, 0]);
    expect(body.refused[0]).toMatchObject({
      line: expect.any(Number),
      expected: expect.stringMatching(/\S/),
    });
    expect((await ask(app, "GET", "/api/bench/parts/D3")).status).toBe(404);
  });
});

describe("JSON that is brought in", () => {
  it.each([
    ["a name twice", '{"parts":[{"id":"J1","kind":"grip","kind":"cover"}]}', "each name once in an object"],
    ["half a character", '{"parts":[{"id":"\\ud800","kind":"grip"}]}', "whole characters"],
    ["a number without end", '{"parts":[{"id":"J1","kind":"grip","massG":1e400}]}', "0.5 to 1000 g"],
    ["no number", '{"parts":[{"id":"J1","kind":"grip","massG":NaN}]}', "JSON"],
    ["lists without end", `{"parts":${"[".repeat(50_000)}`, "100 lists and objects deep"],
    [
      "a prototype",
      '{"parts":[{"id":"J1","kind":"grip","massG":-1,"__proto__":{"massG":5}}]}',
      "0.5 to 1000 g",
    ],
  ])("with %s is refused, with the place and what was expected", async (_title, text, expected) => {
    const { status, body } = await put(text, { format: "json" });
    expect([status, body.taken]).toEqual([200, 0]);
    expect(JSON.stringify(body.refused)).toContain(expected);
  });

  it("takes the first of two things with one id, and names the other", async () => {
    const parts = [
      { id: "J2", kind: "grip", massG: 50 },
      { id: "J2", kind: "grip", massG: 60 },
    ];
    const { body } = await put(JSON.stringify({ parts }), { format: "json" });
    expect(body).toMatchObject({ taken: 1, refused: [{ column: "id", got: '"J2"' }] });
    expect((await part("J2")).massG).toBe(50);
    expect((await put(JSON.stringify({ parts }), { format: "json", take: "all-or-none" })).body.taken).toBe(
      0,
    );
  });

  it("never joins parts in a circle, nor one to itself, and still finds clubs after trying", async () => {
    await put(JSON.stringify({ parts: Object.values(looseParts) }), { format: "json" });
    const types = ["screwed", "bonded", "gripped"];
    const ids = ["h1", "a1", "s1", "g1"];
    const joints = types.flatMap((type) =>
      ids.flatMap((one) =>
        ids.map((other) => ({ id: `${type}-${one}-${other}`, type, parts: [one, other] })),
      ),
    );
    const { status, body } = await put(JSON.stringify({ joints }), { format: "json" });
    expect(status).toBe(200);
    const kept = (await ask(app, "GET", "/api/bench/joints")).body.joints as { parts: [string, string] }[];
    expect(body.taken).toBe(kept.length);
    expect(kept.length).toBeLessThan(ids.length);
    expect(kept.filter(({ parts: [one, other] }) => one === other)).toEqual([]);
    expect((await ask(app, "GET", "/api/bench/resolve")).status).toBe(200);
  });
});

describe("a file that is far too large", () => {
  const megabytes = (bytes: number) => bytes / 1024 / 1024;

  it("of 50 MB is refused by the API before it is read, and costs little memory", async () => {
    const payload = Buffer.alloc(50 * 1024 * 1024, "x");
    const before = process.memoryUsage().rss;
    const started = performance.now();
    const reply = await app.inject({
      method: "POST",
      url: "/api/bench/import",
      headers: { "content-type": "application/json" },
      payload,
    });
    expect([reply.statusCode, reply.json().error]).toEqual([
      413,
      { code: "too-large", message: "The request is larger than 8 MB" },
    ]);
    expect(performance.now() - started).toBeLessThan(5000);
    expect(megabytes(process.memoryUsage().rss - before)).toBeLessThan(150);
  });

  it("of more than 50 MB is refused by the command line before it is read", async () => {
    const folder = folders.make();
    mkdirSync(join(folder, "data"));
    writeFileSync(join(folder, "large.csv"), Buffer.alloc(50_000_001, "x"));
    const started = performance.now();
    const said = await ferrule(["import", join(folder, "large.csv")], { data: join(folder, "data") });
    expect(said.exit).not.toBe(0);
    expect(said.err + said.out).toContain("at most 50000000 bytes");
    expect(performance.now() - started).toBeLessThan(5000);
  });

  /** Many bytes, in the shapes that cost a careless reader most. */
  const size = 3_000_000;
  it.each([
    ["rows", "csv", `kind,id\n${"grip,\n".repeat(size / 6)}`],
    ["columns", "csv", `kind,${Array.from({ length: size / 8 }, (_, at) => `c${at}`).join(",")}\n`],
    ["wide rows", "csv", `kind,${"a,".repeat(size / 4)}\n${"x\n".repeat(size / 4)}`],
    ["one quoted cell", "csv", `kind,id\ngrip,"${"x".repeat(size)}`],
    ["numbers", "json", `[${"1,".repeat(size / 2 - 1)}1]`],
    ["long names in one another", "json", `${`{"${"n".repeat(70_000)}":`.repeat(90)}1${"}".repeat(90)}`],
    [
      "a long path to many things",
      "json",
      `${`{"${"n".repeat(20_000)}":`.repeat(90)}[${"1,".repeat(size / 4)}1]${"}".repeat(90)}`,
    ],
    ["unknown names", "json", `{${Array.from({ length: size / 10 }, (_, at) => `"${at}":1`).join(",")}}`],
  ])("of 3 MB of %s is refused or taken in time", async (_title, format, text) => {
    const started = performance.now();
    const { status, body } = await put(text, { format, dryRun: true });
    expect(status, JSON.stringify(body).slice(0, 300)).toBeLessThan(500);
    expect(performance.now() - started).toBeLessThan(30_000);
    expect(body.refused.length).toBeGreaterThan(0);
  });
});

describe("every export as CSV", () => {
  /** What a spreadsheet would calculate, and what only looks like it. Source: OWASP, "CSV Injection". */
  const formulas = [
    "=1+1",
    "+1+1",
    "-1+1",
    "@A1",
    "\t=1",
    "\r=1",
    "\n=1",
    "  =1",
    "'=1",
    "''@A1",
    "\uff1d1",
    "\uff20A1",
  ];
  const texts = [
    ...formulas,
    ...hostileTexts.filter((text) => !/\p{Surrogate}/u.test(text) && text.length < 80 && text.trim() !== ""),
  ];

  /** The cells as RFC 4180 writes them. */
  const cellsOf = (csv: string) =>
    [...csv.matchAll(/(?:^|,|\r\n)(?:"((?:[^"]|"")*)"|([^",\r\n]*))/g)].map(
      ([, quoted, plain = ""]) => quoted?.replaceAll('""', '"') ?? plain,
    );
  const isCalculated = (cell: string) =>
    /^[\s']*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/u.test(cell) &&
    !cell.startsWith("'") &&
    !/^[+-]?[\d.]+(e[+-]?\d+)?$/i.test(cell);

  const lists = [
    {
      url: "/api/bench",
      list: "parts",
      thing: (text: string, id: string) => ({
        id,
        kind: "grip",
        note: text,
        maker: text,
        model: text,
        shelf: text,
        [`x${text.replaceAll(".", "").trim()}`]: "y",
      }),
    },
    {
      url: "/api/catalogue",
      list: "models",
      thing: (text: string, id: string) => ({
        ...model,
        id,
        maker: text,
        model: text,
        aliases: [text.replaceAll(";", "")],
      }),
    },
    {
      url: "/api/evidence",
      list: "evidence",
      thing: (text: string, id: string) => ({ ...asked, id, note: text, maker: text, model: text }),
    },
    {
      url: "/api/books",
      list: "entries",
      thing: (text: string, id: string) => ({ ...entry, id, note: text, club: text }),
    },
  ];

  it.each(lists)(
    "of $url has no cell that a spreadsheet calculates, and comes back as it was",
    async ({ url, list, thing }) => {
      const first = await openTestApp();
      const second = await openTestApp();
      try {
        const things = texts.map((text, at) =>
          thing(text, `${formulas[at % formulas.length]?.trim()} ${at}`),
        );
        const into = (one: TestApp, format: string, text: string) =>
          ask(one, "POST", `${url}/import`, { format, text, take: "all-or-none" });
        expect((await into(first, "json", JSON.stringify({ [list]: things }))).body.refused).toEqual([]);
        const csv = (await ask(first, "GET", `${url}/export.csv`)).body as string;
        expect(cellsOf(csv).filter(isCalculated)).toEqual([]);
        expect((await into(second, "csv", csv)).body).toEqual({
          taken: things.length,
          dryRun: false,
          refused: [],
        });
        const view = async (one: TestApp) => (await ask(one, "GET", url)).body;
        expect((await view(second))[list]).toEqual((await view(first))[list]);
      } finally {
        await first.close();
        await second.close();
      }
    },
  );

  it("of the log has no such cell either", async () => {
    for (const [at, text] of texts.entries())
      await ask(app, "POST", "/api/sightings", {
        id: `log-${at}`,
        seenOn: "2026-11-20",
        text,
        note: text,
        place: text,
        read: emptyListing,
        listing: emptyListing,
        outcome: "open",
      });
    const cells = cellsOf((await ask(app, "GET", "/api/sightings/export.csv")).body);
    expect(cells.length).toBeGreaterThan(texts.length * 4);
    expect(cells.filter(isCalculated)).toEqual([]);
  });
});
