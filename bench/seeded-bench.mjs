import { seeded } from "./random.mjs";

const families = Array.from({ length: 12 }, (_, index) => `family ${index + 1}`);
const clubTypes = ["driver", "fairway", "hybrid", "iron", "wedge"];
const suitsOf = { driver: "wood", fairway: "wood", hybrid: "hybrid", iron: "iron", wedge: "iron" };

/**
 * A seeded bench: a quarter heads, a bit over a third shafts (half of them with an adapter and a grip on), the rest loose
 * adapters and grips. Sizes come from the trade's ladders and repeat as they do on a shelf.
 */
export function seededBench(count, seed) {
  const random = seeded(seed);
  const parts = [];
  const joints = [];
  for (let index = 0; index < Math.round(count * 0.25); index += 1) parts.push(headOf(random, `H${index}`));
  const shaftCount = Math.round(count * 0.35);
  for (let index = 0; index < shaftCount; index += 1) {
    const shaft = shaftOf(random, `S${index}`);
    parts.push(shaft);
    if (!random.chance(0.5)) continue;
    const adapter = adapterOf(random, `A${index}`);
    adapter.bore.diameterIn = shaft.tip.diameterIn;
    parts.push(adapter, gripOf(random, `G${index}`));
    joints.push(
      { type: "bonded", parts: [`A${index}`, `S${index}`] },
      { type: "gripped", parts: [`S${index}`, `G${index}`] },
    );
  }
  for (let index = 0; parts.length < count; index += 1)
    parts.push(index % 2 ? adapterOf(random, `LA${index}`) : gripOf(random, `LG${index}`));
  return { parts, joints, claims: claimsOf(random) };
}

/** A head as a listing would offer it: of a family, for the right hand. */
export function listedHead(seed) {
  const random = seeded(seed);
  return {
    ...headOf(random, "listed"),
    clubType: "driver",
    hand: "right",
    faults: [],
    socket: { type: "receiver", family: random.pick(families), seatToGroundIn: 2.4 },
  };
}

function headOf(random, id) {
  const clubType = random.pick(clubTypes);
  const bored = random.chance(clubType === "iron" || clubType === "wedge" ? 1 : 0.3);
  const diameterIn = random.pick(suitsOf[clubType] === "iron" ? [0.355, 0.37] : [0.335, 0.35]);
  const socket = bored
    ? {
        type: "bore",
        diameterIn,
        form: diameterIn === 0.355 ? "taper" : "parallel",
        depthIn: random.step(1.1, 1.5, 0.1),
        bbgmIn: random.step(0.75, 1.5, 0.25),
        outsideDiameterIn: 0.53,
      }
    : { type: "receiver", family: random.pick(families), seatToGroundIn: random.step(2, 2.6, 0.1) };
  return {
    id,
    kind: "head",
    clubType,
    socket,
    ...(random.chance(0.95) ? { hand: random.chance(0.9) ? "right" : "left" } : {}),
    massG: random.step(195, 300, 1),
    loftDeg: random.step(9, 56, 0.5),
    lieDeg: random.step(56, 64, 0.5),
    faults: random.chance(0.05) ? ["crack"] : [],
  };
}

function adapterOf(random, id) {
  return {
    id,
    kind: "adapter",
    family: random.pick(families),
    hand: random.chance(0.85) ? "right" : "left",
    bore: {
      diameterIn: random.pick([0.335, 0.35, 0.37]),
      form: "parallel",
      depthIn: random.step(1.1, 1.4, 0.1),
    },
    tipStopFromSeatIn: random.step(0.8, 1.2, 0.1),
    massG: random.step(5, 12, 0.5),
    tiltDeg: 1.5,
  };
}

function shaftOf(random, id) {
  const suits = random.pick(["wood", "wood", "hybrid", "iron"]);
  const material = suits === "iron" && random.chance(0.7) ? "steel" : "graphite";
  const diameterIn = random.pick(suits === "iron" ? [0.355, 0.37] : [0.335, 0.35]);
  return {
    id,
    kind: "shaft",
    suits,
    material,
    flex: random.pick(["senior", "regular", "stiff"]),
    massG: random.step(45, 125, 1),
    length: { lengthIn: random.step(36, 45, 0.125), basis: "shaft-alone" },
    tip: {
      diameterIn,
      form: diameterIn === 0.355 ? "taper" : "parallel",
      parallelSectionIn: random.step(2, 6, 0.5),
    },
    buttDiameterIn: random.pick([0.58, 0.6]),
    balanceFromTipIn: random.step(18, 23, 0.25),
    faults: random.chance(0.08) ? ["dent-shaft"] : [],
  };
}

function gripOf(random, id) {
  return {
    id,
    kind: "grip",
    massG: random.step(38, 55, 1),
    coreDiameterIn: random.pick([0.58, 0.6]),
    lengthIn: 10.5,
    capThicknessIn: 0.125,
  };
}

function claimsOf(random) {
  return Array.from({ length: 10 }, () => ({
    receiver: random.pick(families),
    adapter: random.pick(families),
    verdict: random.chance(0.7) ? "fits" : "does-not-fit",
    evidence: random.pick(["tried", "maker-stated"]),
  }));
}
