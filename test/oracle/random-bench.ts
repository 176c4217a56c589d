import type { Claim, Goal, Joint, Part } from "@ferrule/core";
import fc from "fast-check";

/** A bench small enough to list every combination of its parts. */
export interface SmallBench {
  readonly parts: Part[];
  readonly joints: Joint[];
  readonly claims: Claim[];
  readonly goal: Goal;
}

const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 6 });
const families = fc.constantFrom("Alder", "Birch", "Cedar");

const head = fc.record({
  clubType: maybe(fc.constantFrom("driver", "hybrid", "iron", "putter")),
  hand: maybe(fc.constantFrom("right", "left")),
  volumeCm3: maybe(fc.constantFrom(440, 465, 471)),
  faults: maybe(fc.constantFrom([], ["sky-mark"], ["caved-face"], ["rattle"])),
  socket: maybe(
    fc.oneof(
      fc.record({
        type: fc.constant("bore"),
        diameterIn: maybe(fc.constantFrom(0.335, 0.35, 0.355, 0.37)),
        form: maybe(fc.constantFrom("parallel", "taper")),
        depthIn: maybe(fc.constantFrom(0.8, 1.25, 1.5)),
        bbgmIn: maybe(fc.constantFrom(0.75, 1.25)),
        outsideDiameterIn: maybe(fc.constantFrom(0.44, 0.53)),
      }),
      fc.record({
        type: fc.constant("receiver"),
        family: maybe(families),
        seatToGroundIn: maybe(fc.constantFrom(2, 2.5)),
      }),
    ),
  ),
});

const adapter = fc.record({
  family: maybe(families),
  hand: maybe(fc.constantFrom("right", "left", "either")),
  bore: maybe(
    fc.record({
      diameterIn: maybe(fc.constantFrom(0.335, 0.35, 0.37)),
      depthIn: maybe(fc.constantFrom(0.9, 1.3)),
    }),
  ),
  tiltDeg: maybe(fc.constantFrom(0, 1.5)),
  faults: maybe(fc.constantFrom([], ["adapter-damaged"])),
});

const shaft = fc.record({
  suits: maybe(fc.constantFrom("wood", "hybrid", "iron", "putter")),
  material: maybe(fc.constantFrom("graphite", "steel")),
  flex: maybe(fc.constantFrom("regular", "stiff")),
  length: maybe(
    fc.record({
      lengthIn: fc.constantFrom(30, 38, 44),
      basis: maybe(fc.constantFrom("shaft-alone", "playing", "with-adapter", "unstated")),
    }),
  ),
  tip: maybe(
    fc.record({
      diameterIn: maybe(fc.constantFrom(0.335, 0.337, 0.355, 0.37, 0.372)),
      form: maybe(fc.constantFrom("parallel", "taper")),
      parallelSectionIn: maybe(fc.constantFrom(0.6, 3)),
      trimmedIn: maybe(fc.constantFrom(0, 1)),
    }),
  ),
  buttDiameterIn: maybe(fc.constantFrom(0.58, 0.6)),
  faults: maybe(fc.constantFrom([], ["paint-wear-shaft"], ["dent-shaft"], ["rust"])),
});

const grip = fc.record({
  coreDiameterIn: maybe(fc.constantFrom(0.53, 0.58, 0.6)),
  lengthIn: maybe(fc.constantFrom(6.5, 10.5)),
});

const claim = fc.record({
  receiver: families,
  adapter: families,
  hand: maybe(fc.constantFrom("right", "left")),
  verdict: fc.constantFrom("fits", "does-not-fit"),
  evidence: fc.constantFrom("tried", "maker-stated", "seller-said"),
});

const goal = fc.record({
  hand: maybe(fc.constantFrom("right", "left")),
  playingLengthIn: maybe(fc.constantFrom(39, 45, 47)),
  skill: maybe(fc.constantFrom("screw", "regrip", "bond", "machine")),
  localRule46: maybe(fc.boolean()),
});

/** Numbers from which joints are drawn: tip, butt and receiver joints, each made or not. */
const draws = fc.array(fc.nat(5), { minLength: 12, maxLength: 12 });

/** Any bench of up to three heads, three adapters, three shafts and two grips, some of them joined already. */
export const smallBench: fc.Arbitrary<SmallBench> = fc
  .record({
    heads: fc.array(head, { minLength: 1, maxLength: 3 }),
    adapters: fc.array(adapter, { maxLength: 3 }),
    shafts: fc.array(shaft, { minLength: 1, maxLength: 3 }),
    grips: fc.array(grip, { maxLength: 2 }),
    claims: fc.array(claim, { maxLength: 3 }),
    goal,
    draws,
  })
  .map((drawn) => {
    const parts = [
      ...drawn.heads.map((part, index) => ({ ...part, id: `H${index}`, kind: "head" })),
      ...drawn.adapters.map((part, index) => ({ ...part, id: `A${index}`, kind: "adapter" })),
      ...drawn.shafts.map((part, index) => ({ ...part, id: `S${index}`, kind: "shaft" })),
      ...drawn.grips.map((part, index) => ({ ...part, id: `G${index}`, kind: "grip" })),
    ].map((part) => JSON.parse(JSON.stringify(part)) as Part);
    return {
      parts,
      joints: drawJoints(drawn.draws, drawn),
      claims: clean(drawn.claims) as Claim[],
      goal: clean(drawn.goal) as Goal,
    };
  });

function clean(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value));
}

interface Counts {
  readonly heads: readonly unknown[];
  readonly adapters: readonly unknown[];
  readonly shafts: readonly unknown[];
  readonly grips: readonly unknown[];
}

/** Joints at free ends only: shaft n may stand in an adapter or a head and carry a grip, an adapter may sit in a head. */
function drawJoints(numbers: readonly number[], { heads, adapters, shafts, grips }: Counts): Joint[] {
  const joints: Joint[] = [];
  const taken = new Set<string>();
  const join = (
    type: Joint["type"],
    a: string,
    aCount: number,
    b: string,
    bCount: number,
    draw: number,
    at: number,
  ) => {
    const first = `${a}${draw % Math.max(aCount, 1)}`;
    const second = `${b}${at}`;
    if (
      draw > 3 ||
      aCount === 0 ||
      at >= bCount ||
      taken.has(`${first} ${type}`) ||
      taken.has(`${second} ${type}`)
    )
      return;
    taken.add(`${first} ${type}`).add(`${second} ${type}`);
    joints.push({ type, parts: [first, second] });
  };
  for (const at of [0, 1, 2]) {
    const [inAdapter = 5, inHead = 5, withGrip = 5, screwed = 5] = numbers.slice(at * 4, at * 4 + 4);
    join("bonded", "A", adapters.length, "S", shafts.length, inAdapter, at);
    join("gripped", "G", grips.length, "S", shafts.length, withGrip, at);
    join("screwed", "H", heads.length, "A", adapters.length, screwed, at);
    if (!taken.has(`H${inHead % heads.length} screwed`) && inHead < 2)
      join("bonded", "H", heads.length, "S", shafts.length, inHead, at);
  }
  return joints.filter((joint) => noHeadTwice(joint, joints));
}

/** A head with a shaft bonded in it can have no adapter screwed in it as well. */
function noHeadTwice(joint: Joint, joints: readonly Joint[]): boolean {
  const [first] = joint.parts;
  return (
    joint.type !== "screwed" || !joints.some(({ type, parts }) => type === "bonded" && parts[0] === first)
  );
}
