import type { Part } from "../parts/part.ts";
import type { Club } from "../resolve/result.ts";
import type { Cluster } from "./clusters.ts";
import { convertedMinor } from "./converted.ts";
import type { DealContext } from "./deal-context.ts";
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

/**
 * What the shelf loses when these parts go into another club: the worth of the things they are pieces of, less what is left
 * of those. A thing is worth its sale as it is, or the best club it makes with what is here without the listing.
 */
export function shelfCost(ids: readonly string[], context: DealContext): ShelfCost {
  const used = new Set(ids);
  const clusters = new Set(ids.map((id) => context.clusterOf(id)));
  let amountMinor = 0;
  const guessed: string[] = [];
  for (const cluster of clusters) {
    const whole = worthOfThing(cluster, context);
    const left = cluster.filter(({ id }) => !used.has(id));
    const rest = left.reduce((sum, part) => sum + worthOfThing([part], context).amountMinor, 0);
    const best = Math.max(whole.amountMinor, worthInClub(cluster, used, context));
    amountMinor += Math.max(0, best - rest);
    if (whole.isGuess) guessed.push(...cluster.filter(({ id }) => used.has(id)).map(({ id }) => id));
  }
  return { amountMinor, guessed };
}

/** A thing's sale as it is; where nobody knows a price, what was paid for it. */
function worthOfThing(parts: Cluster, context: DealContext): { amountMinor: number; isGuess: boolean } {
  const { sale } = thingOf(parts, context);
  if (sale) return { amountMinor: Math.max(0, Math.round(sale.gain.value)), isGuess: false };
  const paid = parts.reduce((sum, { paid }) => sum + ((paid && convertedMinor(paid, context.costs)) || 0), 0);
  return { amountMinor: paid, isGuess: true };
}

/** What the thing earns over its other parts in the best settled club that the bench makes of it now. */
function worthInClub(cluster: Cluster, used: ReadonlySet<string>, context: DealContext): number {
  const lead = cluster.find(({ id, kind }) => used.has(id) && (kind === "shaft" || kind === "head"));
  if (!lead) return 0;
  const { clubs } = context.resolveWithout(lead.id);
  const settled = clubs.filter(({ verdict }) => verdict !== "unsettled").slice(0, clubsCompared);
  return Math.max(0, ...settled.map((club) => earnedOver(club, cluster, context)));
}

/** Clubs that are compared for one part: the resolver brings the best first. */
const clubsCompared = 3;

function earnedOver(club: Club, cluster: Cluster, context: DealContext): number {
  const part = (id: string) => context.parts.get(id) as Part;
  const [head, shaft, grip] = [part(club.head), part(club.shaft), part(club.grip)];
  const resale = context.resale(subjectOfClub({ head, shaft, grip }, context.finder, {}));
  const sale = saleOf(titleOfClub(head, shaft), "club", resale, context.costs);
  if (!sale) return 0;
  const own = new Set(cluster.map(({ id }) => id));
  const others = new Set(
    [club.head, club.adapter, club.shaft, club.grip]
      .filter((id): id is string => id !== null && !own.has(id))
      .map((id) => context.clusterOf(id)),
  );
  const othersMinor = [...others].reduce((sum, each) => sum + worthOfThing(each, context).amountMinor, 0);
  return Math.round(sale.gain.value) - workCost(club.work, context.costs).totalMinor - othersMinor;
}
