import type { ClubType, Fault, Flex, PartKind } from "@ferrule/core";

export const kindWords: Readonly<Record<PartKind, string>> = {
  head: "Head",
  adapter: "Adapter",
  shaft: "Shaft",
  grip: "Grip",
  cover: "Head cover",
  wrench: "Wrench",
};

export const clubTypeWords: Readonly<Record<ClubType, string>> = {
  driver: "Driver",
  fairway: "Fairway wood",
  hybrid: "Hybrid",
  iron: "Iron",
  wedge: "Wedge",
  putter: "Putter",
};

export const handWords = { right: "Right hand", left: "Left hand", either: "Either hand" } as const;

export const flexWords: Readonly<Record<Flex, string>> = {
  ladies: "Ladies",
  senior: "Senior",
  regular: "Regular",
  "regular-plus": "Regular plus",
  stiff: "Stiff",
  "x-stiff": "Extra stiff",
};

export const suitsWords = {
  wood: "Woods",
  hybrid: "Hybrids",
  iron: "Irons and wedges",
  putter: "Putters",
} as const;
export const materialWords = { graphite: "Graphite", steel: "Steel", multi: "Graphite and steel" } as const;
export const formWords = { parallel: "Parallel", taper: "Taper" } as const;

export const basisWords = {
  "shaft-alone": "the shaft alone",
  "with-adapter": "with its adapter on",
  playing: "as a playing length",
  unstated: "not said",
} as const;

export const jointWords = { screwed: "screwed to", bonded: "glued to", gripped: "gripped to" } as const;

export const sourceWords = {
  measured: "measured",
  stated: "somebody said so",
  catalogue: "from a catalogue",
  typical: "a typical figure",
  chosen: "chosen here",
} as const;

export const faultWords: Readonly<Record<Fault, string>> = {
  "sky-mark": "Sky mark on the crown",
  "crown-scratch": "Scratched crown",
  "face-wear": "Worn face",
  "dent-head": "Dented head",
  crack: "Crack",
  rattle: "Rattle in the head",
  "caved-face": "Caved face",
  "paint-wear-shaft": "Paint worn on the shaft (bag wear)",
  "dent-shaft": "Dented shaft",
  "crease-shaft": "Creased shaft",
  "exposed-fibre": "Fibres showing",
  "bent-shaft": "Bent shaft",
  rust: "Rust",
  "grip-worn": "Worn grip",
  "adapter-damaged": "Damaged adapter",
  "loose-joint": "Moves or creaks where it is joined",
  other: "Something else (say it in the note)",
};

const shared: readonly Fault[] = ["crack", "rust", "other"];

/** The faults worth asking about for each kind. */
export const faultsByKind: Readonly<Record<PartKind, readonly Fault[]>> = {
  head: [
    "crack",
    "caved-face",
    "dent-head",
    "rattle",
    "loose-joint",
    "sky-mark",
    "crown-scratch",
    "face-wear",
    "rust",
    "other",
  ],
  adapter: ["adapter-damaged", "loose-joint", ...shared],
  shaft: [
    "crack",
    "crease-shaft",
    "dent-shaft",
    "exposed-fibre",
    "bent-shaft",
    "loose-joint",
    "paint-wear-shaft",
    "rust",
    "grip-worn",
    "other",
  ],
  grip: ["grip-worn", "other"],
  cover: ["other"],
  wrench: shared,
};
