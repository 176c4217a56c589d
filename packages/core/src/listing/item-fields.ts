import type { ItemKind } from "./catalogue.ts";
import type { Mention, MentionField } from "./mention.ts";

const always: readonly MentionField[] = ["year", "clubType", "adapterFamily"];
const head: readonly MentionField[] = [
  ...always,
  "clubNumber",
  "loftDeg",
  "hand",
  "tip",
  "adapter",
  "cover",
  "wrench",
];
const shaft: readonly MentionField[] = [
  ...always,
  "clubNumber",
  "hand",
  "flex",
  "shaftMaterial",
  "shaftMassG",
  "length",
  "tip",
  "adapter",
  "wrench",
  "cover",
];

/** Which facts a thing of each kind can have. */
const fields: Readonly<Record<ItemKind, ReadonlySet<MentionField>>> = {
  club: new Set([...head, ...shaft]),
  head: new Set(head),
  shaft: new Set(shaft),
  adapter: new Set<MentionField>(["year", "hand", "tip", "adapterFamily", "wrench"]),
  grip: new Set<MentionField>(["year", "clubType"]),
  cover: new Set<MentionField>(["year", "clubType", "clubNumber", "hand"]),
  wrench: new Set<MentionField>(["adapterFamily"]),
};

/** Faults that only a thing of some kinds can have; what is not named here, any may have. */
const faultKinds: Readonly<Record<string, readonly ItemKind[]>> = {
  "sky-mark": ["club", "head"],
  "crown-scratch": ["club", "head"],
  "face-wear": ["club", "head"],
  "dent-head": ["club", "head"],
  "caved-face": ["club", "head"],
  rattle: ["club", "head"],
  "paint-wear-shaft": ["club", "shaft"],
  "dent-shaft": ["club", "shaft"],
  "crease-shaft": ["club", "shaft"],
  "exposed-fibre": ["club", "shaft"],
  "bent-shaft": ["club", "shaft"],
  "grip-worn": ["club", "shaft", "grip"],
  "adapter-damaged": ["club", "head", "shaft", "adapter"],
};

/** Whether a fact can be one of a thing of some kind. */
export function canHave(kind: ItemKind, mention: Mention): boolean {
  if (mention.field === "fault" && mention.shaftOnly) return kind === "shaft";
  if (mention.field === "fault") return faultKinds[mention.value]?.includes(kind) ?? true;
  return fields[kind].has(mention.field);
}
