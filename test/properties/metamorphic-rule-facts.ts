import type { Claim, Goal, Skill } from "@ferrule/core";
import { formBySize } from "../../packages/core/src/measure/form-by-size.ts";

/** What parts may say of themselves, by the path of the fact; a path that is left out is a fact that nobody knows. */
export type Known = Readonly<Record<string, unknown>>;

/** Parts that a rule is asked about: what it may be told of them, and what is so beside them from the first. */
export interface RuleFacts {
  /** Every path that the rule reads, with the values it is tried with. */
  readonly values: Readonly<Record<string, readonly unknown[]>>;
  /** So from the first: without it the rule would not be asked. */
  readonly always?: Known;
  readonly goals?: readonly Goal[];
  readonly claims?: readonly Claim[];
  readonly workSkills?: readonly Skill[];
  /** Facts that nobody measures and that a fit takes to be in order while nobody says otherwise: such a fit is not proven. */
  readonly presumes?: readonly string[];
  /** Facts of one part that cannot both be so. */
  readonly contradicts?: (known: Known) => boolean;
}

const types = ["driver", "fairway", "hybrid", "iron", "wedge", "putter"];
const hands = ["right", "left"];
const forms = ["parallel", "taper"];
const families = ["Quillon 1", "Quillon 2", "Tarnlock"];
const bored = { "head.socket.type": "bore" };
const received = { "head.socket.type": "receiver" };

const deniesWhatItHas = (place: string) => (known: Known) => {
  const denied = (known[`${place}.deniedFaults`] ?? []) as readonly string[];
  return ((known[`${place}.faults`] ?? []) as readonly string[]).some((fault) => denied.includes(fault));
};

/** Fibres show on no steel shaft, and graphite does not rust. */
function shaftContradicts(known: Known): boolean {
  const faults = (known["shaft.faults"] ?? []) as readonly string[];
  const material = known["shaft.material"];
  const isOther =
    (faults.includes("exposed-fibre") && material === "steel") ||
    (faults.includes("rust") && (material === "graphite" || material === "multi"));
  return isOther || deniesWhatItHas("shaft")(known);
}

const measured = (value: number) => ({ value, source: "measured" as const });

/** A size that is sold in one form alone, and the other form written beside it. */
const mislabels = (form: string, size: string) => (known: Known) => {
  const value = known[size] as number | { value: number } | undefined;
  if (value === undefined || known[form] === undefined) return false;
  const sizeIn = typeof value === "number" ? value : value.value;
  const bySize = formBySize({ value: sizeIn, plusMinus: 0, source: "measured" });
  return bySize !== undefined && bySize !== known[form];
};

const faultsOf = (place: string, own: readonly string[], denials: readonly string[]) => ({
  [`${place}.faults`]: [[], ...own.map((fault) => [fault]), ["loose-joint"], ["other"], own.slice(0, 2)],
  [`${place}.deniedFaults`]: [[], denials, denials.slice(0, 1)],
});

const lengths = {
  "shaft.length.lengthIn": [10, 13, measured(30), 38, measured(44), 47.5, measured(52)],
  "shaft.length.basis": ["shaft-alone", "unstated"],
  "head.socket.bbgmIn": [0.75, measured(1), 1.5],
  "grip.capThicknessIn": [0.125, measured(0.2)],
};

const claims: readonly Claim[] = (
  ["tried", "maker-stated", "seen-assembled", "seller-said"] as const
).flatMap((evidence) =>
  (["fits", "does-not-fit"] as const).flatMap((verdict) =>
    [{}, { hand: "left" as const }, { clubType: "driver" as const }].map((only) => ({
      receiver: "Quillon 1",
      adapter: "Quillon 2",
      verdict,
      evidence,
      ...only,
    })),
  ),
);

const diameters = {
  "head.socket.diameterIn": [measured(0.335), 0.35, measured(0.355), 0.37, measured(0.374)],
  "shaft.tip.diameterIn": [measured(0.335), 0.337, measured(0.355), 0.37, measured(0.372), measured(0.4)],
};

/** By rule. A `must` rule that is missing here fails the test that reads this. */
export const ruleFacts: Readonly<Record<string, readonly RuleFacts[]>> = {
  "head-hand-wanted": [{ values: { "head.hand": hands }, goals: [{}, { hand: "right" }, { hand: "left" }] }],
  "head-sound": [
    {
      values: faultsOf(
        "head",
        ["crack", "caved-face", "sky-mark", "rust", "rattle", "dent-head"],
        ["crack", "caved-face"],
      ),
      presumes: ["head.faults"],
      contradicts: deniesWhatItHas("head"),
    },
  ],
  "shaft-sound": [
    {
      values: {
        ...faultsOf(
          "shaft",
          ["crack", "exposed-fibre", "rust", "bent-shaft", "paint-wear-shaft"],
          ["dent-shaft", "crease-shaft", "crack", "exposed-fibre", "bent-shaft", "rust"],
        ),
        "shaft.material": ["graphite", "steel", "multi"],
      },
      presumes: ["shaft.faults"],
      contradicts: shaftContradicts,
    },
  ],
  "adapter-sound": [
    {
      values: faultsOf("adapter", ["crack", "adapter-damaged", "rust"], ["crack", "adapter-damaged"]),
      presumes: ["adapter.faults"],
      contradicts: deniesWhatItHas("adapter"),
    },
  ],
  "shaft-suits-club-type": [
    { values: { "shaft.suits": ["wood", "hybrid", "iron", "putter"], "head.clubType": types } },
  ],
  "socket-type-known": [{ values: { "head.socket.type": ["bore", "receiver"] } }],
  "receiver-takes-adapter": [
    {
      always: received,
      values: {
        "head.socket.family": families,
        "adapter.family": families,
        "head.hand": hands,
        "head.clubType": types,
      },
      claims,
    },
  ],
  "same-hand": [
    {
      always: received,
      values: {
        "adapter.hand": [...hands, "either"],
        "head.hand": hands,
        "adapter.tiltDeg": [measured(0), 1.5],
      },
      // A hand written on an adapter says that it is tilted; a tilt of nothing says that it has no hand.
      contradicts: (known) =>
        hands.includes(String(known["adapter.hand"])) &&
        (known["adapter.tiltDeg"] as { value?: number } | undefined)?.value === 0,
    },
  ],
  "tip-enters-bore": [
    {
      always: bored,
      values: {
        ...diameters,
        "shaft.material": ["graphite", "steel", "multi"],
        "head.socket.outsideDiameterIn": [measured(0.44), 0.47, measured(0.53)],
      },
    },
    {
      always: received,
      values: {
        "adapter.bore.diameterIn": [measured(0.335), 0.35, measured(0.355), 0.37],
        "shaft.tip.diameterIn": diameters["shaft.tip.diameterIn"],
        "shaft.material": ["graphite", "steel"],
      },
    },
  ],
  "tip-form-suits-bore": [
    {
      always: bored,
      values: { ...diameters, "shaft.tip.form": forms, "head.socket.form": forms },
      contradicts: (known) =>
        mislabels("shaft.tip.form", "shaft.tip.diameterIn")(known) ||
        mislabels("head.socket.form", "head.socket.diameterIn")(known),
    },
  ],
  "insertion-deep-enough": [
    {
      always: bored,
      values: { "head.socket.depthIn": [0.3, measured(0.6), 0.8, 1.25, 1.5], "head.clubType": types },
    },
  ],
  "parallel-section-long-enough": [
    {
      always: bored,
      values: {
        "shaft.tip.form": forms,
        "shaft.tip.diameterIn": diameters["shaft.tip.diameterIn"],
        "shaft.tip.trimmedIn": [0, 0.5, 2],
        "shaft.tip.parallelSectionIn": [measured(0.5), 1, 4],
        "head.socket.depthIn": [0.9, measured(1.25), 1.5],
      },
      presumes: ["shaft.tip.trimmedIn"],
      contradicts: mislabels("shaft.tip.form", "shaft.tip.diameterIn"),
    },
  ],
  "grip-core-suits-butt": [
    {
      values: {
        "shaft.buttDiameterIn": [0.5, 0.58, measured(0.6), 0.62, measured(0.68)],
        "grip.coreDiameterIn": [0.5, 0.58, measured(0.6), 0.65],
      },
    },
  ],
  "head-volume-within-rules": [
    {
      values: {
        "head.clubType": ["driver", "fairway", "hybrid"],
        "head.volumeCm3": [440, measured(465), 471, measured(490), measured(500), measured(520)],
      },
      presumes: ["head.volumeCm3"],
    },
  ],
  "head-size-within-rules": [
    {
      values: {
        "head.clubType": types,
        "head.heelToToeIn": [3, measured(4.5), 5.05, 5.6],
        "head.faceToBackIn": [2.5, measured(4), 5.2],
        "head.soleToCrownIn": [2, measured(2.5), 2.85, 3.4],
      },
      presumes: ["head.heelToToeIn", "head.faceToBackIn", "head.soleToCrownIn"],
    },
  ],
  "neck-within-rules": [
    { values: { "head.neckToSoleIn": [3, measured(4.9), 5.05, 5.6] }, presumes: ["head.neckToSoleIn"] },
  ],
  "grip-within-rules": [
    {
      values: {
        "grip.outsideDiameterIn": [0.9, measured(1.3), 1.76, 2.2],
        "grip.lengthIn": [5, measured(6.5), 7, 10.5],
        "head.clubType": types,
      },
      presumes: ["grip.outsideDiameterIn", "grip.lengthIn"],
    },
  ],
  "length-reachable": [
    {
      always: bored,
      values: lengths,
      goals: [{}, { playingLengthIn: 34 }, { playingLengthIn: 43 }, { playingLengthIn: 46 }],
    },
  ],
  "length-within-rules": [
    {
      always: bored,
      values: { ...lengths, "head.clubType": types },
      goals: [
        {},
        { localRule46: true },
        { playingLengthIn: 45 },
        { playingLengthIn: 47.95 },
        { playingLengthIn: 49 },
      ],
    },
  ],
  "length-within-local-rule": [
    {
      always: bored,
      values: { ...lengths, "head.clubType": types },
      goals: [
        {},
        { localRule46: true },
        { localRule46: true, playingLengthIn: 45 },
        { localRule46: true, playingLengthIn: 47 },
      ],
    },
  ],
  "work-within-skill": [
    {
      values: {},
      goals: [{}, { skill: "screw" }, { skill: "regrip" }, { skill: "bond" }, { skill: "machine" }],
      workSkills: ["screw", "regrip", "bond", "machine"],
    },
  ],
};
