import { skills } from "../parts/goal.ts";
import type { Adapter, Part } from "../parts/part.ts";
import type { WeighedClub } from "../resolve/club.ts";
import type { DealContext } from "./deal-context.ts";
import type { Resale } from "./resale.ts";
import { type Sale, saleOf } from "./sale.ts";
import type { ShelfCosts } from "./shelf-worth.ts";
import { subjectOfClub } from "./subject-of.ts";
import { titleOfClub } from "./titles.ts";
import { workCost } from "./work-cost.ts";

/** A club that can be made of something of the listing, and something of the bench or of another item of the listing. */
export interface Candidate {
  readonly club: WeighedClub;
  readonly title: string;
  readonly resale: Resale;
  readonly sale: Sale | undefined;
  /** Parts of the listing that go with it, a cover and a wrench that came with its head among them. */
  readonly takes: readonly string[];
  /** Parts of the bench that go into it. */
  readonly uses: readonly string[];
  readonly work: ReturnType<typeof workCost>;
  /** What it leaves over work and shelf, before anything is paid for the listing; without end below nothing where nobody knows its price. */
  readonly earnsMinor: number;
}

/** Clubs kept for one part of the listing. */
const keptPerPart = 12;

/** The clubs that the listing makes with this bench, those that earn most first. A club whose worth nobody knows comes last. */
export function candidateClubs(context: DealContext, shelf: ShelfCosts): Candidate[] {
  const found = new Map<string, Candidate>();
  for (const part of context.leads.tried) {
    const rough = clubsWith(part, context).map((club) => candidateOf(club, context, shelf));
    for (const each of rough.sort(bestFirst).slice(0, keptPerPart)) found.set(each.club.id, each);
  }
  return [...found.values()].map((each) => withShelf(each, shelf)).sort(bestFirst);
}

/** The candidate with what all the parts of the shelf would bring otherwise, which takes longer to find out. */
function withShelf(candidate: Candidate, shelf: ShelfCosts): Candidate {
  const { sale, work, uses } = candidate;
  if (!sale) return candidate;
  return { ...candidate, earnsMinor: sale.gain.value - work.totalMinor - shelf.of(uses).amountMinor };
}

/** Settled clubs before open ones, so that a hope does not crowd out what is known; then by what they earn. */
function bestFirst(one: Candidate, other: Candidate): number {
  const open = ({ club }: Candidate) => Number(club.verdict === "unsettled");
  return (
    open(one) - open(other) || other.earnsMinor - one.earnsMinor || (one.club.id < other.club.id ? -1 : 1)
  );
}

function clubsWith(part: Part, context: DealContext): WeighedClub[] {
  const isNew = (club: WeighedClub) => idsOf(club).includes(part.id) && isMixed(idsOf(club), context);
  if (part.kind !== "adapter") return context.resolveWith(part.id).clubs.filter(isNew);
  if (context.clusterOf(part.id).length > 1 || !mayBond(context)) return [];
  const heads = headsFor(part, context).slice(0, headsMax);
  return heads.flatMap(({ id }) => context.resolveWith(id).clubs.filter(isNew));
}

/** Whether parts come from more than one place: a club that is wholly one item of the listing is that item as it is. */
function isMixed(ids: readonly string[], { offered }: DealContext): boolean {
  return new Set(ids.map((id) => offered.itemOf.get(id))).size > 1;
}

/** A loose adapter has to be bonded before it is of any use. */
function mayBond({ input }: DealContext): boolean {
  return skills.indexOf(input.bench.goal?.skill ?? "screw") >= skills.indexOf("bond");
}

/** Heads that are tried with a loose adapter. */
const headsMax = 8;

/** The heads of the bench that an adapter of this family may go into: those of the family, then those whose family nobody knows. */
function headsFor(adapter: Adapter, { parts, isOffered }: DealContext): Part[] {
  const familyOf = (part: Part) =>
    part.kind === "head" && part.socket?.type === "receiver" ? part.socket.family : undefined;
  const open = [...parts.values()].filter(
    (part) => part.kind === "head" && !isOffered(part.id) && part.socket?.type !== "bore",
  );
  const known = open.filter((part) => familyOf(part) !== undefined && familyOf(part) === adapter.family);
  const unknown = open.filter((part) => familyOf(part) === undefined || adapter.family === undefined);
  return [...new Set([...known, ...unknown])];
}

const idsOf = ({ head, adapter, shaft, grip }: WeighedClub) =>
  [head, adapter, shaft, grip].filter((id) => id !== null);

function candidateOf(club: WeighedClub, context: DealContext, shelf: ShelfCosts): Candidate {
  const ids = idsOf(club);
  const uses = ids.filter((id) => !context.isOffered(id));
  const part = (id: string) => context.parts.get(id) as Part;
  const [head, shaft, grip] = [part(club.head), part(club.shaft), part(club.grip)];
  const title = titleOfClub(head, shaft);
  const subject = subjectOfClub({ head, shaft, grip }, context.finder, saidOfExtras(club, context));
  const resale = context.resale(subject);
  const sale = saleOf(title, "club", resale, context.costs);
  const work = workCost(club.work, context.costs);
  const earnsMinor = sale
    ? sale.gain.value - work.totalMinor - shelf.atLeast(uses)
    : Number.NEGATIVE_INFINITY;
  const takes = [...ids.filter(context.isOffered), ...extrasOf(club.head, context)];
  return { club, title, resale, sale, takes, uses, work, earnsMinor };
}

/** Whether a cover and a wrench come with the club: what the listing says of the head's item. */
function saidOfExtras(club: WeighedClub, { offered, input }: DealContext) {
  const place = offered.itemOf.get(club.head);
  const item = place === undefined ? undefined : input.listing.items[place];
  return item ? { cover: item.cover, wrench: item.wrench } : {};
}

/** The cover and the wrench that came with a head: in its thing, those that are named after it and before the next head. */
function extrasOf(head: string, { offered, parts }: DealContext): string[] {
  const thing = offered.things.flat().find((ids) => ids.includes(head)) ?? [];
  const after = thing.slice(thing.indexOf(head) + 1);
  const next = after.findIndex((id) => parts.get(id)?.kind === "head");
  const own = next < 0 ? after : after.slice(0, next);
  return own.filter((id) => ["cover", "wrench"].includes(parts.get(id)?.kind ?? ""));
}
