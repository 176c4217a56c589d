import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { splitListings } from "@ferrule/core";
import { expect, it } from "vitest";
import { readDemo, readReference } from "../../packages/server/src/reference-files.ts";
import { ask, testApp } from "./server.test-kit.ts";

const data = fileURLToPath(new URL("../../data", import.meta.url));
const lists = [
  ["/api/catalogue", "models"],
  ["/api/evidence", "evidence"],
  ["/api/books", "entries"],
] as const;

/** A server as it is on the first start. */
const firstStart = () => testApp({ reference: readReference(data), demo: readDemo(data) });

it("comes with a catalogue, prices and books that an import takes back as they are", async () => {
  const app = await firstStart();
  const own = await testApp({ reference: readReference(data) });
  for (const [url, list] of lists) {
    const things = (await ask(app, "GET", url)).body[list];
    expect(things.length).toBeGreaterThan(0);
    const { body: text } = await ask(app, "GET", `${url}/export.csv`);
    const { body } = await ask(own, "POST", `${url}/import`, { format: "csv", text, take: "all-or-none" });
    expect(body).toEqual({ taken: things.length, dryRun: false, refused: [] });
    expect((await ask(own, "GET", url)).body[list]).toEqual(things);
  }
});

it("comes with a log of sightings, some of them of each outcome that teaches something", async () => {
  const app = await firstStart();
  for (const outcome of ["open", "bought", "sold", "gone"]) {
    const { body } = await ask(app, "GET", `/api/sightings?outcome=${outcome}`);
    expect(body.sightings.length, outcome).toBeGreaterThan(0);
  }
  expect((await ask(app, "GET", "/api/sightings/export.csv")).status).toBe(200);
});

it("has books that add up, in the currency of the first costs", async () => {
  const app = await firstStart();
  const { currency } = (await ask(app, "GET", "/api/costs")).body;
  const { status, body } = await ask(app, "GET", "/api/books/summary");
  expect(status).toBe(200);
  expect(body).toMatchObject({ currency, unconverted: [] });
  const net = body.byClub.reduce((sum: number, line: { netMinor: number }) => sum + line.netMinor, 0);
  expect(net).toBe(body.totals.netMinor);
});

// Twenty-five judgements of a whole bench take a while on a busy machine.
it("has a verdict on each of its listings", { timeout: 120_000 }, async () => {
  const file = `${data}/demo/listings.txt`;
  expect(existsSync(file)).toBe(true);
  const app = await firstStart();
  for (const text of splitListings(readFileSync(file, "utf8"))) {
    const { status, body } = await ask(app, "POST", "/api/judge", { text });
    expect(status, text).toBe(200);
    expect(body.sighting, text).toMatchObject({ text, verdict: body.deal.verdict });
  }
});
