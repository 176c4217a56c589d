import { chances } from "./chances.mjs";
import { adapterPrice, clubPrice, headPrice, shaftPrice } from "./class-prices.mjs";

/** How the made-up market behaves: all from memory, no published source, and set before any policy was run. */
const perDay = 2;
const kinds = { head: 0.36, fitted: 0.22, bare: 0.12, adapter: 0.12, donor: 0.18 };
const hands = { right: 0.85, left: 0.15 };
const flexes = { regular: 0.45, stiff: 0.4, senior: 0.15 };
const faults = { none: 0.86, "sky-mark": 0.1, crack: 0.04 };
/** A fault that the words do not speak of; a crack that is told makes nobody's listing. */
const hiddenFaultChance = { "sky-mark": 0.4, crack: 1 };
const askedOverSold = { head: 0.85, fitted: 0.85, bare: 0.85, adapter: 0.9, donor: 0.9 };
const askedSpread = { head: 0.45, fitted: 0.45, bare: 0.45, adapter: 0.4, donor: 0.25 };
const negotiableChance = 0.4;
/** What a seller who invites offers takes at least, as a share of what is asked. */
const leastTaken = [0.75, 1];
const unsaid = { hand: 0.12, flex: 0.25 };
const answersChance = 0.7;
/** Hours until it is gone, on the average: each listing has a mean of its own between these, evenly in the logarithm. */
const goneAfterHours = [8, 144];
const postageMinor = { head: 490, fitted: 890, bare: 890, adapter: 300, donor: 1490 };
const postageIncludedChance = 0.3;
const families = ["Quillon 1", "Quillon 2", "Tarnlock", "Brackwater"];
const types = new Set(["driver", "fairway", "hybrid"]);
const typeShares = { driver: 0.5, fairway: 0.28, hybrid: 0.22 };

/**
 * The listings of so many days, in the order in which they appear, with all that is true of the things, whether the words say it
 * or not, and with the luck of every sale. Nothing that a policy does changes any of it.
 */
export function arrivalsOf(seed, days, catalogue) {
  const draw = chances(seed);
  const models = catalogue.filter(
    ({ kind, clubType, adapterFamily }) =>
      kind === "head" && types.has(clubType) && families.includes(adapterFamily),
  );
  const shafts = catalogue.filter(({ kind }) => kind === "shaft");
  const world = { draw, models, shafts };
  const listings = [];
  for (let day = 0; day < days; day += 1) {
    const count = draw.poisson(perDay);
    for (let at = 0; at < count; at += 1) listings.push(listing(`L${day}-${at}`, day, world));
  }
  return listings;
}

function listing(id, day, world) {
  const { draw } = world;
  const kind = draw.byShare(kinds);
  const goods = goodsOf(kind, id, world);
  const level = levelOf(kind, goods);
  const asked = level * askedOverSold[kind] * Math.exp(askedSpread[kind] * draw.normal());
  const askingMinor = Math.max(100, Math.round(asked / 100) * 100);
  const [least, most] = leastTaken;
  const negotiable = draw.chance(negotiableChance);
  const share = draw.between(least, most);
  const [shortest, longest] = goneAfterHours.map(Math.log);
  const hours = draw.exponential(Math.exp(draw.between(shortest, longest)));
  const at = draw.next() * 24;
  return {
    ...{ id, day, kind, goods, askingMinor, negotiable },
    leastMinor: negotiable ? Math.ceil(askingMinor * share) : askingMinor,
    postageMinor: draw.chance(postageIncludedChance) ? 0 : postageMinor[kind],
    /** Looked at in the evening: the last evening on which it is still there, or none. */
    lastDay: day + Math.floor((at + hours - 24) / 24),
    unsaid: { hand: draw.chance(unsaid.hand), flex: draw.chance(unsaid.flex), fault: isHidden(goods, draw) },
    answers: draw.chance(answersChance),
  };
}

function isHidden({ head }, draw) {
  const chance = draw.next();
  return head ? chance < (hiddenFaultChance[head.fault] ?? 0) : false;
}

/** The parts that a listing sells: each with the luck that it will have when it is sold. */
function goodsOf(kind, id, { draw, models, shafts }) {
  const type = draw.byShare(typeShares);
  const model = draw.pick(models.filter(({ clubType }) => clubType === type));
  const family = model.adapterFamily;
  const sort = model.clubType === "hybrid" ? "hybrid" : "wood";
  const hand = draw.byShare(hands);
  const luck = () => ({ price: draw.normal(), days: draw.normal() });
  const fault = draw.byShare(faults);
  const head = { id: `${id}-h`, kind: "head", model, family, sort, hand, fault, luck: luck() };
  const shaftModel = draw.pick(shafts.filter((each) => (each.clubType === "hybrid") === (sort === "hybrid")));
  const flex = draw.byShare(flexes);
  const isGripped = kind === "donor";
  const shaft = { id: `${id}-s`, kind: "shaft", model: shaftModel, sort, flex, isGripped, luck: luck() };
  const adapter = { id: `${id}-a`, kind: "adapter", family, sort, hand, luck: luck() };
  if (kind === "head") return { head };
  if (kind === "fitted") return { shaft, adapter };
  if (kind === "bare") return { shaft };
  return kind === "adapter" ? { adapter } : { head, shaft, adapter };
}

/** What the seller thinks it is worth: a fault that is hidden from the buyer is hidden from the price. */
function levelOf(kind, { head, shaft, adapter }) {
  const sound = head && { ...head, fault: head.fault === "crack" ? "none" : head.fault };
  if (kind === "head") return headPrice(sound);
  if (kind === "donor") return clubPrice(sound, shaft);
  return kind === "adapter" ? adapterPrice() : shaftPrice(shaft, adapter !== undefined);
}
