import { seeded } from "./random.mjs";

/** The demo's shelf laid out again and again until there are so many parts, each with a mass of its own. */
export function grownBench({ parts, joints = [], claims, goal }, count, seed) {
  const random = seeded(seed);
  const grown = [];
  const joined = [];
  for (let turn = 1; grown.length < count; turn += 1) {
    const named = (id) => `${id}-${turn}`;
    for (const part of parts) grown.push({ ...weighedAnew(random, part), id: named(part.id) });
    for (const joint of joints) joined.push({ ...joint, parts: joint.parts.map(named) });
  }
  const kept = grown.slice(0, count);
  const ids = new Set(kept.map(({ id }) => id));
  return {
    parts: kept,
    joints: joined.filter((joint) => joint.parts.every((id) => ids.has(id))),
    claims,
    goal,
  };
}

function weighedAnew(random, part) {
  const massG = part.massG?.value ?? part.massG;
  return massG === undefined ? part : { ...part, massG: Math.round(massG * random.step(0.97, 1.03, 0.005)) };
}

const families = ["Quillon 1", "Quillon 2", "Tarnlock", "Brackwater"];
const lofts = {
  driver: [9, 9.5, 10.5, 12],
  fairway: [13.5, 15, 16.5, 18],
  hybrid: [19, 22, 25],
  wedge: [52, 56, 60],
};
const flexes = ["regular", "stiff", "senior", "reg", "stiff flex", "X stiff"];
const hands = ["right hand", "RH", "right handed", "RH", "LH", "left handed"];
const states = [
  "no cracks, a few light marks on the sole",
  "one sky mark",
  "tidy",
  "rattles a bit",
  "never hit",
  "paint worn near the grip, no dents",
  "well used but sound",
  "",
];
const terms = [
  "ono",
  "posted",
  "plus postage",
  "collection only",
  "firm",
  "VB",
  "inc postage",
  "open to offers",
];
const openings = ["", "For sale: ", "Selling my ", "Clear out, "];

/** Made-up listings in the words of sellers, of the models of a catalogue; no two are of the same words. */
export function seededListings(models, count, seed) {
  const random = seeded(seed);
  const of = (kind) => models.filter((model) => model.kind === kind);
  const kinds = { head: of("head"), shaft: of("shaft"), adapter: of("adapter"), grip: of("grip") };
  return Array.from({ length: count }, (_, at) => {
    const thing = thingOf(random, kinds);
    const price = `${random.step(6, 160, 1)}${random.pick(["€", " euros", " EUR"])}`;
    const words = [random.pick(openings) + thing, random.pick(states), `${price} ${random.pick(terms)}`];
    return `${words.filter(Boolean).join(", ")} (ad ${at + 1})`;
  });
}

function thingOf(random, kinds) {
  const draw = random.next();
  if (draw < 0.4) return headWords(random, random.pick(kinds.head));
  if (draw < 0.7) return shaftWords(random, random.pick(kinds.shaft));
  if (draw < 0.8) return `${nameOf(random.pick(kinds.adapter))}, ${random.pick(hands)}, .335`;
  if (draw < 0.95) {
    const head = random.pick(kinds.head);
    return `${headWords(random, head).replace(/ head/, "")}, ${random.pick(flexes)} shaft, complete club`;
  }
  return `job lot: ${headWords(random, random.pick(kinds.head))} and a ${shaftWords(random, random.pick(kinds.shaft))} and 2 x ${nameOf(random.pick(kinds.grip))} grips`;
}

const nameOf = ({ maker, model }) => `${maker} ${model}`;

function headWords(random, model) {
  const loft = random.pick(lofts[model.clubType] ?? [null]);
  const type =
    model.clubType === "fairway" ? random.pick(["3 wood", "5 wood", "fairway wood"]) : model.clubType;
  const only = random.pick([" only", "", ""]);
  return `${nameOf(model)} ${type} head${only}${loft === null ? "" : `, ${loft}°`}, ${random.pick(hands)}`;
}

function shaftWords(random, model) {
  const adapter = random.chance(0.6) ? `, ${random.pick(families)} adapter fitted` : ", no adapter";
  return `${nameOf(model)} ${random.pick(flexes)} shaft${adapter}, ${random.step(40, 45, 0.25)} inches`;
}
