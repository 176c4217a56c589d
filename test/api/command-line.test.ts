import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";
import { commands } from "../../packages/server/src/command-line/commands.ts";
import { demo, listing, listings, type Place, place, reference, shell } from "./command-line.test-kit.ts";
import { ask, looseParts, temporaryFolder, testApp, today } from "./server.test-kit.ts";

const script = fileURLToPath(new URL("../../scripts/ferrule.mjs", import.meta.url));

// Whatever has to be built is built here once, and not within the time of a test.
beforeAll(() => {
  execFileSync(process.execPath, [script, "help"], { stdio: "ignore" });
}, 300_000);

/** What a command answers as JSON, and its exit code. */
async function asJson(at: Place, line: string, input?: string) {
  const { exit, out, err } = await shell(at, `${line} --json`, input);
  expect(err).toBe("");
  return { exit, body: JSON.parse(out) };
}

/** A server on the same folder, as it runs beside the command line. */
const serverOn = ({ data }: Place) => testApp({ dataFolder: data, reference });

describe("the examples in the help", { timeout: 120_000 }, () => {
  const all = commands.flatMap(({ name, examples }) => examples.map((example) => ({ name, ...example })));

  it.each(all)("$line", async ({ name, line, exit }) => {
    const ended = await shell(await place(), line);
    expect(ended.err).toBe("");
    // What a listing is worth on the day it is run is not for the help to say: any verdict is an answer.
    if (name === "judge") expect([0, 3, 4]).toContain(ended.exit);
    else expect(ended.exit).toBe(exit);
  });
});

describe("read", { timeout: 120_000 }, () => {
  it("answers as the HTTP interface does, from a file as from standard input", async () => {
    const at = await place();
    const app = await serverOn(at);
    const listed = (await ask(app, "POST", "/api/read", { text: listing })).body;
    const fromFile = await asJson(at, "ferrule read listing.txt");
    expect(fromFile).toEqual({
      exit: 0,
      body: { listings: [{ from: "listing.txt", text: listing, listing: listed }] },
    });
    const fromInput = await asJson(at, "ferrule read -", listing);
    expect(fromInput.body.listings[0].listing).toEqual(listed);
  });

  it("splits many, says where each is from, and ends with 3 where in one nothing was made out", async () => {
    const at = await place();
    const many = await asJson(at, "ferrule read --many listings.txt");
    expect(many.exit).toBe(0);
    expect(many.body.listings.map(({ text }: { text: string }) => text)).toEqual(listings.split("\n---\n"));
    expect(many.body.listings[1].from).toBe("listings.txt, listing 2");
    expect((await shell(at, "ferrule read listing.txt -", "good morning")).exit).toBe(3);
  });

  it("prints plain columns without colours", async () => {
    const { out } = await shell(await place(), "ferrule read listing.txt");
    expect(out).toContain("For sale at 50.00 EUR, postage 4.50 EUR");
    expect(out).toMatch(/^ {2}items\.0\.loftDeg +10\.5 +"10\.5"$/m);
    expect(out).not.toContain("\u001b");
  });
});

describe("judge", { timeout: 120_000 }, () => {
  const exits = { buy: 0, "offer-up-to": 4, "ask-first": 4, leave: 3 } as const;

  it("answers as the HTTP interface does, and tells the verdict by its exit code", async () => {
    const at = await place();
    const app = await serverOn(at);
    for (const price of ["5", "50", "900"]) {
      const text = listing.replace("50 euros", `${price} euros`);
      const { body } = await ask(app, "POST", "/api/judge", { text, log: false, today, roundTripKm: 30 });
      const { exit, body: answer } = await asJson(at, `ferrule judge --km 30 --today ${today}`, text);
      expect(answer.listings[0].deal).toEqual(body.deal);
      expect(exit).toBe(exits[body.deal.verdict as keyof typeof exits]);
    }
    expect((await ask(app, "GET", "/api/sightings")).body.sightings).toHaveLength(
      demo.sightings?.length ?? 0,
    );
  });

  it("takes all that it rests on from files, and then nothing of what is stored", async () => {
    const files = "--bench bench.json --catalogue models.csv --evidence evidence.csv --sightings log.json";
    const line = `ferrule judge listing.txt ${files} --today ${today}`;
    const stored = await asJson(await place(), `ferrule judge listing.txt --today ${today}`);
    const without = await place(null);
    const given = await asJson(without, line);
    expect(given.body.listings[0].deal.mostToPay).toEqual(stored.body.listings[0].deal.mostToPay);
    expect(existsSync(without.data)).toBe(false);
    const bare = await asJson(without, `ferrule judge listing.txt --bench bench.json --today ${today}`);
    expect(bare.body.listings[0].deal).toMatchObject({ verdict: "ask-first", mostToPay: null });
  });

  it("judges a listing of the log, and says which it does not find", async () => {
    const at = await place();
    const id = demo.sightings?.[0]?.id;
    const { body } = await asJson(at, `ferrule judge --sighting ${id}`);
    expect(body.listings[0]).toMatchObject({ from: `sighting ${id}`, text: demo.sightings?.[0]?.text });
    const { exit, err } = await shell(at, "ferrule judge --sighting L999");
    expect({ exit, err }).toEqual({
      exit: 1,
      err: 'ferrule judge: There is no sighting "L999" in the log\n',
    });
  });

  it("says it in words, with what to take care of", async () => {
    const { out } = await shell(await place(), `ferrule judge listing.txt --today ${today}`);
    expect(out).toMatch(/^(BUY IT|OFFER UP TO|ASK FIRST|LEAVE IT)\b.*asked 50\.00 EUR/);
    expect(out).toMatch(/^ +WAY +LEAVES/m);
    expect(out).toContain("At the bench:");
  });
});

describe("resolve", { timeout: 120_000 }, () => {
  it("answers as the HTTP interface does, for the stored bench, a file and standard input", async () => {
    const at = await place();
    const app = await serverOn(at);
    const stored = (await ask(app, "GET", "/api/bench/resolve?skill=screw&limit=5")).body;
    expect(await asJson(at, "ferrule resolve --skill screw --limit 5")).toEqual({ exit: 0, body: stored });
    const { parts, joints, claims, goal } = demo;
    const given = (await ask(app, "POST", "/api/resolve", { parts, joints, claims, goal })).body;
    expect((await asJson(at, "ferrule resolve bench.json")).body.counts).toEqual(given.counts);
    expect((await asJson(at, "ferrule resolve - < parts.csv")).body.counts).toEqual(given.counts);
  });

  it("ends with 3 where nothing makes a club, and with 4 where all wait for an answer", async () => {
    const at = await place();
    const { head, adapter, shaft, grip } = looseParts;
    const bench = (...parts: object[]) => JSON.stringify({ parts, goal: { skill: "bond" } });
    expect((await shell(at, "ferrule resolve -", bench(head, grip))).exit).toBe(3);
    expect((await shell(at, "ferrule resolve -", bench(head, adapter, shaft, grip))).exit).toBe(0);
    const { hand: _hand, ...someHand } = head;
    const open = await asJson(at, "ferrule resolve -", bench(someHand, adapter, shaft, grip));
    expect(open.body.clubs.map(({ verdict }: { verdict: string }) => verdict)).toEqual(["unsettled"]);
    expect(open.exit).toBe(4);
  });

  it("looks for the clubs of one part, and says when it is none of that sort", async () => {
    const at = await place();
    const { body } = await asJson(at, "ferrule resolve --part H01 --skill bond");
    expect(body.clubs.length).toBeGreaterThan(1);
    expect(new Set(body.clubs.map(({ head }: { head: string }) => head))).toEqual(new Set(["H01"]));
    const { exit, err } = await shell(at, "ferrule resolve --part A01");
    expect(exit).toBe(1);
    expect(err).toContain('--part: got "A01", of the kind adapter');
  });
});

describe("plan", { timeout: 120_000 }, () => {
  it("keeps to its limits, adds up, and is as good as it says", async () => {
    const { exit, body } = await asJson(
      await place(),
      "ferrule plan --budget 20 --hours 3 --most driver=1 --seconds 3",
    );
    expect(exit).toBe(0);
    expect(body.outlayMinor).toBeLessThanOrEqual(2000);
    expect(body.minutes).toBeLessThanOrEqual(180);
    expect(body.netMinor).toBeLessThanOrEqual(body.boundMinor + 1);
    const sum = body.actions.reduce((sum: number, { netMinor }: { netMinor: number }) => sum + netMinor, 0);
    expect(Math.abs(sum - body.netMinor)).toBeLessThanOrEqual(body.actions.length);
    const drivers = body.actions.filter(
      (one: { do: string; title: string }) => one.do === "build" && /driver/.test(one.title),
    );
    expect(drivers.length).toBeLessThanOrEqual(1);
  });

  it("ends with 3 where there is nothing that pays", async () => {
    const at = await place(null);
    const { exit, out } = await shell(at, "ferrule plan --bench - --seconds 1", '{"parts":[]}');
    expect(exit).toBe(3);
    expect(out).toContain("Nothing pays better than leaving everything as it is.");
  });
});

describe("import and export", { timeout: 120_000 }, () => {
  it("bring a whole bench from one machine to another", async () => {
    const [from, to] = [await place(), await place(null)];
    const { parts, joints, claims, goal } = demo;
    const { out } = await shell(from, "ferrule export");
    expect(JSON.parse(out)).toEqual({ parts, joints, claims, goal });
    const taken = await asJson(to, "ferrule import -", out);
    const count = parts.length + joints.length + claims.length + 1;
    expect(taken).toEqual({ exit: 0, body: { taken: count, dryRun: false, refused: [] } });
    expect((await shell(to, "ferrule export")).out).toBe(out);
  });

  it.each([
    ["catalogue", "models"],
    ["evidence", "evidence"],
    ["books", "entries"],
  ] as const)("bring the %s likewise, as CSV and as JSON", async (list, name) => {
    const [from, to] = [await place(), await place(null)];
    const csv = (await shell(from, `ferrule export --list ${list} --format csv`)).out;
    const app = await serverOn(from);
    expect(csv).toBe((await ask(app, "GET", `/api/${list}/export.csv`)).body);
    expect((await shell(to, `ferrule import - --list ${list}`, csv)).exit).toBe(0);
    const { body } = await asJson(to, `ferrule export --list ${list}`);
    expect(body[name]).toHaveLength(demo[name]?.length ?? 0);
    expect((await shell(to, `ferrule export own-${list}.csv --list ${list}`)).exit).toBe(0);
    expect(readFileSync(join(to.folder, `own-${list}.csv`), "utf8")).toBe(csv);
  });

  it("take nothing where one row is bad, and name it; with --take-good the others", async () => {
    const at = await place();
    const csv = "kind,id,massG\ngrip,GOOD,50\ngrip,BAD,fifty\n";
    const before = (await shell(at, "ferrule export")).out;
    const refused = await shell(at, "ferrule import -", csv);
    expect(refused.exit).toBe(1);
    expect(refused.out).toMatch(/nothing was taken .*\n {2}line 3, massG: got "fifty", expected /);
    const dry = await asJson(at, "ferrule import - --dry-run --take-good", csv);
    expect(dry).toMatchObject({
      exit: 1,
      body: { taken: 1, dryRun: true, refused: [{ line: 3, column: "massG" }] },
    });
    expect((await shell(at, "ferrule export")).out).toBe(before);
    expect(await asJson(at, "ferrule import - --take-good", csv)).toMatchObject({
      exit: 1,
      body: { taken: 1 },
    });
    const ids = JSON.parse((await shell(at, "ferrule export")).out).parts.map(({ id }: { id: string }) => id);
    expect(ids).toContain("GOOD");
    expect(ids).not.toContain("BAD");
  });

  it("are seen by a server that is running, which sees all of it or nothing", async () => {
    const at = await place();
    const app = await serverOn(at);
    await ask(app, "GET", "/api/bench/resolve");
    expect((await shell(at, "ferrule import shafts.csv")).exit).toBe(0);
    expect((await ask(app, "GET", "/api/bench/parts/NEW2")).status).toBe(200);
    await ask(app, "POST", "/api/bench/parts", { ...looseParts.grip, id: "FROM-SERVER" });
    expect((await shell(at, "ferrule export")).out).toContain('"FROM-SERVER"');
  });

  it("leave a file alone that is there already", async () => {
    const at = await place();
    const { exit, err } = await shell(at, "ferrule export listing.txt");
    expect(exit).toBe(1);
    expect(err).toContain(
      "listing.txt: got a file that is there already, expected a name that is free, or --force",
    );
    expect(readFileSync(join(at.folder, "listing.txt"), "utf8")).toBe(listing);
    expect((await shell(at, "ferrule export listing.txt --force --format json")).exit).toBe(0);
    expect(JSON.parse(readFileSync(join(at.folder, "listing.txt"), "utf8")).parts).toHaveLength(
      demo.parts.length,
    );
  });

  it("end quietly when whoever reads along has read enough", async () => {
    const { exit, out, err } = await shell(await place(), "ferrule export | head -n 1");
    expect({ exit, out, err }).toEqual({ exit: 0, out: "{\n", err: "" });
  });
});

describe("backup and restore", { timeout: 120_000 }, () => {
  it("keep everything while the server is running, and bring it back when it is stopped", async () => {
    const at = await place();
    const app = await testApp({ dataFolder: at.data, reference });
    const before = (await ask(app, "GET", "/api/bench")).body;
    const made = await asJson(at, "ferrule backup kept.sqlite");
    expect(made).toMatchObject({ exit: 0, body: { file: join(at.folder, "kept.sqlite") } });
    await ask(app, "DELETE", "/api/bench/parts/H01");
    const inUse = await shell(at, "ferrule restore kept.sqlite");
    expect(inUse.exit).toBe(1);
    expect(inUse.err).toContain("in use. Stop Ferrule");
    expect((await ask(app, "GET", "/api/bench")).body.parts).toHaveLength(before.parts.length - 1);

    const stopped = { ...at, data: temporaryFolder() };
    writeFileSync(join(stopped.data, "bench.sqlite"), readFileSync(join(at.folder, "backup.sqlite")));
    expect((await shell(stopped, "ferrule restore kept.sqlite")).exit).toBe(0);
    const again = await testApp({ dataFolder: stopped.data, reference });
    expect((await ask(again, "GET", "/api/bench")).body).toEqual(before);
    expect((await ask(again, "GET", "/api/evidence")).body.evidence).toEqual(demo.evidence);
    expect(readdirSync(stopped.data)).toContain("bench-before-restore-1.sqlite");
  });

  it("refuse a backup that is none, and leave the bench as it is", async () => {
    const at = await place();
    const before = (await shell(at, "ferrule export")).out;
    const { exit, err } = await shell(at, "ferrule restore listing.txt");
    expect(exit).toBe(1);
    expect(err).toContain("listing.txt: got file is not a database, expected a backup that Ferrule wrote");
    expect((await shell(at, "ferrule export")).out).toBe(before);
  });
});

describe("the process", { timeout: 120_000 }, () => {
  it.each([
    ["ferrule", 2],
    ["ferrule frob", 2],
    ["ferrule judge --frob", 2],
    ["ferrule judge nowhere.txt", 1],
    ["ferrule help", 0],
    ["ferrule plan --help", 0],
  ])("%s ends with %d", async (line, exit) => {
    const ended = await shell(await place(null), line);
    expect(ended.exit).toBe(exit);
    expect(exit === 0 ? ended.err : ended.out).toBe("");
  });
});
