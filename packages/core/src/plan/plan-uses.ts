import { rank } from "../graph/verdict-index.ts";
import { roundMinor } from "../money.ts";
import type { Part } from "../parts/part.ts";
import { type PlainClub, plainClub } from "../resolve/club.ts";
import { PairJudge, type Way } from "../resolve/pair-judge.ts";
import type { ReadyBench } from "../resolve/ready-bench.ts";
import { clubsAndWants } from "../resolve/resolve-bench.ts";
import type { Want } from "../resolve/result.ts";
import type { DealContext } from "../worth/deal-context.ts";
import { waitFor } from "../worth/one-wait.ts";
import { saleOf } from "../worth/sale.ts";
import type { ShelfCosts } from "../worth/shelf-worth.ts";
import { subjectOfClub } from "../worth/subject-of.ts";
import { thingOf } from "../worth/thing.ts";
import { titleOfClub } from "../worth/titles.ts";
import { workCost } from "../worth/work-cost.ts";
import type { Share, Use } from "./plan-model.ts";
import type { StockType } from "./stock.ts";

/** A use of the plan's model, with what it means at the bench. */
export interface MeaningfulUse extends Use {
  readonly do: "build" | "sell" | "wait";
  readonly title: string;
  /** Parts of the types' representatives that it takes. */
  readonly parts: readonly string[];
  readonly club?: PlainClub;
  readonly want?: Want;
  readonly takeAtOrUnderMinor?: number;
}

/** Ways to join one head and one shaft that are planned with: more differ only in a grip. */
const gripsTried = 2;

/** Where each part of a representative stands: its type, and its place in it. */
export type Roles = ReadonlyMap<string, string>;

/** The resource behind each part of a representative: its type, and its place in it. */
export function rolesOf(types: readonly StockType[]): Roles {
  return new Map(
    types.flatMap(({ id, parts }) => parts.map((part, at) => [part.id, `${id}.${at}`] as const)),
  );
}

function sharesOf(parts: readonly string[], roles: Roles): Share[] {
  return parts.map((id) => ({ resource: roles.get(id) as string, count: 1 }));
}

/**
 * Every settled club that can be made of the types, at what it brings over its work. A club of an imagined part may be open
 * in what nobody could know of it yet.
 */
export function buildUses(
  ready: ReadyBench,
  context: DealContext,
  roles: Roles,
  isImagined: (id: string) => boolean,
): MeaningfulUse[] {
  const judge = new PairJudge(ready, ready.graph.goal.skill ?? "screw");
  const most = (head: Part, shaft: Part) =>
    isImagined(head.id) || isImagined(shaft.id) ? openMost : settledMost;
  return ready.graph.at.head.flatMap((head) =>
    ready.groups
      .filter((group) => !judge.groupRefused(head, group.first))
      .flatMap(({ shafts }) =>
        shafts.flatMap((shaft) => waysWorthTrying(judge, head, shaft, most(head, shaft))),
      )
      .flatMap((way) => buildUse(plainClub(way, ready.graph), context, roles) ?? []),
  );
}

/** Of each adapter the first few grips: the own grip comes first, then one of each sort. */
function waysWorthTrying(judge: PairJudge, head: Part, shaft: Part, most: number): Way[] {
  const tried = new Map<string, number>();
  const settled = [...judge.ways(head, shaft)].filter(({ ranked }) => ranked.verdict <= most);
  return settled.filter(({ route }) => {
    const key = route.chosen.adapter?.id ?? "";
    const count = (tried.get(key) ?? 0) + 1;
    tried.set(key, count);
    return count <= gripsTried;
  });
}

/** Ranks of verdicts go from the best: fits, fits with work, unsettled. */
const settledMost = rank.fitsWithWork;
const openMost = rank.unsettled;

function buildUse(club: PlainClub, context: DealContext, roles: Roles): MeaningfulUse | undefined {
  const part = (id: string) => context.parts.get(id) as Part;
  const [head, shaft, grip] = [part(club.head), part(club.shaft), part(club.grip)];
  const parts = [club.head, club.adapter, club.shaft, club.grip].filter((id) => id !== null);
  if (club.work.length === 0) return undefined;
  const title = titleOfClub(head, shaft);
  const resale = context.resale(subjectOfClub({ head, shaft, grip }, context.finder, {}));
  const sale = saleOf(title, "club", resale, context.costs);
  if (!sale) return undefined;
  const work = workCost(club.work, context.costs);
  const clubType = head.kind === "head" ? head.clubType : undefined;
  return {
    id: `build ${club.id}`,
    do: "build",
    title,
    club,
    parts,
    takes: sharesOf(parts, roles),
    netMinor: roundMinor(sale.gain.value) - work.totalMinor,
    minutes: sale.minutes + work.minutes,
    outlayMinor: work.materialMinor + sale.listingFeeMinor,
    ...(clubType ? { kind: clubType } : {}),
  };
}

/** Selling each thing as it is, and the pieces of a complete club that is taken apart. */
export function sellUses(types: readonly StockType[], context: DealContext, roles: Roles): MeaningfulUse[] {
  return types.flatMap((type) => {
    const whole = sellUse(type.parts, context, roles);
    return [
      ...whole,
      ...piecesOf(type).flatMap((piece) => sellUse(piece, context, roles, undoing(type, piece, context))),
    ];
  });
}

/** What a complete club comes apart into: its head, and the shaft with what stays on it. */
function piecesOf({ parts }: StockType): (readonly Part[])[] {
  const head = parts.filter(({ kind }) => kind === "head");
  const rest = parts.filter(({ kind }) => kind !== "head");
  return head.length > 0 && rest.some(({ kind }) => kind === "shaft") ? [head, rest] : [];
}

/** Taking a club apart is paid once, with its head: the shaft that is left costs nothing more. */
function undoing({ parts }: StockType, piece: readonly Part[], { input }: DealContext) {
  if (!piece.some(({ kind }) => kind === "head")) return [];
  const name = parts.some(({ kind }) => kind === "adapter") ? "unscrew" : "pull-head";
  return input.reference.work.filter(({ step }) => step === name);
}

function sellUse(
  parts: readonly Part[],
  context: DealContext,
  roles: Roles,
  steps: Parameters<typeof workCost>[0] = [],
): MeaningfulUse[] {
  const { title, sale } = thingOf(parts, context);
  if (!sale) return [];
  const ids = parts.map(({ id }) => id);
  const work = workCost(steps, context.costs);
  return [
    {
      id: `sell ${ids.join("+")}`,
      do: "sell",
      title,
      parts: ids,
      takes: sharesOf(ids, roles),
      netMinor: roundMinor(sale.gain.value) - work.totalMinor,
      minutes: sale.minutes + work.minutes,
      outlayMinor: sale.listingFeeMinor + work.materialMinor,
    },
  ];
}

/** Keeping a head or a shaft until its missing part turns up at the right price. */
export function waitUses(
  types: readonly StockType[],
  ready: ReadyBench,
  context: DealContext,
  roles: Roles,
): MeaningfulUse[] {
  return types.flatMap(({ parts }) => {
    const lead = parts.find(({ kind }) => kind === "head") ?? parts.find(({ kind }) => kind === "shaft");
    const isComplete =
      parts.some(({ kind }) => kind === "head") && parts.some(({ kind }) => kind === "shaft");
    if (!lead || isComplete) return [];
    const { wants } = clubsAndWants(ready, lead.id);
    return wants.slice(0, wantsTried).flatMap((want) => waitUse(parts, want, context, roles) ?? []);
  });
}

/** Wants tried for one thing: those that complete most come first. */
const wantsTried = 2;

/** The shelf's other parts are resources of the plan, so none of their worth is taken off here. */
const noShelf: ShelfCosts = { of: () => ({ amountMinor: 0, guessed: [] }), atLeast: () => 0 };

function waitUse(
  parts: readonly Part[],
  want: Want,
  context: DealContext,
  roles: Roles,
): MeaningfulUse | undefined {
  const own = new Set(parts.map(({ id }) => id));
  const thing = { item: 0, parts, asItIs: thingOf(parts, context) };
  const waiting = waitFor(thing, want, { ...context, isOffered: (id) => own.has(id) }, noShelf);
  // Waiting that may last for ever is worth nothing that can be counted on.
  if (!waiting?.waits || waiting.answer.expectedWaitWeeks === null) return undefined;
  const ids = [...own, ...waiting.uses];
  return {
    id: `wait ${ids.join("+")} ${want.id}`,
    do: "wait",
    title: waiting.sale.title,
    parts: ids,
    want,
    takeAtOrUnderMinor: waiting.answer.takeAtOrUnderMinor,
    takes: sharesOf(ids, roles),
    netMinor: roundMinor(waiting.gain.value),
    minutes: waiting.sale.minutes + waiting.work.minutes,
    outlayMinor: Math.max(0, waiting.answer.takeAtOrUnderMinor) + waiting.work.materialMinor,
  };
}
