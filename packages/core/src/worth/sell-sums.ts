import { skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import type { WorkRow } from "../parts/reference.ts";
import { waitDaysOf } from "./build-sum.ts";
import type { Cluster } from "./clusters.ts";
import type { DealReason } from "./deal.ts";
import type { DealContext } from "./deal-context.ts";
import { certain } from "./gain.ts";
import type { OfferedThing } from "./listing-things.ts";
import { gainsOfSales, type Sale, worthSelling } from "./sale.ts";
import { thingOf } from "./thing.ts";
import { unsafeFaults } from "./unsafe-faults.ts";
import { daysOfSales, type WaySum } from "./way-sum.ts";
import { workCost } from "./work-cost.ts";

type Outcome = { readonly sum: WaySum } | { readonly why: readonly DealReason[] };

const plainSum = (way: WaySum["way"], sales: readonly Sale[], days: number): WaySum => ({
  way,
  gains: gainsOfSales(sales),
  lines: sales.flatMap(({ lines }) => lines),
  minutes: sales.reduce((sum, { minutes }) => sum + minutes, 0),
  spentMinor: sales.reduce((sum, { listingFeeMinor }) => sum + listingFeeMinor, 0),
  days: daysOfSales(sales, { value: days, low: days, high: days }),
  clubs: [],
  usesParts: [],
  risks: [],
  reasons: [],
  waiting: null,
});

/** Selling each thing on as it comes. */
export function sellAsItIs(things: readonly OfferedThing[]): Outcome {
  const sales = things.flatMap(({ asItIs }) => asItIs.sale ?? []);
  const worth = worthSelling(sales);
  if (worth.length === 0) return { why: [whyUnsold(things, sales)] };
  return { sum: { ...plainSum("sell-as-it-is", worth, 0), reasons: countedForNothing(things) } };
}

function countedForNothing(things: readonly OfferedThing[]): DealReason[] {
  const forbidden = things.filter(({ parts }) => unsafeFaults(parts).length > 0).length;
  const unpriced = things.filter(({ asItIs }) => !asItIs.resale.known).length;
  const of = (count: number) => (things.length === 1 ? "it" : `${count} of ${things.length} things`);
  return [
    ...(unpriced > 0
      ? [{ code: "partly-priced", text: `${of(unpriced)} counted for nothing: no price is known` }]
      : []),
    ...(forbidden > 0
      ? [
          {
            code: "partly-unsafe",
            text: `${of(forbidden)} counted for nothing: not to be sold to be swung`,
          },
        ]
      : []),
  ];
}

function whyUnsold(things: readonly OfferedThing[], sales: readonly Sale[]): DealReason {
  if (things.length === 0) return { code: "nothing-offered", text: "nothing is offered that could be sold" };
  if (sales.length > 0)
    return { code: "costs-more-than-it-brings", text: "selling it costs as much as it would bring" };
  return things.some(({ parts }) => unsafeFaults(parts).length > 0)
    ? { code: "not-to-be-swung", text: "with the fault it has, it must not be sold to be swung" }
    : { code: "no-evidence", text: "nobody knows what it would sell for" };
}

/** Taking complete clubs apart and selling head and shaft alone; an adapter stays on the shaft, where it is worth most. */
export function partOut(things: readonly OfferedThing[], context: DealContext): Outcome {
  const apart = things.filter(({ parts }) => has(parts, "head") && has(parts, "shaft"));
  if (apart.length === 0) return because("nothing-to-part", "there is nothing to take apart");
  const steps = apart.flatMap((thing) => undoing(thing, context));
  if (!withinSkill(steps, context))
    return because("beyond-skill", "taking it apart is more than the skill you allow");
  const pieces = apart.flatMap(({ parts }) =>
    piecesOf(parts, context).flatMap((piece) => thingOf(piece, context).sale ?? []),
  );
  if (pieces.length === 0) return because("no-evidence", "nobody knows what its pieces would sell for");
  const rest = things.filter((thing) => !apart.includes(thing)).flatMap(({ asItIs }) => asItIs.sale ?? []);
  return { sum: sumOfParting(steps, worthSelling([...pieces, ...rest]), context) };
}

const because = (code: string, text: string): Outcome => ({ why: [{ code, text }] });

function sumOfParting(steps: readonly WorkRow[], sales: readonly Sale[], context: DealContext): WaySum {
  const work = workCost(steps, context.costs);
  const sum = plainSum("part-out", sales, waitDaysOf(steps));
  const lines = [
    { code: "materials", text: "materials for taking apart", amountMinor: -work.materialMinor },
    { code: "work-time", text: "own time for taking apart", amountMinor: -work.timeMinor },
  ].filter(({ amountMinor }) => amountMinor !== 0);
  const heated = steps.some(({ step }) => step.startsWith("pull-"));
  return {
    ...sum,
    gains: [...sum.gains, certain(-work.totalMinor)],
    lines: [...sum.lines, ...lines],
    minutes: sum.minutes + work.minutes,
    spentMinor: sum.spentMinor + work.materialMinor,
    risks: heated ? [{ code: "pull-head", text: "pulling a shaft with heat can ruin it" }] : [],
  };
}

const has = (parts: Cluster, kind: Part["kind"]) => parts.some((part) => part.kind === kind);

/** Of each club the head, and the shaft with what stays on it; and whatever else came along. */
function piecesOf(parts: Cluster, context: DealContext): Cluster[] {
  const clubs = [...new Set(parts.map(({ id }) => context.clusterOf(id)))];
  return clubs.flatMap(piecesOfClub);
}

function piecesOfClub(parts: Cluster): Cluster[] {
  const onShaft = (part: Part) => part.kind === "shaft" || part.kind === "adapter" || part.kind === "grip";
  const shaft = parts.filter(onShaft);
  return [
    ...(shaft.length > 0 ? [shaft] : []),
    ...parts.filter((part) => !onShaft(part)).map((part) => [part]),
  ];
}

/** For each head with a shaft in it: a screw is turned where there is an adapter; glue is softened where there is none. */
function undoing({ parts }: OfferedThing, { input, clusterOf }: DealContext) {
  return parts.flatMap((part) => {
    const club = part.kind === "head" ? clusterOf(part.id) : [];
    if (!has(club, "shaft")) return [];
    const name = has(club, "adapter") ? "unscrew" : "pull-head";
    return input.reference.work.find(({ step }) => step === name) ?? [];
  });
}

function withinSkill(steps: readonly { readonly skill: string }[], { input }: DealContext): boolean {
  const allowed = skills.indexOf(input.bench.goal?.skill ?? "screw");
  return steps.every(({ skill }) => skills.indexOf(skill as (typeof skills)[number]) <= allowed);
}
