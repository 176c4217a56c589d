import { routeOf } from "../graph/route.ts";
import { rank } from "../graph/verdict-index.ts";
import { roundMinor } from "../money.ts";
import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import { type PlainClub, plainClub } from "../resolve/club.ts";
import { PairJudge, type Way } from "../resolve/pair-judge.ts";
import { type ReadyBench, skillByDefault } from "../resolve/ready-bench.ts";
import type { DealContext } from "../worth/deal-context.ts";
import { type Sale, saleOf } from "../worth/sale.ts";
import { subjectOfClub } from "../worth/subject-of.ts";
import { titleOfClub } from "../worth/titles.ts";
import { unsafeFaults } from "../worth/unsafe-faults.ts";
import { workCost } from "../worth/work-cost.ts";
import { grouped } from "./grouped.ts";
import { type MeaningfulUse, type Roles, sharesOf } from "./meaningful-use.ts";
import { freedShares, isUndoing, type Parting, sideTaken } from "./parting.ts";

/** What building looks things up in. */
export interface BuildDesk {
  readonly ready: ReadyBench;
  readonly context: DealContext;
  readonly roles: Roles;
  readonly partings: readonly Parting[];
  /** A club of an imagined part may be open in what nobody could know of it yet. */
  readonly isImagined: (id: string) => boolean;
  /** The cover and the wrench that come with a head where it is bought, by the head's id. */
  readonly extras: ReadonlyMap<string, readonly Part[]>;
}

/** The desk with what has been found out on it. */
interface BusyDesk extends BuildDesk {
  readonly saleOfClub: SaleOfClub;
}

/** What clubs are looked for with. */
export type ClubDesk = Pick<BuildDesk, "ready" | "context" | "isImagined" | "extras">;

/** Every settled club that can be made of the types; of those alone that are asked for, where somebody asks for some. */
export function clubsToBuild(
  { ready, context, isImagined, extras }: ClubDesk,
  isAsked: (head: Part, shaft: Part) => boolean = () => true,
): PlainClub[] {
  const desk = { ready, context, extras, saleOfClub: salesOfClubs(context) };
  const judge = new PairJudge(ready, ready.graph.goal.skill ?? skillByDefault);
  const others = othersOfClass(ready, context.joints);
  const most = (head: Part, shaft: Part) =>
    isImagined(head.id) || isImagined(shaft.id) ? rank.unsettled : rank.fitsWithWork;
  let turn = 0;
  const waysOf = (head: Part, shaft: Part) => {
    turn += 1;
    const ways = judge.ways(head, shaft).filter(({ ranked }) => ranked.verdict <= most(head, shaft));
    return worthTrying(ways, shaft, ready, others, turn);
  };
  const ways = ready.graph.at.head
    .filter((head) => unsafeFaults([head]).length === 0)
    .flatMap((head) =>
      ready.groups
        .filter((group) => !judge.groupRefused(head, group.first))
        .flatMap(({ shafts }) => shafts.filter((shaft) => isAsked(head, shaft)))
        .flatMap((shaft) => waysOf(head, shaft)),
    );
  return ways.filter(mayEarn(ways, desk)).map((way) => plainClub(way, ready));
}

/** Clubs that are made and sold, at what they bring over their work. */
export function usesOfClubs(clubs: readonly PlainClub[], desk: BuildDesk): MeaningfulUse[] {
  const busy = { ...desk, saleOfClub: salesOfClubs(desk.context) };
  return clubs.flatMap((club) => usesOf(club, busy));
}

/** Every settled club that can be made of the types and is asked for, at what it brings over its work. */
export function buildUses(
  desk: BuildDesk,
  isAsked: (head: Part, shaft: Part) => boolean = () => true,
): MeaningfulUse[] {
  return usesOfClubs(clubsToBuild(desk, isAsked), desk);
}

/** Steps that set a part free: they may be paid once for both sides of a joint, so they count for no club alone. */
const freeing: ReadonlySet<string> = new Set(["unscrew", "pull-head", "pull-adapter", "grip-off"]);

/**
 * Whether a club can bring anything: not where the steps that are known beforehand cost as much as it sells for, nor where
 * setting one part free costs more than it and the dearest club or piece that the other side could go into.
 */
function mayEarn(
  ways: readonly Way[],
  desk: Pick<BusyDesk, "ready" | "context" | "extras" | "saleOfClub">,
): (way: Way) => boolean {
  const { work } = desk.ready.graph;
  const saleOf = ({ route: { chosen } }: Way) => {
    const { head, shaft, grip } = chosen;
    return head && shaft && grip && desk.saleOfClub({ head: head.id, shaft: shaft.id, grip: grip.id }, []);
  };
  const dearestMinor = ways.reduce((most, way) => Math.max(most, saleOf(way)?.gain.value ?? 0), 0);
  const costOf = (steps: readonly string[]) =>
    workCost(
      steps.flatMap((step) => work.get(step) ?? []),
      desk.context.costs,
    ).totalMinor;
  return (way) => {
    const { chosen, steps } = way.route;
    if (!chosen.head || desk.extras.has(chosen.head.id)) return true;
    const sale = saleOf(way);
    if (!sale) return false;
    const names = steps.map(({ step }) => step);
    const ownMinor = sale.gain.value - costOf(names.filter((name) => !freeing.has(name)));
    const freeingMinor = Math.max(
      0,
      ...names.filter((name) => freeing.has(name)).map((name) => costOf([name])),
    );
    return ownMinor > 0 && freeingMinor < ownMinor + dearestShare * dearestMinor;
  };
}

/** A piece may sell for more than the dearest club that is built: nobody has seen one sell for twice as much. */
const dearestShare = 2;

/** Adapters beside a shaft's own that are planned with, and grips for each: more would be more of the same. */
const mostTried = { adapters: 8, grips: 3 };

/**
 * Of the ways to join one head and one shaft: with every adapter that no rule tells from those that were tried, for each of
 * them there are only so many of; and of grips the own one, or a few. Which few goes round from pair to pair, so that every
 * grip has its turn.
 */
function worthTrying(
  ways: readonly Way[],
  shaft: Part,
  ready: ReadyBench,
  others: OthersOfClass,
  turn: number,
): Way[] {
  const byAdapter = grouped(
    ways.flatMap((way) => withOthers(way, "adapter", ready, others)),
    ({ route }) => route.chosen.adapter?.id ?? "",
  );
  const ownGrip = ready.graph.occupancy.at(shaft.id, "butt")?.other;
  const ownAdapter = ready.graph.occupancy.at(shaft.id, "tip")?.other;
  const [own, foreign] = parted([...byAdapter], ([adapter]) => adapter === "" || adapter === ownAdapter);
  return [...own, ...goingRound(foreign, mostTried.adapters, turn)].flatMap(([, tried]) => {
    const [kept, loose] = parted(
      tried.flatMap((way) => withOthers(way, "grip", ready, others)),
      ({ route }) => route.chosen.grip?.id === ownGrip,
    );
    return [...kept, ...goingRound(loose, kept.length > 0 ? 1 : mostTried.grips, turn)];
  });
}

function parted<T>(things: readonly T[], isFirst: (thing: T) => boolean): [T[], T[]] {
  return [things.filter(isFirst), things.filter((thing) => !isFirst(thing))];
}

/** So many of these, from one that is further on each turn. */
function goingRound<T>(things: readonly T[], most: number, turn: number): T[] {
  if (things.length <= most) return [...things];
  return Array.from({ length: most }, (_, at) => things[(turn + at) % things.length] as T);
}

/** The loose parts that no rule tells from a loose one, itself among them. */
type OthersOfClass = (part: Part, place: "adapter" | "grip") => readonly Part[];

function othersOfClass({ graph, index }: ReadyBench, joints: readonly Joint[]): OthersOfClass {
  const joined = new Set(joints.flatMap(({ parts }) => parts));
  const numberOf = (place: "adapter" | "grip", part: Part) => index.classes[place].of(part).class;
  const classes = (place: "adapter" | "grip") =>
    grouped(
      graph.at[place].filter(({ id }) => !joined.has(id)),
      (part) => numberOf(place, part),
    );
  const known = { adapter: classes("adapter"), grip: classes("grip") };
  return (part, place) =>
    joined.has(part.id) ? [part] : (known[place].get(numberOf(place, part)) ?? [part]);
}

/** A way with every loose part in the place of the one it was judged with; what is joined stays as it is. */
function withOthers(
  way: Way,
  place: "adapter" | "grip",
  { graph }: ReadyBench,
  others: OthersOfClass,
): Way[] {
  const part = way.route.chosen[place];
  if (!part) return [way];
  return others(part, place).map((other) =>
    other === part
      ? way
      : {
          ranked: way.ranked,
          route: routeOf({ ...way.route.chosen, [place]: other }, graph.occupancy),
        },
  );
}

/** A club sold as it is made, and with the cover and the wrench that came with its head, where that brings more. */
function usesOf(club: PlainClub, desk: BusyDesk): MeaningfulUse[] {
  const plain = buildUse(club, [], desk);
  const extras = desk.extras.get(club.head) ?? [];
  const withExtras = extras.length > 0 ? buildUse(club, extras, desk) : undefined;
  const isBetter = withExtras && withExtras.netMinor > (plain?.netMinor ?? Number.NEGATIVE_INFINITY);
  return [...(plain ? [plain] : []), ...(isBetter ? [withExtras] : [])];
}

function buildUse(club: PlainClub, extras: readonly Part[], desk: BusyDesk): MeaningfulUse | undefined {
  const { context, partings } = desk;
  const ids = [club.head, club.adapter, club.shaft, club.grip].filter((id) => id !== null);
  const made = ids.map((id) => context.parts.get(id) as Part);
  // What stands together already is sold as it is.
  if (club.work.length === 0 || unsafeFaults(made).length > 0) return undefined;
  const sale = desk.saleOfClub(club, extras);
  if (!sale) return undefined;
  const parts = [...ids, ...extras.map(({ id }) => id)];
  const taken = new Set(parts);
  const shared = partings.filter((parting) => sideTaken(taken, parting));
  const own = club.work.filter((step) => !shared.some((parting) => isUndoing(step, parting)));
  const work = workCost(own, context.costs);
  const head = context.parts.get(club.head);
  const clubType = head?.kind === "head" ? head.clubType : undefined;
  return {
    id: ["build", club.id, ...extras.map(({ id }) => id)].join(" "),
    ...{ do: "build", title: sale.title, parts, club: { ...club, work: own }, sale },
    takes: [...sharesOf(parts, desk.roles), ...freedShares(taken, shared)],
    netMinor: roundMinor(sale.gain.value) - work.totalMinor,
    minutes: sale.minutes + work.minutes,
    outlayMinor: work.materialMinor + sale.listingFeeMinor,
    ...(clubType ? { kind: clubType } : {}),
  };
}

type SaleOfClub = (
  club: Pick<PlainClub, "head" | "shaft" | "grip">,
  extras: readonly Part[],
) => Sale | undefined;

/** Clubs of one head and shaft sell alike whatever joins them, and whatever grip without a fault is on: each sale is worked out once. */
function salesOfClubs(context: DealContext): SaleOfClub {
  const known = new Map<string, Sale | undefined>();
  return (club, extras) => {
    const { faults } = context.parts.get(club.grip) as Part;
    const key = JSON.stringify([club.head, club.shaft, faults ?? [], extras.map(({ id }) => id)]);
    if (!known.has(key)) known.set(key, saleOfClub(club, extras, context));
    return known.get(key);
  };
}

function saleOfClub(
  club: Parameters<SaleOfClub>[0],
  extras: readonly Part[],
  context: DealContext,
): Sale | undefined {
  const part = (id: string) => context.parts.get(id) as Part;
  const [head, shaft, grip] = [part(club.head), part(club.shaft), part(club.grip)];
  const said = {
    ...(extras.some(({ kind }) => kind === "cover") ? { cover: true } : {}),
    ...(extras.some(({ kind }) => kind === "wrench") ? { wrench: true } : {}),
  };
  const resale = context.resale(subjectOfClub({ head, shaft, grip }, context.finder, said));
  return saleOf(titleOfClub(head, shaft), "club", resale, context.costs);
}
