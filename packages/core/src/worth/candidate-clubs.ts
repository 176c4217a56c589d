import type { Adapter, Part } from "../parts/part.ts";
import type { Club } from "../resolve/result.ts";
import type { DealContext } from "./deal-context.ts";
import type { Resale } from "./resale.ts";
import { type Sale, saleOf } from "./sale.ts";
import { shelfCost } from "./shelf-worth.ts";
import { subjectOfClub } from "./subject-of.ts";
import { titleOfClub } from "./titles.ts";
import { workCost } from "./work-cost.ts";

/** A club that can be made of something of the listing and something of the bench. */
export interface Candidate {
  readonly club: Club;
  readonly title: string;
  readonly resale: Resale;
  readonly sale: Sale | undefined;
  /** Parts of the listing, and of the bench, that go into it. */
  readonly takes: readonly string[];
  readonly uses: readonly string[];
  readonly work: ReturnType<typeof workCost>;
  readonly shelfMinor: number;
  readonly guessed: readonly string[];
  /** What it leaves over work and shelf, before anything is paid for the listing. */
  readonly earnsMinor: number;
}

/** Clubs kept for one part of the listing. */
const keptPerPart = 12;

/** The clubs that the listing makes with this bench, those that earn most first. A club whose worth nobody knows comes last. */
export function candidateClubs(context: DealContext): Candidate[] {
  const found = new Map<string, Club>();
  for (const part of context.offered.parts) {
    for (const club of clubsWith(part, context)) found.set(club.id, club);
  }
  return [...found.values()]
    .map((club) => candidateOf(club, context))
    .sort((one, other) => other.earnsMinor - one.earnsMinor || (one.club.id < other.club.id ? -1 : 1));
}

function clubsWith(part: Part, context: DealContext): Club[] {
  const isMixed = (club: Club) => {
    const ids = idsOf(club);
    // A cover or a grip alone makes no new club; a club wholly of the listing is the listing as it is.
    return ids.includes(part.id) && ids.some((id) => !context.isOffered(id));
  };
  if (part.kind === "head" || part.kind === "shaft") {
    return context.resolveWith(part.id).clubs.filter(isMixed).slice(0, keptPerPart);
  }
  if (part.kind !== "adapter" || context.clusterOf(part.id).length > 1) return [];
  return headsFor(part, context)
    .flatMap(({ id }) => context.resolveWith(id).clubs.filter(isMixed))
    .slice(0, keptPerPart);
}

/** The bench's heads that an adapter of this family may go into: those of the family, and those whose family nobody knows. */
function headsFor(adapter: Adapter, { parts, isOffered }: DealContext): Part[] {
  return [...parts.values()].filter((part) => {
    if (part.kind !== "head" || isOffered(part.id) || part.socket?.type === "bore") return false;
    const family = part.socket?.family;
    return family === undefined || adapter.family === undefined || family === adapter.family;
  });
}

const idsOf = ({ head, adapter, shaft, grip }: Club) =>
  [head, adapter, shaft, grip].filter((id): id is string => id !== null);

function candidateOf(club: Club, context: DealContext): Candidate {
  const ids = idsOf(club);
  const takes = ids.filter(context.isOffered);
  const uses = ids.filter((id) => !context.isOffered(id));
  const part = (id: string) => context.parts.get(id) as Part;
  const [head, shaft, grip] = [part(club.head), part(club.shaft), part(club.grip)];
  const title = titleOfClub(head, shaft);
  const resale = context.resale(
    subjectOfClub({ head, shaft, grip }, context.finder, extrasOf(club, context)),
  );
  const sale = saleOf(title, "club", resale, context.costs);
  const work = workCost(club.work, context.costs);
  const shelf = shelfCost(uses, context);
  return {
    club,
    title,
    resale,
    sale,
    takes,
    uses,
    work,
    shelfMinor: shelf.amountMinor,
    guessed: shelf.guessed,
    earnsMinor: sale ? sale.gain.value - work.totalMinor - shelf.amountMinor : Number.NEGATIVE_INFINITY,
  };
}

/** Whether a cover and a wrench come with the club: what the listing says of the head's item. */
function extrasOf(club: Club, { offered, input }: DealContext) {
  const place = offered.itemOf.get(club.head);
  const item = place === undefined ? undefined : input.listing.items[place];
  return item ? { cover: item.cover, wrench: item.wrench } : {};
}
