import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { ask, bondedShaft, looseParts, type TestApp, testApp } from "./server.test-kit.ts";

const csv = [
  "kind,id,massG,coreDiameterIn,hand,clubType",
  "grip,g1,50,0.6,,",
  'grip,g2,"fifty",0.6,,',
  "head,h1,200,,right,driver",
  "head,h2,200,,upwards,driver",
].join("\r\n");

const twoRefused = [
  { line: 3, column: "massG", got: '"fifty"', expected: "mass: a number from 0.5 to 1000 g" },
  { line: 5, column: "hand", got: '"upwards"', expected: expect.stringContaining('"right"') },
];

async function importText(app: TestApp, text: string, more: object = {}) {
  return ask(app, "POST", "/api/bench/import", { format: "csv", text, take: "good", ...more });
}

async function ids(app: TestApp): Promise<string[]> {
  return (await ask(app, "GET", "/api/bench/parts")).body.parts.map(({ id }: { id: string }) => id);
}

describe("import of CSV with bad rows", () => {
  it("takes the good rows and names every bad one by line and column", async () => {
    const app = await testApp();
    const { status, body } = await importText(app, csv);
    expect(status).toBe(200);
    expect(body).toEqual({ taken: 2, dryRun: false, refused: twoRefused });
    expect(await ids(app)).toEqual(["g1", "h1"]);
  });

  it("takes none when asked for all or none", async () => {
    const app = await testApp();
    expect((await importText(app, csv, { take: "all-or-none" })).body).toEqual({
      taken: 0,
      dryRun: false,
      refused: twoRefused,
    });
    expect(await ids(app)).toEqual([]);
    const goodOnly = csv.split("\r\n").slice(0, 2).join("\r\n");
    expect((await importText(app, goodOnly, { take: "all-or-none" })).body).toEqual({
      taken: 1,
      dryRun: false,
      refused: [],
    });
  });

  it("changes nothing in a dry run", async () => {
    const app = await testApp();
    expect((await importText(app, csv, { dryRun: true })).body).toEqual({
      taken: 2,
      dryRun: true,
      refused: twoRefused,
    });
    expect(await ids(app)).toEqual([]);
  });

  it.each([
    ["no column for the kind", "id,massG\ng1,50", { line: 1, column: "kind" }],
    ["a column twice", "kind,id,id\ngrip,a,b", { line: 1, column: "id" }],
    ["a kind that is none", "kind,id\nclub,c1", { line: 2, column: "kind", got: '"club"' }],
    ["a cell too many", "kind,id\ngrip,g1,50", { line: 2, column: "column 3", got: '"50"' }],
    ["a quote left open", 'kind,id\ngrip,"g1', { line: 2 }],
    ["an empty text", "", { line: 1 }],
    [
      "a line after a cell of several lines and a blank line",
      'kind,note\ngrip,"one\r\ntwo"\n\ngrip,ok\nclub,',
      { line: 6, column: "kind" },
    ],
    [
      "a fault that is none",
      "kind,faults\nhead,crack scorched",
      { line: 2, column: "faults.1", got: '"scorched"' },
    ],
    ["an id used twice", "kind,id\ngrip,g1\ngrip,g1", { line: 3, column: "id", got: '"g1"' }],
    [
      "a joint to a part that is not there",
      "kind,type,parts.0,parts.1\njoint,gripped,g1,s1",
      { line: 2, column: "parts.0", got: '"g1"' },
    ],
    [
      "a name that would change an object's nature",
      "kind,__proto__.x\ngrip,1",
      { line: 1, column: "__proto__.x" },
    ],
  ])("names the place of %s", async (_title, text, where) => {
    const app = await testApp();
    const { status, body } = await importText(app, text);
    expect(status).toBe(200);
    expect(body.refused[0]).toMatchObject(where);
    expect(body.refused[0].expected).not.toBe("");
  });

  it("does not take an id that is on the bench, unless it may replace", async () => {
    const app = await testApp();
    await ask(app, "POST", "/api/bench/parts", looseParts.grip);
    const row = "kind,id,massG\ngrip,g1,48";
    expect((await importText(app, row)).body.refused[0]).toMatchObject({
      line: 2,
      column: "id",
      got: '"g1"',
    });
    expect((await importText(app, row, { existing: "replace" })).body).toMatchObject({
      taken: 1,
      refused: [],
    });
    expect((await ask(app, "GET", "/api/bench/parts/g1")).body).toEqual({
      id: "g1",
      kind: "grip",
      massG: 48,
    });
  });

  it("understands semicolons, as spreadsheets write them where the comma is in the numbers", async () => {
    const app = await testApp();
    expect((await importText(app, "\ufeffkind;id;massG\ngrip;g1;50")).body).toMatchObject({
      taken: 1,
      refused: [],
    });
    expect((await importText(app, "kind;id;massG\ngrip;g2;50,5")).body).toMatchObject({
      taken: 1,
      refused: [],
    });
  });

  it("refuses a request that is not one, by field", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/bench/import", {
      format: "pdf",
      text: "",
      take: "good",
    });
    expect(status).toBe(400);
    expect(body.error.refusals).toEqual([{ field: "format", got: '"pdf"', expected: "csv or json" }]);
  });
});

describe("import of JSON", () => {
  const text = JSON.stringify(
    { parts: [looseParts.grip, { ...looseParts.shaft, massG: -1 }], joints: [bondedShaft] },
    null,
    2,
  );

  it("names the line and the field of what it does not take", async () => {
    const app = await testApp();
    const { body } = await importText(app, text, { format: "json" });
    const line = text.split("\n").findIndex((one) => one.includes('"massG": -1')) + 1;
    expect(body.taken).toBe(1);
    expect(body.refused[0]).toMatchObject({ line, column: "massG", got: "-1" });
    // The joint is left without its shaft.
    expect(body.refused[1]).toMatchObject({ column: "parts.0", got: '"a1"' });
    expect(
      (await importText(await testApp(), text, { format: "json", take: "all-or-none" })).body.taken,
    ).toBe(0);
  });

  it.each([
    ["text that stops", '{\n  "parts": [\n', { line: 3, got: "the end of the text" }],
    ["text that is not JSON", '{\n  "parts": [}', { line: 2, column: "character 13", got: '"}"' }],
    [
      "lists too deep in one another",
      "[".repeat(10_000),
      {
        line: 1,
        column: "character 102",
        got: JSON.stringify("[".repeat(20)),
        expected: "JSON at most 100 lists and objects deep",
      },
    ],
    ["a control character in a text", '[{"id": "a\u0001"}]', { line: 1, column: "character 11" }],
    ["a number alone", "7", { line: 1, got: "7" }],
    ["a list that is none", '{\n"parts": 3}', { line: 2, column: "parts", got: "3" }],
    ["a field we do not know", '{\n\n"bits": []}', { line: 3, column: "bits" }],
  ])("says where there is %s", async (_title, broken, where) => {
    const app = await testApp();
    expect((await importText(app, broken, { format: "json" })).body.refused[0]).toMatchObject(where);
  });

  it("takes a bare list for parts", async () => {
    const app = await testApp();
    const { body } = await importText(app, JSON.stringify([looseParts.grip]), { format: "json" });
    expect(body).toEqual({ taken: 1, dryRun: false, refused: [] });
  });
});

/** A bench with something awkward in every corner. */
const awkward = {
  parts: [
    {
      ...looseParts.head,
      massG: { value: 200.5, plusMinus: 0.5, source: "measured" },
      loftDeg: { value: 10.5, source: "catalogue" },
      faceAngleDeg: -1.5,
      maker: "=cmd|' /C calc'!A0",
      model: "'=2+3",
      note: 'two\nlines, a "quote" and a comma',
      clubNumber: "3",
      faults: ["sky-mark", "rust"],
      deniedFaults: ["crack"],
      paid: { amountMinor: 2800, currency: "EUR" },
      acquiredOn: "2026-05-31",
    },
    { ...looseParts.adapter, note: "-12" },
    { ...looseParts.shaft, note: "+ two", rack: "007", shelf: 7, bent: false, drawer: { row: 2 } },
    { ...looseParts.grip, ribbed: true, note: "@home", model: "\tindented" },
    { id: "c1", kind: "cover", clubType: "driver" },
    { id: "w1", kind: "wrench", family: "Quillon 2" },
  ],
  joints: [bondedShaft],
  claims: [
    {
      id: "cl1",
      receiver: "Quillon 2",
      adapter: "Quillon 1",
      verdict: "fits",
      evidence: "tried",
      on: "2026-05-01",
    },
  ],
  goal: {
    skill: "bond",
    localRule46: true,
    targets: { driver: { playingLengthIn: 45, swingWeightPoints: 32 } },
  },
};

describe("import of CSV with a column too deep", () => {
  it("refuses the column", async () => {
    const app = await testApp();
    const { status, body } = await importText(app, `kind,id,${"a.".repeat(20_000)}b\r\ngrip,g1,1`);
    expect(status).toBe(200);
    expect(body).toMatchObject({ taken: 0, refused: [{ line: 1, got: "a name that no field has" }] });
  });
});

describe("export and import", () => {
  it("read the examples of docs/csv.md as they stand there", async () => {
    const page = readFileSync(new URL("../../docs/csv.md", import.meta.url), "utf8");
    const examples = [...page.matchAll(/```(csv|json)\n(.*?)```/gs)].map(([, format, text = ""]) => ({
      format,
      text,
    }));
    const isOf = (columns: string) => (example: { text: string }) => example.text.startsWith(columns);
    const [prices, listings] = [examples.filter(isOf("on,")), examples.filter(isOf("title,"))];
    expect([examples.length, prices.length, listings.length]).toEqual([4, 1, 1]);
    for (const example of examples) {
      const { format, text } = example;
      const app = await testApp();
      await ask(app, "POST", "/api/bench/parts", { ...looseParts.shaft, id: "S1" });
      if (listings.includes(example)) {
        const { status, body } = await ask(app, "POST", "/api/batches", { format, text });
        expect([status, body.total]).toEqual([202, 1]);
        continue;
      }
      const list = prices.includes(example) ? "evidence" : "bench";
      const { body } = await ask(app, "POST", `/api/${list}/import`, { format, text, take: "all-or-none" });
      expect(body).toEqual({ taken: format === "csv" ? 2 : 4, dryRun: false, refused: [] });
    }
  });

  it.each(["csv", "json"])("bring the whole bench back through %s", async (format) => {
    const from = await testApp();
    expect((await importText(from, JSON.stringify(awkward), { format: "json" })).body.refused).toEqual([]);
    const exported = await ask(from, "GET", `/api/bench/export.${format}`);
    expect(exported.status).toBe(200);
    expect(exported.headers["content-disposition"]).toContain(`ferrule-bench.${format}`);
    const text = format === "csv" ? exported.body : JSON.stringify(exported.body);
    const into = await testApp();
    expect((await importText(into, text, { format, take: "all-or-none" })).body).toEqual({
      taken: 9,
      dryRun: false,
      refused: [],
    });
    const { parts, joints, claims, goal } = (await ask(into, "GET", "/api/bench")).body;
    const byId = (list: { id: string }[]) => [...list].sort((a, b) => a.id.localeCompare(b.id));
    expect(byId(parts)).toEqual(byId(awkward.parts));
    expect({ joints, claims, goal }).toEqual({
      joints: awkward.joints,
      claims: awkward.claims,
      goal: awkward.goal,
    });
  });

  it("writes a reading as three columns and no cell that a spreadsheet would calculate", async () => {
    const app = await testApp();
    await importText(app, JSON.stringify(awkward), { format: "json" });
    const { body } = await ask(app, "GET", "/api/bench/export.csv?kind=head");
    const [header, row] = body.split("\r\n");
    expect(header).toContain("massG,massG.plusMinus,massG.source");
    expect(row).toContain("200.5,0.5,measured");
    expect(row).toContain("'=cmd|' /C calc'!A0");
    expect(row).toContain(",-1.5,");
    expect(body).not.toContain("grip");
  });

  it("refuses a kind that is none", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "GET", "/api/bench/export.csv?kind=club");
    expect(status).toBe(400);
    expect(body.error.refusals[0]).toMatchObject({ field: "kind", got: '"club"' });
  });
});
