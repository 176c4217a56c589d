import type { Part } from "../parts/part.ts";
import type { Candidate } from "./candidate-clubs.ts";
import type { Cluster } from "./clusters.ts";
import type { DealLine, DealReason } from "./deal.ts";
import type { DealContext } from "./deal-context.ts";
import { certain, type Gain } from "./gain.ts";
import type { OfferedThing } from "./listing-things.ts";
import type { Sale } from "./sale.ts";
import { thingOf } from "./thing.ts";
import { daysOfSales, type WaySum } from "./way-sum.ts";

/** What is sold when these clubs are built of the listing: the clubs, what is left of things taken apart, and the rest as it is. */
function salesOf(
  chosen: readonly Candidate[],
  things: readonly OfferedThing[],
  context: DealContext,
): Sale[] {
  const taken = new Set(chosen.flatMap(({ takes }) => takes));
  const rest = things.flatMap(({ parts, asItIs }) => {
    const left = parts.filter(({ id }) => !taken.has(id));
    if (left.length === parts.length) return asItIs.sale ?? [];
    return leftovers(left, taken, context).flatMap((piece) => thingOf(piece, context).sale ?? []);
  });
  return [...chosen.flatMap(({ sale }) => sale ?? []), ...worthSelling(rest)];
}

/** What is left of a thing: whole clubs of a set stay whole, pieces of a club that was taken apart are loose. A grip off a shaft is no piece that sells. */
function leftovers(left: readonly Part[], taken: ReadonlySet<string>, context: DealContext): Cluster[] {
  const isWhole = (club: Cluster) => club.every(({ id }) => !taken.has(id));
  const clubs = [...new Set(left.map(({ id }) => context.clusterOf(id)))];
  const loose = (club: Cluster) =>
    club.filter(({ id, kind }) => !taken.has(id) && kind !== "grip").map((part) => [part]);
  return clubs.flatMap((club) => (isWhole(club) ? [club] : loose(club)));
}

/** What costs more to sell than it brings is not sold. */
export const worthSelling = (sales: readonly Sale[]): Sale[] => sales.filter(({ gain }) => gain.value > 0);

/** Best net of a choice, for comparing choices. */
function netOf(chosen: readonly Candidate[], things: readonly OfferedThing[], context: DealContext): number {
  const sales = salesOf(chosen, things, context).reduce((sum, { gain }) => sum + gain.value, 0);
  return chosen.reduce((sum, { work, shelfMinor }) => sum - work.totalMinor - shelfMinor, sales);
}

/**
 * Clubs that can all be built at once, chosen one after another by what each adds. At least one is chosen where there is one,
 * so that building stands beside the other ways even where it is the worse one.
 */
export function chooseClubs(
  candidates: readonly Candidate[],
  things: readonly OfferedThing[],
  context: DealContext,
): Candidate[] {
  const open = candidates.filter(({ sale }) => sale !== undefined);
  const chosen: Candidate[] = [];
  let best = Number.NEGATIVE_INFINITY;
  for (;;) {
    const used = new Set(chosen.flatMap(({ takes, uses }) => [...takes, ...uses]));
    const free = open.filter(({ takes, uses }) => ![...takes, ...uses].some((id) => used.has(id)));
    const rated = free.map((candidate) => ({
      candidate,
      net: netOf([...chosen, candidate], things, context),
    }));
    const top = rated.reduce<(typeof rated)[number] | undefined>(
      (one, other) => (one && one.net >= other.net ? one : other),
      undefined,
    );
    if (!top || (chosen.length > 0 && top.net <= best)) return chosen;
    chosen.push(top.candidate);
    best = top.net;
  }
}

/** Building these clubs now. */
export function buildSum(
  chosen: readonly Candidate[],
  things: readonly OfferedThing[],
  context: DealContext,
): WaySum {
  const sales = salesOf(chosen, things, context);
  const costs = chosen.flatMap(costLines);
  const gains: Gain[] = [
    ...sales.map(({ gain }) => gain),
    certain(costs.reduce((sum, { amountMinor }) => sum + amountMinor, 0)),
  ];
  const waitDays = Math.max(0, ...chosen.map(({ club }) => waitDaysOf(club.work)));
  return {
    way: "build-now",
    gains,
    lines: [...sales.flatMap(({ lines }) => lines), ...costs],
    minutes: sum(chosen.map(({ work }) => work.minutes)) + sum(sales.map(({ minutes }) => minutes)),
    spentMinor:
      sum(chosen.map(({ work }) => work.materialMinor)) +
      sum(sales.map(({ listingFeeMinor }) => listingFeeMinor)),
    days: daysOfSales(sales, waitDays),
    clubs: chosen.map(({ club }) => club.id),
    usesParts: chosen.flatMap(({ uses }) => uses),
    risks: chosen.flatMap(risksOf),
    reasons: chosen.flatMap(reasonsOf),
    waiting: null,
  };
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, each) => total + each, 0);

/** Glue that cures holds the sale up, by whole days. */
export function waitDaysOf(work: readonly { readonly waitMinutes: number }[]): number {
  return Math.ceil(sum(work.map(({ waitMinutes }) => waitMinutes)) / (24 * 60));
}

function costLines({ title, work, shelfMinor }: Candidate): DealLine[] {
  return [
    { code: "materials", text: `materials for ${title}`, amountMinor: -work.materialMinor },
    { code: "work-time", text: `own time at the bench for ${title}`, amountMinor: -work.timeMinor },
    { code: "shelf", text: `what the parts from the shelf would bring otherwise`, amountMinor: -shelfMinor },
  ].filter(({ amountMinor }) => amountMinor !== 0);
}

function reasonsOf({ title, uses, guessed, club }: Candidate): DealReason[] {
  const built = { code: "builds", text: `makes ${title} with ${uses.join(", ")} from the bench` };
  const guess = {
    code: "shelf-worth-guessed",
    text: `nobody knows what ${guessed.join(", ")} would bring, so what was paid is counted`,
  };
  const unsettled = { code: "unsettled", text: "a deciding fact is missing, see the questions" };
  return [
    built,
    ...(guessed.length > 0 ? [guess] : []),
    ...(club.verdict === "unsettled" ? [unsettled] : []),
  ];
}

/** The steps that can go wrong for good. */
const riskySteps: Readonly<Record<string, string>> = {
  "pull-head": "pulling a shaft with heat can ruin it",
  "pull-adapter": "pulling an adapter with heat can ruin the shaft",
  "ream-bore": "a reamed bore cannot be undone",
};

function risksOf({ club }: Candidate): DealReason[] {
  const steps = [...new Set(club.work.map(({ step }) => step))];
  return steps.flatMap((step) => (riskySteps[step] ? [{ code: step, text: riskySteps[step] }] : []));
}
