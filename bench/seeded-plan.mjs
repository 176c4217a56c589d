import { seeded } from "./random.mjs";

const clubTypes = ["driver", "fairway", "hybrid"];
/** Euro cents of a head and of a shaft in the middle of the market, and minutes of work; invented. */
const headMinor = { driver: 9000, fairway: 6000, hybrid: 4500 };
const shaftMinor = { driver: 4500, fairway: 3500, hybrid: 2800 };
const grades = [1, 0.85, 0.65];
const hourMinor = 1200;

/**
 * A seeded plan model: heads of eight adapter families, shafts of which `adapted` have an adapter on, loose adapters, and
 * listings of one to six things, a part of them to be fetched at twenty places. Few models are common and many are rare, as on a shelf.
 */
export function seededPlan({ heads, shafts, adapters, listings, adapted = 0.7, places = 20 }, seed) {
  const random = seeded(seed);
  const market = marketOf(random);
  const stock = new Map();
  const add = (part, count) => {
    const found = stock.get(part.id);
    if (found) found.count += count;
    else stock.set(part.id, { part, count });
  };
  for (let at = 0; at < heads; at += 1) add(headOf(random, market), 1);
  for (let at = 0; at < shafts; at += 1) add(shaftOf(random, market, random.chance(adapted)), 1);
  for (let at = 0; at < adapters; at += 1) add(adapterOf(random, market), 1);
  const bundles = Array.from({ length: listings }, (_, at) => listingOf(random, market, at, adapted, places));
  for (const { things } of bundles) for (const part of things) add(part, 0);
  const parts = [...stock.values()];
  const uses = [
    ...parts.map(({ part }) => looseSale(part)),
    ...clubsOf(
      parts.map(({ part }) => part),
      market,
    ),
  ];
  const build = uses.filter(({ kind }) => kind !== undefined).length;
  if (build === 0) throw new Error("no clubs to build");
  const drives = Array.from({ length: places }, (_, at) => tripOf(random, at));
  return {
    resources: parts.map(({ part, count }) => ({ id: part.id, count })),
    uses,
    bundles: bundles.map(({ things, ...bundle }) => ({
      ...bundle,
      gives: things.map(({ id }) => ({ resource: id, count: 1 })),
    })),
    trips: drives,
    limits: {
      budgetMinor: Math.round(heads * 150 + listings * 2500),
      minutes: Math.round(heads * 48 + listings * 60),
      mostOfKind: { driver: Math.round(heads * 0.25) },
    },
  };
}

function marketOf(random) {
  const families = Array.from({ length: 8 }, (_, at) => at);
  const headModels = Array.from({ length: 60 }, (_, at) => ({
    id: `M${at}`,
    family: at % families.length,
    clubType: clubTypes[Math.floor(random.next() * 3)],
    level: 0.5 + 1.2 * random.next(),
    lofts: 1 + Math.floor(random.next() * 3),
  }));
  const shaftModels = Array.from({ length: 40 }, (_, at) => ({
    id: `T${at}`,
    clubType: clubTypes[Math.floor(random.next() * 3)],
    level: 0.5 + 1.2 * random.next(),
    flexes: 2 + Math.floor(random.next() * 3),
  }));
  const taste = new Map();
  for (const head of headModels)
    for (const shaft of shaftModels) taste.set(`${head.id} ${shaft.id}`, 0.9 + 0.3 * random.next());
  return { families, headModels, shaftModels, taste };
}

/** Rank by Zipf: the first of a list is far more common than the last. */
function common(random, list) {
  return list[Math.min(list.length - 1, Math.floor(list.length * random.next() ** 2))];
}

function headOf(random, { headModels }) {
  const model = common(random, headModels);
  const hand = random.chance(0.9) ? "R" : "L";
  const loft = Math.floor(random.next() * model.lofts);
  const grade = Math.floor(random.next() * 3);
  const worth = Math.round(headMinor[model.clubType] * model.level * grades[grade]);
  const { id, family, clubType } = model;
  return { sort: "head", id: `H ${id} ${loft} ${hand} ${grade}`, model: id, family, clubType, hand, worth };
}

function shaftOf(random, { shaftModels, families }, adapted) {
  const model = common(random, shaftModels);
  const flex = Math.floor(random.next() * model.flexes);
  const grade = Math.floor(random.next() * 2);
  const family = adapted ? common(random, families) : null;
  const worth = Math.round(shaftMinor[model.clubType] * model.level * grades[grade]) + (adapted ? 900 : 0);
  const id = `S ${model.id} ${flex} ${grade} ${family ?? "bare"}`;
  return { sort: "shaft", id, model: model.id, family, clubType: model.clubType, worth };
}

function adapterOf(random, { families }) {
  const family = common(random, families);
  const hand = random.chance(0.9) ? "R" : "L";
  return { sort: "adapter", id: `A ${family} ${hand}`, family, hand, worth: 1200 };
}

function listingOf(random, market, at, adapted, places) {
  const things = Array.from({ length: 1 + Math.floor(random.next() * 6) }, () => {
    const draw = random.next();
    if (draw < 0.45) return headOf(random, market);
    return draw < 0.85 ? shaftOf(random, market, random.chance(adapted)) : adapterOf(random, market);
  });
  const worth = things.reduce((sum, part) => sum + part.worth, 0);
  const fetched = random.chance(0.6);
  const minutes = 10 + 5 * Math.floor(random.next() * 4);
  return {
    id: `L${at}`,
    things,
    priceMinor: Math.round(worth * (0.3 + 0.6 * random.next())) + (fetched ? 0 : 700),
    minutes,
    timeMinor: timeOf(minutes),
    ...(fetched ? { trip: `P${Math.floor(random.next() * places)}` } : {}),
  };
}

function tripOf(random, at) {
  const minutes = 20 + Math.floor(random.next() * 100);
  return { id: `P${at}`, moneyMinor: 200 + minutes * 20, minutes, timeMinor: timeOf(minutes) };
}

function timeOf(minutes) {
  return Math.round((minutes * hourMinor) / 60);
}

function looseSale(part) {
  return useOf(`sell ${part.id}`, [part], Math.round(part.worth * 0.78) - 350, 18, 0);
}

function clubsOf(parts, market) {
  const of = (sort) => parts.filter((part) => part.sort === sort);
  const [heads, shafts, adapters] = ["head", "shaft", "adapter"].map(of);
  return heads.flatMap((head) =>
    shafts
      .filter((shaft) => shaft.clubType === head.clubType)
      .flatMap((shaft) => {
        const taste = market.taste.get(`${head.model} ${shaft.model}`);
        if (shaft.family === head.family) return [clubOf(head, [head, shaft], taste, 25)];
        if (shaft.family !== null) return [];
        return adapters
          .filter(({ family, hand }) => family === head.family && hand === head.hand)
          .map((adapter) => clubOf(head, [head, shaft, adapter], taste, 55));
      }),
  );
}

function clubOf({ clubType }, parts, taste, minutes) {
  const worth = parts.reduce((sum, part) => sum + part.worth, 0) * taste * 1.12;
  const id = `build ${parts.map((part) => part.id).join(" + ")}`;
  return {
    ...useOf(id, parts, Math.round(worth * 0.88) - 900, minutes + 20, minutes * 10 - 150),
    kind: clubType,
  };
}

function useOf(id, parts, bringsMinor, minutes, outlayMinor) {
  const takes = parts.map((part) => ({ resource: part.id, count: 1 }));
  return { id, takes, netMinor: bringsMinor - timeOf(minutes), minutes, outlayMinor };
}
