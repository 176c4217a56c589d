import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { closeDatabase, openDatabase } from "../store/database.ts";
import { openTables } from "../store/tables.ts";
import { ferrule, temporaryFolder } from "./terminal.test-kit.ts";

const listing = "Driver head only, right handed, 10.5 degrees, 50 euros";
const demoBench = new URL("../../../../data/demo/bench.json", import.meta.url).pathname;

/** A file with this text. */
function file(name: string, text: string | Uint8Array): string {
  const path = join(temporaryFolder(), name);
  writeFileSync(path, text);
  return path;
}

describe("wrong use", () => {
  it.each<[string, string]>([
    ["frob", 'no command "frob". There are read, judge'],
    ["help frob", 'no command "frob"'],
    ["judge --frob", "unknown option '--frob'"],
    ["judge --km", "--km"],
    ["judge --km far", '--km is "far", expected a number from 0 to 5000'],
    ["judge --km 5001", "from 0 to 5000"],
    ["judge --sighting L01 listing.txt", "files or --sighting, got both"],
    ["judge --today 2026-02-30", "expected a date such as 2026-11-25"],
    ["judge - --bench -", "standard input (-) can be given once"],
    ["resolve one.json two.json", 'expected [FILE], got "one.json" "two.json"'],
    ["resolve one.json --bench two.json", "a file or --bench, got both"],
    ["resolve --skill wizard", "expected one of screw, regrip, bond, machine"],
    ["resolve --limit 0", "from 1 to 5000"],
    ["plan bench.json", 'got "bench.json"'],
    ["plan --most driver", "such as driver=2"],
    ["plan --most spoon=2", "such as driver=2"],
    ["plan --seconds 61", "from 1 to 60"],
    ["import", "expected FILE, got nothing"],
    ["import - --list sightings", "expected one of bench, catalogue, evidence, books"],
    ["import - --format xml", "expected one of csv, json"],
    ["export --list log", "expected one of bench, catalogue, evidence, books, sightings"],
    ["export --kind shaft --format json", "--kind goes with the bench as CSV"],
    ["export --kind shaft --list books", "--kind goes with the bench as CSV"],
    ["export my.json --json", "goes with neither a file nor CSV"],
    ["backup", "expected FILE, got nothing"],
    ["restore", "expected FILE, got nothing"],
  ])("%j ends with 2, says why in one line, and leaves standard output empty", async (line, why) => {
    // Options are looked at before the bench, or on an empty one, so that nothing has to be there.
    const data = temporaryFolder();
    const database = openDatabase(data);
    openTables(database).settings.markExample(false);
    closeDatabase(database);
    const { exit, out, err } = await ferrule(line.split(" "), { data, input: listing });
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(err).toContain(why);
    expect(err.trim().split("\n")).toHaveLength(1);
  });

  it("of no command at all shows the help on standard error", async () => {
    const { exit, out, err } = await ferrule([]);
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(err).toContain("Use: ferrule COMMAND");
  });
});

describe("input that has to be put right", () => {
  it.each<[string, string[], string, string]>([
    ["a file that is not there", ["read", "nowhere.txt"], "", "nowhere.txt: got no such file"],
    ["a folder for a file", ["read", "/"], "", "/: got a folder"],
    ["no words", ["read"], " \n", "standard input: got nothing, expected the words of a listing"],
    ["too many words", ["judge"], "x".repeat(20_001), "got 20001 characters"],
  ])("%s ends with 1 and names the place", async (_words, args, input, why) => {
    const { exit, out, err } = await ferrule(args, { input });
    expect({ exit, out }).toEqual({ exit: 1, out: "" });
    expect(err).toContain(why);
  });

  it.each([
    ["not JSON at all", "bench.json", '{\n  "parts": [,]\n}', "line 2, character 13: got"],
    [
      "a wrong figure",
      "bench.json",
      '{\n"parts": [\n{"id":"G1","kind":"grip","massG":"fifty"}]}',
      'line 3, massG: got "fifty"',
    ],
    [
      "a part that a joint lacks",
      "bench.json",
      '{"parts":[],"joints":[{"id":"J","type":"bonded","parts":["A","S"]}]}',
      "line 1, parts",
    ],
    ["a wrong cell", "bench.csv", "kind,id,massG\ngrip,G1,fifty\n", 'line 2, massG: got "fifty"'],
    ["an id twice", "bench.csv", "kind,id\ngrip,G1\ngrip,G1\n", "line 3, id"],
    ["no columns that we know", "bench.csv", "name;weight\ngrip;50\n", "line 1, kind"],
    ["a field of nobody's", "bench.json", '{"parts":[],\n"joint":[]}', "line 2, joint"],
  ])("a bench with %s is refused by its line", async (_words, name, text, why) => {
    const { exit, out, err } = await ferrule(["resolve", "--bench", file(name, text)]);
    expect({ exit, out }).toEqual({ exit: 1, out: "" });
    expect(err).toContain("cannot be taken for a bench");
    expect(err).toContain(why);
  });

  it.each([
    ["--catalogue", "models.csv", "kind,maker,model\nhead,Northmoor,\n", "line 2, model"],
    [
      "--evidence",
      "prices.json",
      '{"evidence":[\n{"on":"yesterday","what":"sold","kind":"club"}]}',
      "line 2, on",
    ],
    ["--sightings", "log.csv", "id,seenOn\n", "got CSV, expected JSON"],
    ["--costs", "costs.json", '{\n"currency": 5}', "line 2, currency"],
    ["--costs", "costs.json", "{currency}", "line 1, character 2"],
  ])("a file after %s is refused by its line (%s)", async (option, name, text, why) => {
    const bench = file("bench.json", '{"parts":[]}');
    const { exit, out, err } = await ferrule(["judge", "--bench", bench, option, file(name, text)], {
      input: listing,
    });
    expect({ exit, out }).toEqual({ exit: 1, out: "" });
    expect(err).toContain(why);
  });

  it("is read in Windows-1252 where it is not UTF-8, and refused where it is no text at all", async () => {
    // The pound sign is A3 there (WHATWG Encoding Standard, index windows-1252).
    const pounds = await ferrule(["read", "--json"], {
      input: new Uint8Array([...new TextEncoder().encode("driver head 50 "), 0xa3]),
    });
    expect(pounds.exit).toBe(0);
    expect(pounds.out).toContain('"GBP"');
    const { exit, err } = await ferrule(["read"], { input: new Uint8Array([0x35, 0x30, 0x00, 0x01, 0xa3]) });
    expect(exit).toBe(1);
    expect(err).toContain("standard input: got bytes that are no text");
  });

  it("is told as JSON with --json, in the shape of the HTTP interface", async () => {
    const { exit, out, err } = await ferrule(["read", "nowhere.txt", "--json"]);
    expect({ exit, out }).toEqual({ exit: 1, out: "" });
    expect(JSON.parse(err)).toEqual({
      error: {
        code: "bad-request",
        message: "nowhere.txt cannot be read",
        refusals: [{ field: "nowhere.txt", got: "no such file", expected: "a file that can be read" }],
      },
    });
  });
});

describe("without a bench", () => {
  it.each([["judge"], ["resolve"], ["plan"], ["export"], ["backup", "copy.sqlite"]])(
    "%s says how one comes to be, and makes none",
    async (...args) => {
      const data = join(temporaryFolder(), "none");
      const { exit, out, err } = await ferrule(args, { data, input: listing });
      expect({ exit, out }).toEqual({ exit: 1, out: "" });
      expect(err).toContain(`no bench in ${data} yet`);
      expect(existsSync(data)).toBe(false);
    },
  );

  it.each([
    ["a file in which nothing is good", ["-"], "kind,massG\ngrip,fifty\n", 1],
    ["a trial", ["-", "--dry-run"], "kind,massG\ngrip,50\n", 0],
  ])("import of %s makes none either", async (_words, args, input, ends) => {
    const data = join(temporaryFolder(), "none");
    const { exit, out } = await ferrule(["import", ...args, "--json"], { data, input });
    expect(exit).toBe(ends);
    expect(JSON.parse(out).taken).toBe(1 - ends);
    expect(existsSync(data)).toBe(false);
  });

  it("import of something good makes one of your own", async () => {
    const data = join(temporaryFolder(), "made", "here");
    const { exit, err } = await ferrule(["import", demoBench], { data });
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    const { out } = await ferrule(["export"], { data });
    expect(JSON.parse(out)).toEqual(JSON.parse(readFileSync(demoBench, "utf8")));
    expect(out).toBe(`${JSON.stringify(JSON.parse(out), null, 2)}\n`);
  });

  it("read goes on without models, and says so beside the answer", async () => {
    const { exit, out, err } = await ferrule(["read"], { input: listing });
    expect(exit).toBe(0);
    expect(out).toContain("For sale at 50.00 EUR");
    expect(err).toContain("no models are known");
  });

  it("--bench is enough, and nothing is made", async () => {
    const data = join(temporaryFolder(), "none");
    const { exit, err } = await ferrule(["resolve", "--bench", demoBench], { data });
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    expect(existsSync(data)).toBe(false);
  });
});

describe("a bench of another version", () => {
  it.each([
    [1, "an older version", "Start Ferrule once"],
    [99, "a newer version", "Update Ferrule"],
  ])("(schema %d) is looked at by nothing but backup", async (schema, age, way) => {
    const data = temporaryFolder();
    const database = openDatabase(data);
    database.exec(`PRAGMA user_version = ${schema}`);
    closeDatabase(database);
    for (const args of [["resolve"], ["import", demoBench]]) {
      const { exit, err } = await ferrule(args, { data });
      expect(exit).toBe(1);
      expect(err).toContain(age);
      expect(err).toContain(way);
    }
    const copy = join(data, "copy.sqlite");
    const { exit, out } = await ferrule(["backup", copy, "--json"], { data });
    expect(exit).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ file: copy, schema });
  });

  it("or a damaged one is left as it is", async () => {
    const data = temporaryFolder();
    writeFileSync(join(data, "bench.sqlite"), "rust ".repeat(2000));
    for (const args of [["resolve"], ["import", demoBench], ["backup", join(data, "copy.sqlite")]]) {
      const { exit, err } = await ferrule(args, { data });
      expect(exit).toBe(1);
      expect(err).toMatch(/damaged|not a database/);
    }
    expect(readFileSync(join(data, "bench.sqlite"), "utf8")).toBe("rust ".repeat(2000));
    expect(existsSync(join(data, "copy.sqlite"))).toBe(false);
  });
});

describe("words of others", () => {
  it("go to the terminal as text and never as orders to it", async () => {
    const { out, exit } = await ferrule(["read"], { input: `${listing}\u001b[2J\u0007 \u009b31m` });
    expect(exit).toBe(0);
    expect(out).toMatch(/^[^\p{Cc}]*(\n[^\p{Cc}]*)*$/u);
    const file = await ferrule(["judge", "--bench", demoBench], { input: `${listing}\u001b[2J` });
    expect(file.out).not.toContain("\u001b");
  });
});
