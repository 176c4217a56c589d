import type { Bench, Evidence, Joint, Listing, ListingItem, Part, PlanInput, Sighting } from "@ferrule/core";
import fc from "fast-check";

/** What a plan is made of, but for rules and tables. */
export type PlannedBench = Pick<PlanInput, "bench" | "sightings" | "wishes"> & {
  /** What a week of waiting costs: so much, and nobody waits. */
  readonly holdingPerWeekMinor: number;
};

const families = fc.constantFrom("Alder", "Alder", "Alder", "Birch");
const mostly = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 6 });
const oneIn = (times: number) => fc.integer({ min: 1, max: times }).map((drawn) => drawn === 1);

/** A thing that lies on the bench: its parts without their ids, and how they are joined, by their places. */
interface Thing {
  readonly parts: readonly Record<string, unknown>[];
  readonly joints: readonly (readonly [Joint["type"], number, number])[];
}

const head = fc.record({
  kind: fc.constant("head"),
  clubType: fc.constantFrom("driver", "driver", "hybrid"),
  hand: fc.constantFrom("right", "right", "right", "left"),
  faults: fc.constantFrom([], [], [], ["sky-mark"], ["crack"]),
  deniedFaults: fc.constant(["caved-face", "rattle"]),
  socket: families.map((family) => ({ type: "receiver", family })),
});

const shaft = fc.record({
  kind: fc.constant("shaft"),
  suits: fc.constantFrom("wood", "wood", "hybrid"),
  material: fc.constant("graphite"),
  flex: fc.constantFrom("regular", "stiff"),
  length: fc.constantFrom(
    { lengthIn: 44.5, basis: "with-adapter" },
    { lengthIn: 39.5, basis: "with-adapter" },
  ),
  tip: fc.constant({ diameterIn: 0.335, form: "parallel", parallelSectionIn: 3 }),
  faults: fc.constantFrom([], [], [], ["paint-wear-shaft"], ["dent-shaft"]),
});

const adapter = fc.record({
  kind: fc.constant("adapter"),
  family: families,
  hand: fc.constantFrom("right", "either"),
  maker: fc.constantFrom("Northmoor", "Orvane"),
  bore: fc.constant({ diameterIn: 0.335, form: "parallel", depthIn: 1.25 }),
  deniedFaults: fc.constant(["crack", "adapter-damaged"]),
});

const grip = fc.record({ kind: fc.constant("grip"), model: fc.constantFrom("Tacky", "Corded") });

const loose = (part: fc.Arbitrary<Record<string, unknown>>): fc.Arbitrary<Thing> =>
  part.map((one) => ({ parts: [one], joints: [] }));

const readyShaft: fc.Arbitrary<Thing> = fc.tuple(shaft, adapter, grip).map((parts) => ({
  parts,
  joints: [
    ["bonded", 1, 0],
    ["gripped", 0, 2],
  ],
}));

const club: fc.Arbitrary<Thing> = fc.tuple(shaft, adapter, grip, head).map(([one, two, three, four]) => ({
  parts: [one, { ...two, family: (four.socket as { family: string }).family }, three, four],
  joints: [
    ["bonded", 1, 0],
    ["gripped", 0, 2],
    ["screwed", 3, 1],
  ],
}));

const thing: fc.Arbitrary<Thing> = fc.oneof(
  { weight: 4, arbitrary: loose(head) },
  { weight: 4, arbitrary: readyShaft },
  { weight: 1, arbitrary: club },
  { weight: 1, arbitrary: loose(shaft) },
  { weight: 1, arbitrary: loose(adapter) },
  { weight: 1, arbitrary: loose(grip) },
);

/** Things on a bench, some of them there twice, some of them sold. */
const bench: fc.Arbitrary<Bench> = fc
  .record({
    things: fc.array(fc.tuple(thing, oneIn(4), oneIn(12)), { minLength: 1, maxLength: 4 }),
    skill: fc.constantFrom("screw", "regrip", "bond", "bond"),
  })
  .map(({ things, skill }) => {
    const parts: Part[] = [];
    const joints: Joint[] = [];
    for (const [one, isTwice, isSold] of things) {
      for (const _copy of isTwice ? [1, 2] : [1]) {
        const ids = one.parts.map((_, at) => `P${parts.length + at + 1}`);
        one.parts.forEach((part, at) => {
          const sold = isSold ? { soldOn: "2026-10-01" } : {};
          parts.push({ ...part, ...sold, id: ids[at] } as unknown as Part);
        });
        for (const [type, a, b] of one.joints)
          joints.push({ type, parts: [ids[a] as string, ids[b] as string] });
      }
    }
    return { parts, joints, goal: { skill } } as Bench;
  });

const nothingSaid: ListingItem = {
  ...{ kind: "head", quantity: 1, maker: null, model: null, modelId: null, year: null },
  ...{ clubType: null, clubNumber: null, loftDeg: null, hand: null, flex: null, shaftMaterial: null },
  ...{ shaftMassG: null, length: null, tip: null, adapter: null, adapterFamily: null, cover: null },
  ...{ wrench: null, faults: [], deniedFaults: [], price: null },
};

const item: fc.Arbitrary<ListingItem> = fc
  .record({
    kind: fc.constantFrom("head", "head", "shaft", "shaft", "club", "cover"),
    quantity: fc.constantFrom(1, 1, 1, 2),
    clubType: fc.constantFrom("driver", "driver", "hybrid"),
    adapterFamily: families,
    cover: fc.constantFrom(null, null, true),
    faults: fc.constantFrom([], [], [], ["crack"]),
  })
  .map(({ kind, faults, ...said }) => ({
    ...nothingSaid,
    ...said,
    kind,
    hand: "right",
    ...(kind === "shaft" || kind === "club" ? { adapter: "fitted" } : {}),
    ...(kind === "shaft" ? { flex: "regular", shaftMaterial: "graphite", cover: null } : {}),
    ...(kind === "shaft" ? { length: { lengthIn: 44.5, basis: "with-adapter" } } : {}),
    ...(kind === "cover" ? { cover: null, adapterFamily: null } : {}),
    faults: kind === "head" || kind === "club" ? faults : [],
  })) as fc.Arbitrary<ListingItem>;

const euros = (amountMinor: number) => ({ amountMinor, currency: "EUR" });

const sightings: fc.Arbitrary<Sighting[]> = fc
  .array(
    fc.record({
      items: fc.array(item, { minLength: 1, maxLength: 2 }),
      price: fc.option(fc.integer({ min: 0, max: 4000 }), { nil: null, freq: 8 }),
      postage: fc.constantFrom("included", "collection-only", "collection-only", null),
      place: fc.constantFrom("the mill", "the mill", "the harbour"),
      km: mostly(fc.integer({ min: 1, max: 12 })),
    }),
    { maxLength: 3 },
  )
  .map((drawn) =>
    drawn.map(({ items, price, postage, place, km }, at) => {
      const asking = price === null ? null : euros(price);
      const listing = {
        ...{ intent: "sell", asking, negotiable: null, postage },
        ...{ items, spans: [], doubts: [] },
      } as Listing;
      return {
        ...{ id: `L${at}`, seenOn: "2026-11-20", text: `listing ${at}`, read: listing, listing, place },
        outcome: "open",
        ...(km === undefined ? {} : { roundTripKm: km }),
      };
    }),
  );

const wishes: fc.Arbitrary<PlanInput["wishes"]> = fc.record({
  budgetMinor: fc.option(fc.integer({ min: 0, max: 12_000 }), { nil: null, freq: 1 }),
  minutes: fc.option(fc.integer({ min: 0, max: 240 }), { nil: null, freq: 1 }),
  mostOfType: fc.constantFrom({}, {}, { driver: 1 }, { driver: 0 }, { hybrid: 1 }),
  hours: fc.constantFrom("at-own-rate", "for-nothing"),
  leastPerHourMinor: fc.constantFrom(null, null, null, 1500, 6000),
});

/** Benches with listings, small enough to try every plan. */
export const plannedBench: fc.Arbitrary<PlannedBench> = fc.record({
  ...{ bench, sightings, wishes },
  holdingPerWeekMinor: fc.constantFrom(20, 5000),
});

const prices = { head: 4500, club: 13_000, shaft: 3500, adapter: 1500, cover: 1200 };

/** Prices of every kind of thing, so that something is known of most. */
export const plannedEvidence: readonly Evidence[] = (["driver", "hybrid"] as const).flatMap(
  (clubType, place) =>
    (["head", "club", "shaft", "adapter", "cover"] as const).flatMap((kind) =>
      [0, 1, 2].map(
        (turn): Evidence => ({
          id: `${clubType}-${kind}-${turn}`,
          on: `2026-0${5 + turn}-1${place}`,
          what: "sold",
          price: euros(prices[kind] + 300 * turn - 1150 * place),
          ...{ kind, clubType, hand: "right" },
          ...(turn === 1 ? { daysToSell: 12 } : {}),
        }),
      ),
    ),
);
