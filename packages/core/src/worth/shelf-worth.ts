import { roundMinor } from "../money.ts";
import type { Part } from "../parts/part.ts";
import type { PlainClub } from "../resolve/club.ts";
import type { Cluster } from "./clusters.ts";
import { convertedMinor } from "./converted.ts";
import type { DealContext } from "./deal-context.ts";
import { leftOf } from "./left-of.ts";
import { saleOf } from "./sale.ts";
import { subjectOfClub } from "./subject-of.ts";
import { thingOf } from "./thing.ts";
import { titleOfClub } from "./titles.ts";
import { workCost } from "./work-cost.ts";

/** What using parts of the shelf costs: what they would bring otherwise. */
export interface ShelfCost {
  readonly amountMinor: number;
  /** Parts whose worth nobody knows: they are counted at what was paid for them, or at nothing. */
  readonly guessed: readonly string[];
}

/** What the shelf loses when all of these parts go into other clubs at once. */
export interface ShelfCosts {
  readonly of: (ids: readonly string[]) => ShelfCost;
  /** Without the clubs that the bench makes of them: quickly told, and never more than the whole. */
  readonly atLeast: (ids: readonly string[]) => number;
}

/** A club that the bench makes without the listing, and what it brings over selling the things it is made of. */
interface ShelfClub {
  readonly id: string;
  readonly clusters: readonly Cluster[];
  readonly surplusMinor: number;
}

/**
 * Reckons what the shelf loses by parts: the worth of the things they are pieces of, less what is left of those, and what
 * the best clubs bring that the bench makes of them without the listing. Each thing and each club is lost once, however
 * many of its parts are used.
 */
export function shelfCosts(context: DealContext): ShelfCosts {
  const worth = new Map<Cluster, Worth>();
  const worthOf = (cluster: Cluster): Worth => {
    const found = worth.get(cluster) ?? worthOfThing(cluster, context);
    worth.set(cluster, found);
    return found;
  };
  const clubs = new Map<string, readonly ShelfClub[]>();
  const clubsOf = (lead: string): readonly ShelfClub[] => {
    const found = clubs.get(lead) ?? shelfClubsOf(lead, worthOf, context);
    clubs.set(lead, found);
    return found;
  };
  const clustersOf = (ids: readonly string[]) => [...new Set(ids.map((id) => context.clusterOf(id)))];
  const atLeast = (ids: readonly string[]) => {
    const used = new Set(ids);
    const losses = clustersOf(ids).map((cluster) => lossOf(cluster, used, worthOf(cluster), context));
    return losses.reduce((sum, each) => sum + each, 0);
  };
  const of = (ids: readonly string[]) => {
    const used = new Set(ids);
    const clusters = clustersOf(ids);
    const surplus = surplusOf(clusters.flatMap((cluster) => leadsOf(cluster, used).flatMap(clubsOf)));
    const guessed = clusters.filter((cluster) => worthOf(cluster).isGuess);
    return {
      amountMinor: atLeast(ids) + surplus,
      guessed: guessed.flatMap((cluster) => usedOf(cluster, used)),
    };
  };
  return { of, atLeast };
}

interface Worth {
  readonly amountMinor: number;
  readonly isGuess: boolean;
}

const usedOf = (cluster: Cluster, used: ReadonlySet<string>) =>
  cluster.flatMap(({ id }) => (used.has(id) ? id : []));

const leadsOf = (cluster: Cluster, used: ReadonlySet<string>) =>
  usedOf(
    cluster.filter(({ kind }) => kind === "shaft" || kind === "head"),
    used,
  );

/** A thing's sale as it is; where nobody knows a price, what was paid for it. */
function worthOfThing(parts: Cluster, context: DealContext): Worth {
  const { sale } = thingOf(parts, context);
  if (sale) return { amountMinor: Math.max(0, roundMinor(sale.gain.value)), isGuess: false };
  const paid = parts.reduce((sum, { paid }) => sum + ((paid && convertedMinor(paid, context.costs)) || 0), 0);
  return { amountMinor: paid, isGuess: true };
}

/** The worth of a thing, less that of what is left of it. */
function lossOf(cluster: Cluster, used: ReadonlySet<string>, whole: Worth, context: DealContext): number {
  const rest = leftOf(cluster, used, context.joints);
  const restMinor = rest.reduce((sum, piece) => sum + worthOfThing(piece, context).amountMinor, 0);
  return Math.max(0, whole.amountMinor - restMinor);
}

function shelfClubsOf(lead: string, worthOf: (cluster: Cluster) => Worth, context: DealContext): ShelfClub[] {
  const { clubs } = context.resolveWithout(lead);
  const settled = clubs.filter(({ verdict }) => verdict !== "unsettled");
  return settled.flatMap((club) => shelfClub(club, worthOf, context) ?? []);
}

function shelfClub(
  club: PlainClub,
  worthOf: (cluster: Cluster) => Worth,
  context: DealContext,
): ShelfClub | undefined {
  const part = (id: string) => context.parts.get(id) as Part;
  const [head, shaft, grip] = [part(club.head), part(club.shaft), part(club.grip)];
  const resale = context.resale(subjectOfClub({ head, shaft, grip }, context.finder, {}));
  const sale = saleOf(titleOfClub(head, shaft), "club", resale, context.costs);
  if (!sale) return undefined;
  const ids = [club.head, club.adapter, club.shaft, club.grip].filter((id) => id !== null);
  const clusters = [...new Set(ids.map((id) => context.clusterOf(id)))];
  const apartMinor = clusters.reduce((sum, cluster) => sum + worthOf(cluster).amountMinor, 0);
  const work = workCost(club.work, context.costs).totalMinor;
  return { id: club.id, clusters, surplusMinor: roundMinor(sale.gain.value) - work - apartMinor };
}

/** The most that clubs bring which can all be made at once, chosen one after another. */
function surplusOf(clubs: readonly ShelfClub[]): number {
  const best = clubs
    .filter(({ surplusMinor }) => surplusMinor > 0)
    .toSorted((one, other) => other.surplusMinor - one.surplusMinor || (one.id < other.id ? -1 : 1));
  const taken = new Set<Cluster>();
  let sum = 0;
  for (const { clusters, surplusMinor } of best) {
    if (clusters.some((cluster) => taken.has(cluster))) continue;
    for (const cluster of clusters) taken.add(cluster);
    sum += surplusMinor;
  }
  return sum;
}
