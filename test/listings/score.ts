import type { ListingItem } from "../../packages/core/src/listing/listing.ts";
import { bestPairs } from "./best-pairs.ts";
import type { ReadFacts } from "./corpus.ts";

/** How often a field was read right, read wrong or where nothing was said, and missed. */
export interface Tally {
  readonly right: number;
  readonly wrong: number;
  readonly missed: number;
}

export interface Score extends Tally {
  readonly field: string;
  /** How many the annotations hold: right and missed. */
  readonly instances: number;
  readonly precision: number;
  readonly recall: number;
  readonly f1: number;
}

export interface Scores {
  readonly overall: Score;
  readonly fields: readonly Score[];
}

/** Something that one listing's reading got otherwise than its annotation. */
export interface Difference {
  readonly key: string;
  readonly expected: unknown;
  readonly got: unknown;
}

const lengthSlackIn = 0.01;
const tipSlackIn = 0.001;
const near = (a: number | null, b: number | null, slack: number) =>
  a === b || (a !== null && b !== null && Math.abs(a - b) <= slack + Number.EPSILON);

type Equal = (expected: never, got: never) => boolean;

const equalLength = (a: NonNullable<ListingItem["length"]>, b: NonNullable<ListingItem["length"]>) =>
  a.basis === b.basis && near(a.lengthIn, b.lengthIn, lengthSlackIn);
const equalTip = (a: NonNullable<ListingItem["tip"]>, b: NonNullable<ListingItem["tip"]>) =>
  a.form === b.form && near(a.diameterIn, b.diameterIn, tipSlackIn);
/** Money in minor units, or a word, or a plain value. */
const equalPlain = (a: unknown, b: unknown) =>
  isMoney(a) && isMoney(b) ? a.amountMinor === b.amountMinor && a.currency === b.currency : a === b;

function isMoney(value: unknown): value is { amountMinor: number; currency: string } {
  return typeof value === "object" && value !== null && "amountMinor" in value;
}

const equalOf: Readonly<Record<string, Equal>> = { length: equalLength, tip: equalTip };

/** The facts by what they say which of: a field of the listing, a field of an item, or one fault. */
type Facts = ReadonlyMap<string, unknown>;

function factsOfItem({ quantity, faults, deniedFaults, ...plain }: ListingItem): Facts {
  return new Map<string, unknown>([
    ...Object.entries(plain).filter(([, value]) => value !== null),
    ...(quantity > 1 ? [["quantity", quantity] as const] : []),
    ...faults.map((fault) => [`faults.${fault}`, true] as const),
    ...deniedFaults.map((fault) => [`deniedFaults.${fault}`, true] as const),
  ]);
}

function factsOfListing({ intent, asking, negotiable, postage }: ReadFacts): Facts {
  const facts = Object.entries({ intent, asking, negotiable, postage });
  return new Map(facts.filter(([, value]) => value !== null));
}

const fieldOf = (key: string) => key.split(".")[0]!;

function agree(key: string, expected: Facts, got: Facts): boolean {
  if (!expected.has(key) || !got.has(key)) return false;
  return (equalOf[fieldOf(key)] ?? equalPlain)(expected.get(key) as never, got.get(key) as never);
}

/** Two things of one kind are paired before two that merely agree in a fact or two. */
const kindWeight = 3;

function pairWeight(expected: Facts, got: Facts): number {
  const agreed = [...expected.keys()].filter((key) => agree(key, expected, got));
  return agreed.length + (agreed.includes("kind") ? kindWeight : 0);
}

const nothing: Facts = new Map();

/** Each pair of what was expected and what was read: the listing itself, then its items, best paired. */
function pairsOf(expected: ReadFacts, got: ReadFacts): [Facts, Facts][] {
  const wanted = expected.items.map(factsOfItem);
  const read = got.items.map(factsOfItem);
  const partner = bestPairs(wanted.map((item) => read.map((other) => pairWeight(item, other))));
  const unread = new Set(read.keys());
  for (const index of partner) if (index !== null) unread.delete(index);
  return [
    [factsOfListing(expected), factsOfListing(got)],
    ...wanted.map((item, index): [Facts, Facts] => [item, read[partner[index] ?? -1] ?? nothing]),
    ...[...unread].map((index): [Facts, Facts] => [nothing, read[index]!]),
  ];
}

/** What a reading got otherwise than the annotation. */
export function differencesOf(expected: ReadFacts, got: ReadFacts): Difference[] {
  return pairsOf(expected, got).flatMap(([wanted, read]) =>
    [...new Set([...wanted.keys(), ...read.keys()])]
      .filter((key) => !agree(key, wanted, read))
      .map((key) => ({ key, expected: wanted.get(key), got: read.get(key) })),
  );
}

function scoreOf(field: string, { right, wrong, missed }: Tally): Score {
  const share = (of: number) => (of === 0 ? 1 : right / of);
  return {
    field,
    right,
    wrong,
    missed,
    instances: right + missed,
    precision: share(right + wrong),
    recall: share(right + missed),
    // The harmonic mean of precision and recall (van Rijsbergen, Information Retrieval, 2nd ed. 1979, chapter 7).
    f1: (2 * right) / Math.max(2 * right + wrong + missed, 1),
  };
}

/** Scores readings against annotations, per field and over all facts together. */
export function scoreReadings(
  readings: readonly { readonly expected: ReadFacts; readonly got: ReadFacts }[],
): Scores {
  const tallies = new Map<string, { right: number; wrong: number; missed: number }>();
  const all = { right: 0, wrong: 0, missed: 0 };
  const count = (key: string, what: keyof Tally) => {
    const field = fieldOf(key);
    const tally = tallies.get(field) ?? { right: 0, wrong: 0, missed: 0 };
    tallies.set(field, tally);
    tally[what] += 1;
    all[what] += 1;
  };
  for (const [wanted, read] of readings.flatMap(({ expected, got }) => pairsOf(expected, got))) {
    for (const key of wanted.keys()) count(key, agree(key, wanted, read) ? "right" : "missed");
    for (const key of read.keys()) if (!agree(key, wanted, read)) count(key, "wrong");
  }
  const fields = [...tallies].map(([field, tally]) => scoreOf(field, tally));
  return { overall: scoreOf("all", all), fields: fields.sort((a, b) => a.field.localeCompare(b.field)) };
}

const percent = (share: number) => (share * 100).toFixed(1).padStart(6);

/** The scores as a table of plain text. */
export function printTable({ overall, fields }: Scores): string {
  const lines = [...fields, overall].map(
    ({ field, instances, right, wrong, missed, precision, recall, f1 }) =>
      `${field.padEnd(14)}${[instances, right, wrong, missed].map((n) => String(n).padStart(6)).join("")}${percent(precision)}${percent(recall)}${percent(f1)}`,
  );
  return ["field           inst right wrong  miss  prec   rec    F1", ...lines].join("\n");
}
