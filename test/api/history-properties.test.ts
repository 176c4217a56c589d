import type { Claim, Goal, Joint, Part } from "@ferrule/core";
import fc from "fast-check";
import { expect, it } from "vitest";
import { openBench } from "../../packages/server/src/bench/bench.ts";
import { openHistory } from "../../packages/server/src/history/history.ts";
import { openLabelDesk } from "../../packages/server/src/labels/label-desk.ts";
import { openSettingsDesk } from "../../packages/server/src/settings/settings-desk.ts";
import { openDatabase } from "../../packages/server/src/store/database.ts";
import { openTables } from "../../packages/server/src/store/tables.ts";
import { openCosts } from "../../packages/server/src/trade/costs.ts";
import { openReadyModels } from "../../packages/server/src/trade/ready-models.ts";
import { openTrade } from "../../packages/server/src/trade/trade.ts";
import { costs as firstCosts } from "./costs.test-kit.ts";
import { bondedShaft, looseParts, today } from "./server.test-kit.ts";
import { asked, headListing } from "./trade.test-kit.ts";

const { head, adapter, shaft, grip } = looseParts as unknown as Record<string, Part>;
const kinds = [head, adapter, shaft, grip] as Part[];
const example = {
  parts: kinds.map((part) => ({ ...part, id: `demo-${part.id}` })),
  joints: [{ id: "demo-j1", type: "bonded", parts: ["demo-a1", "demo-s1"] } as Joint],
  claims: [],
  goal: {},
};
const listNames = [
  ...["parts", "joints", "claims", "catalogue", "evidence", "sightings", "books", "watches"],
  ...["measurements", "inspections", "clearances"],
];

/** A bench in memory, with all that a sequence of changes does to it. */
function openWorld() {
  const database = openDatabase(undefined);
  const tables = openTables(database);
  const costs = openCosts(tables, firstCosts);
  const bench = openBench(tables, costs.read, example);
  const trade = openTrade(tables, costs, openReadyModels(tables), () => today);
  const desk = openSettingsDesk(tables, costs, []);
  const labels = openLabelDesk(tables);
  const history = openHistory(tables, costs);
  const rows = (name: string) =>
    database
      .prepare(`SELECT place, id, body FROM ${name} ORDER BY place`)
      .all()
      .map((row) => {
        const { place, id, body } = row as { place: number; id: string; body: string };
        return { key: `${name}/${id}`, place, body: JSON.parse(body) as unknown };
      });
  /** Every thing that the history keeps, under its table and id. */
  const things = () => {
    const single = {
      goal: tables.goals.read(),
      costs: costs.read(),
      settings: tables.settings.read(),
      labels: tables.labels.setup(),
      template: tables.settings.saleTemplate() ?? null,
      example: tables.settings.isExample(),
      former: tables.settings.formerSettings() ?? null,
    };
    const listed = listNames.flatMap(rows).map(({ key, ...rest }) => [key, rest] as const);
    const printed = [...tables.labels.printed()].map((place) => [`printed/${place}`, true] as const);
    return new Map<string, unknown>([...listed, ...printed, ...Object.entries(single)]);
  };
  return { database, tables, costs, bench, trade, desk, labels, history, things };
}

type World = ReturnType<typeof openWorld>;
type Act = (world: World, a: number, b: number) => unknown;

const pick = <T>(all: readonly T[], at: number): T | undefined => all[at % Math.max(all.length, 1)];

/** What people do, each with two numbers that choose what it is done to. A part changes in ways that keep it one. */
const acts: readonly Act[] = [
  ({ bench }, a) => bench.parts.add({ ...(pick(kinds, a) as Part), id: undefined } as unknown as Part),
  ({ bench }, a, b) => bench.parts.add({ ...(pick(kinds, a) as Part), id: `p${b % 5}` }),
  ({ bench }, a, b) => {
    const part = pick(bench.parts.all(), a);
    return part && bench.parts.put(part.id, { ...part, massG: 40 + (b % 9) } as Part);
  },
  ({ bench }, a, b) => {
    const part = pick(bench.parts.all(), a);
    return part && bench.parts.put(part.id, { ...part, note: `note ${b % 3}` });
  },
  ({ bench }, a) => {
    const part = pick(bench.parts.all(), a);
    return part && bench.parts.remove(part.id);
  },
  ({ bench }, a, b) => {
    const [adapters, shafts] = ["adapter", "shaft"].map((kind) =>
      bench.parts.all().filter((part) => part.kind === kind),
    ) as [Part[], Part[]];
    const ends = [pick(adapters, a)?.id, pick(shafts, b)?.id];
    if (ends.every((id) => id !== undefined))
      bench.joints.add({ ...bondedShaft, id: undefined, parts: ends } as never);
  },
  ({ bench }, a) => {
    const joint = pick(bench.joints.all(), a);
    return joint && bench.joints.remove(joint.id as string);
  },
  ({ bench }, a) =>
    bench.claims.add({
      receiver: "Quillon 2",
      adapter: `Tarnlock ${a % 3}`,
      verdict: "fits",
      evidence: "tried",
    } as Claim),
  ({ bench }, a) => bench.setGoal({ skill: pick(["bond", "screw", "machine"], a) } as Goal),
  ({ bench }) => bench.deleteGoal(),
  ({ costs }, a) => costs.change({ perKmMinor: 30 + (a % 4) }),
  ({ costs }, a) => costs.change({ hourValueMinor: 1200 + (a % 4) }),
  ({ tables }, a) => tables.settings.write({ ...tables.settings.read(), theme: a % 2 ? "dark" : "light" }),
  ({ desk }, a, b) =>
    desk.putIn(
      { goal: { skill: a % 2 ? "bond" : "screw" }, display: { theme: b % 2 ? "dark" : "auto" } } as never,
      {
        dryRun: false,
      },
    ),
  ({ desk }) => desk.takeBack(),
  ({ labels }, a, b) => {
    const label = pick(labels.labels(), a);
    return label && labels.markPrinted([label.code], b % 2 === 0);
  },
  ({ bench }, a) => bench.evidence.add({ ...asked, id: `e${a % 4}` } as never),
  ({ bench }, a) =>
    bench.sightings.add({
      id: `s${a % 4}`,
      seenOn: today,
      text: "x",
      read: headListing,
      listing: headListing,
      outcome: "open",
    }),
  ({ bench, trade }, a) => {
    const sighting = pick(bench.sightings.all(), a);
    return sighting && trade.buy(sighting.id, { paid: { amountMinor: 3000, currency: "EUR" }, on: today });
  },
  ({ bench, trade }, a, b) => {
    const part = pick(bench.parts.all(), a);
    const price = { amountMinor: 500 + b, currency: "EUR" };
    return part && trade.sell({ parts: [part.id], price, on: today, club: `club ${b % 2}` });
  },
  ({ bench }, a) =>
    bench.takeIn({ parts: [{ ...(pick(kinds, a) as Part), id: `p${a % 5}`, note: "from a file" }] }),
  ({ bench }) => bench.undo(),
  ({ bench }) => bench.startOwn(),
  ({ bench }, a) => bench.loadExample(a % 2 === 0),
  ({ history, tables }, a) => history.undo(1 + (a % Math.max(1, tables.history.latest()))),
];

const steps = fc.array(fc.tuple(fc.nat(acts.length - 1), fc.nat(40), fc.nat(40)), {
  minLength: 1,
  maxLength: 30,
});

function live(world: World, done: readonly (readonly [number, number, number])[]): void {
  for (const [act, a, b] of done) acts[act]?.(world, a, b);
}

it("gives the very bench before, undone change by change from the newest", () => {
  fc.assert(
    fc.property(steps, (done) => {
      const world = openWorld();
      const before = world.things();
      live(world, done);
      for (let number = world.tables.history.latest(); number > 0; number -= 1) {
        if (world.tables.history.get(number)?.undoneBy !== null) continue;
        const undone = world.history.undo(number);
        expect(undone, JSON.stringify(undone)).toMatchObject({ ok: true });
      }
      expect(world.things()).toEqual(before);
      world.database.close();
    }),
    { numRuns: 80 },
  );
}, 90_000);

it("takes back any one change and touches nothing else, or refuses and changes nothing; undone itself, all is as it was", () => {
  let taken = 0;
  fc.assert(
    fc.property(steps, fc.nat(60), (done, chosen) => {
      const world = openWorld();
      live(world, done);
      const { history } = world.tables;
      const number = 1 + (chosen % Math.max(1, history.latest()));
      const [before, latest] = [world.things(), history.latest()];
      const touched = new Set(history.entries(number).map(({ table, id }) => keyOf(table, id)));
      const undone = world.history.undo(number);
      const after = world.things();
      if (!undone.ok) {
        expect(after).toEqual(before);
        expect(history.latest()).toBe(latest);
        expect(undone.problem.code).toMatch(/^(changed-since|would-break|undone-already|not-found)$/);
      } else {
        taken += 1;
        for (const key of new Set([...before.keys(), ...after.keys()]))
          if (!touched.has(key)) expect(after.get(key)).toEqual(before.get(key));
        expect(world.history.undo(undone.value.change.number)).toMatchObject({ ok: true });
        expect(world.things()).toEqual(before);
      }
      world.database.close();
    }),
    { numRuns: 200 },
  );
  // Of 200 at random well over a fifth can be taken back; else the property would say little.
  expect(taken).toBeGreaterThan(40);
}, 90_000);

/** The history's table and id as `things` has them. */
function keyOf(table: string, id: string): string {
  const names: Record<string, string> = {
    models: "catalogue",
    entries: "books",
    "labels-printed": "printed",
    "sale-template": "template",
    "former-settings": "former",
  };
  const name = names[table] ?? table;
  return id === "bench" ? name : `${name}/${id}`;
}
