import type { Bench } from "../graph/bench-graph.ts";
import type { Joint } from "../parts/joint.ts";
import type { Part, PartKind } from "../parts/part.ts";
import { once } from "../resolve/once.ts";
import { type ReadyBench, readyBench, withParts } from "../resolve/ready-bench.ts";
import { type ClubsAndWants, clubsAndWants } from "../resolve/resolve-bench.ts";
import type { Want } from "../resolve/result.ts";
import { type Cluster, clustersOf } from "./clusters.ts";
import type { CostSettings } from "./cost-settings.ts";
import type { DealInput } from "./deal-input.ts";
import { resaleEstimator } from "./estimate-resale.ts";
import type { Subject } from "./evidence.ts";
import { type ModelFinder, modelFinder } from "./model-finder.ts";
import { countingIds, type ListingParts, partsOfListing } from "./parts-of-listing.ts";
import type { Resale } from "./resale.ts";
import { type SeenForWant, wantsSeen } from "./seen-for-want.ts";
import { typedEvidence } from "./typed-evidence.ts";
import { unsoldBench } from "./unsold-bench.ts";

/** What every step of a judgement looks things up in. */
export interface DealContext {
  readonly input: DealInput;
  readonly costs: CostSettings;
  readonly finder: ModelFinder;
  /** The listing as parts. */
  readonly offered: ListingParts;
  /** The bench without the listing and without what has been sold, and its parts by their ids. */
  readonly shelf: { readonly bench: Bench; readonly parts: ReadonlyMap<string, Part> };
  /** All parts, of the bench and of the listing. */
  readonly parts: ReadonlyMap<string, Part>;
  readonly joints: readonly Joint[];
  /** The heads, shafts and adapters of the listing that are tried in clubs, and how many are left out. */
  readonly leads: { readonly tried: readonly Part[]; readonly left: number };
  readonly isOffered: (id: string) => boolean;
  readonly clusterOf: (id: string) => Cluster;
  readonly resale: (subject: Subject) => Resale;
  /** What the log of sightings says of a wanted part. */
  readonly seen: (want: Want) => SeenForWant;
  /** What the bench with the listing on it comes to for one part. */
  readonly resolveWith: (about: string) => ClubsAndWants;
  /** What the bench as it is comes to for one of its parts. */
  readonly resolveWithout: (about: string) => ClubsAndWants;
  /** The bench as it is, made ready when it is first asked for. */
  readonly alone: () => ReadyBench;
}

/** Most clubs looked at for one part: the best ones come first. Of the bench without the listing the first few tell enough. */
const clubsMax = { withListing: 24, without: 3 };

/**
 * Makes a judgement's tables. With the tables of another listing for the same bench, what was found out of the bench, the prices
 * and the catalogue is not found out again. Throws when the bench does not hold together: whoever calls has checked it.
 */
export function dealContext(input: DealInput, same?: DealContext): DealContext {
  const shelf = same?.shelf ?? shelfOf(input.bench);
  const { bench } = shelf;
  const finder = same?.finder ?? modelFinder(input.catalogue);
  const offered = partsOfListing(input.listing, finder, freeIds(shelf.parts));
  const own = (limit: number) => ({ ...bench, goal: { ...bench.goal, limit } });
  const parts = new Map(shelf.parts);
  for (const part of offered.parts) parts.set(part.id, part);
  const joints = [...(bench.joints ?? []), ...offered.joints];
  const clusters = same ? clustersOf(offered.parts, offered.joints) : clustersOf([...parts.values()], joints);
  const alone = same?.alone ?? once(() => ready(own(clubsMax.without), input));
  const readyWith = once(() => readyWithListing(alone(), offered));
  const estimate = once(() =>
    resaleEstimator(typedEvidence(input.evidence, finder), input.costs, input.today),
  );
  return {
    input,
    costs: input.costs,
    finder,
    offered,
    shelf,
    parts,
    joints,
    leads: leadsOf(offered),
    isOffered: (id) => offered.itemOf.has(id),
    clusterOf: (id) => clusters.get(id) ?? same?.clusterOf(id) ?? [],
    resale: same?.resale ?? remembered((subject: Subject) => estimate()(subject)),
    seen: same?.seen ?? rememberedSeen(input, finder),
    alone,
    resolveWith: remembered((about: string) => clubsAndWants(readyWith(), about)),
    resolveWithout: same?.resolveWithout ?? remembered((about: string) => clubsAndWants(alone(), about)),
  };
}

/** Heads, shafts and adapters of a listing that are tried in clubs, of a job lot the first: each asks the whole bench. */
const leadsMax = 24;

/** The parts of the listing that are tried in clubs: of identical things one, which speaks for the others. */
function leadsOf(offered: ListingParts): DealContext["leads"] {
  const first = new Set(offered.things.flatMap((copies) => copies[0] ?? []));
  const leads = offered.parts.filter(
    ({ id, kind }) => first.has(id) && (kind === "head" || kind === "shaft" || kind === "adapter"),
  );
  return { tried: leads.slice(0, leadsMax), left: Math.max(0, leads.length - leadsMax) };
}

/** The bench with the listing on it: of identical things one, which speaks for the others. */
function readyWithListing(alone: ReadyBench, offered: ListingParts): ReadyBench {
  const first = new Set(offered.things.flatMap((copies) => copies[0] ?? []));
  const { graph } = alone;
  return withParts(
    { ...alone, graph: { ...graph, goal: { ...graph.goal, limit: clubsMax.withListing } } },
    offered.parts.filter(({ id }) => first.has(id)),
    offered.joints.filter(({ parts: [id] }) => first.has(id)),
  );
}

function shelfOf(given: Bench): DealContext["shelf"] {
  const bench = unsoldBench(given);
  return { bench, parts: new Map(bench.parts.map((part) => [part.id, part])) };
}

function ready(bench: DealInput["bench"], { rules, reference }: DealInput): ReadyBench {
  const made = readyBench(bench, rules, reference);
  if (!made.ok) throw new Error(`the bench does not hold together: ${JSON.stringify(made.refusals[0])}`);
  return made.ready;
}

/** Ids for the listing's parts that no part of the bench has. */
function freeIds(taken: ReadonlyMap<string, Part>): (kind: PartKind) => string {
  const next = countingIds("listing");
  const free = (kind: PartKind): string => {
    const id = next(kind);
    return taken.has(id) ? free(kind) : id;
  };
  return free;
}

/** What was seen for a want hangs on its kind and on what it needs alone. */
function rememberedSeen({ sightings, costs, today }: DealInput, finder: ModelFinder): DealContext["seen"] {
  const seen = once(() => wantsSeen(sightings, finder, costs, today));
  const known = new Map<string, SeenForWant>();
  return (want) => {
    const key = JSON.stringify([want.kind, want.needs]);
    const found = known.get(key) ?? seen()(want);
    known.set(key, found);
    return found;
  };
}

/** Answers each question once. */
function remembered<Question, Answer>(
  answer: (question: Question) => Answer,
): (question: Question) => Answer {
  const known = new Map<string, Answer>();
  return (question) => {
    const key = JSON.stringify(question);
    const found = known.get(key) ?? answer(question);
    known.set(key, found);
    return found;
  };
}
