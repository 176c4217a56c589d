import { skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import { waitDaysOf, worthSelling } from "./build-sum.ts";
import type { Cluster } from "./clusters.ts";
import type { DealReason } from "./deal.ts";
import type { DealContext } from "./deal-context.ts";
import { certain } from "./gain.ts";
import type { OfferedThing } from "./listing-things.ts";
import type { Sale } from "./sale.ts";
import { thingOf } from "./thing.ts";
import { unsafeFaults } from "./unsafe-faults.ts";
import { daysOfSales, type WaySum } from "./way-sum.ts";
import { workCost } from "./work-cost.ts";

type Outcome = { readonly sum: WaySum } | { readonly why: readonly DealReason[] };

const plainSum = (way: WaySum["way"], sales: readonly Sale[], days: number): WaySum => ({
  way,
  gains: sales.map(({ gain }) => gain),
  lines: sales.flatMap(({ lines }) => lines),
  minutes: sales.reduce((sum, { minutes }) => sum + minutes, 0),
  spentMinor: sales.reduce((sum, { listingFeeMinor }) => sum + listingFeeMinor, 0),
  days: daysOfSales(sales, days),
  clubs: [],
  usesParts: [],
  risks: [],
  reasons: [],
  waiting: null,
});

/** Selling each thing on as it comes. */
export function sellAsItIs(things: readonly OfferedThing[]): Outcome {
  const sales = things.flatMap(({ asItIs }) => asItIs.sale ?? []);
  if (sales.length === 0) return { why: things.length === 0 ? [nothingOffered] : [whyUnsold(things)] };
  const sum = plainSum("sell-as-it-is", worthSelling(sales), 0);
  const unpriced = things.length - sales.length;
  const note = {
    code: "partly-priced",
    text: `${unpriced} of ${things.length} things count for nothing: no price is known`,
  };
  return { sum: { ...sum, reasons: unpriced > 0 ? [note] : [] } };
}

const nothingOffered: DealReason = { code: "nothing-offered", text: "nothing is offered that could be sold" };

function whyUnsold(things: readonly OfferedThing[]): DealReason {
  return things.some(({ parts }) => unsafeFaults(parts).length > 0)
    ? { code: "not-to-be-swung", text: "with the fault it has, it must not be sold to be swung" }
    : { code: "no-evidence", text: "nobody knows what it would sell for" };
}

/** Taking complete clubs apart and selling head and shaft alone; an adapter stays on the shaft, where it is worth most. */
export function partOut(things: readonly OfferedThing[], context: DealContext): Outcome {
  const apart = things.filter(({ parts }) => has(parts, "head") && has(parts, "shaft"));
  if (apart.length === 0)
    return { why: [{ code: "nothing-to-part", text: "there is nothing to take apart" }] };
  const pieces = apart.flatMap(({ parts }) =>
    piecesOf(parts, context).map((piece) => thingOf(piece, context)),
  );
  const rest = things.filter((thing) => !apart.includes(thing)).flatMap(({ asItIs }) => asItIs.sale ?? []);
  const sales = worthSelling([...pieces.flatMap(({ sale }) => sale ?? []), ...rest]);
  if (pieces.every(({ sale }) => sale === undefined))
    return { why: [{ code: "no-evidence", text: "nobody knows what its pieces would sell for" }] };
  const steps = apart.flatMap((thing) => undoing(thing, context));
  const allowed = withinSkill(steps, context);
  if (!allowed)
    return { why: [{ code: "beyond-skill", text: "taking it apart is more than the skill you allow" }] };
  const work = workCost(steps, context.costs);
  const sum = plainSum("part-out", sales, waitDaysOf(steps));
  const lines = [
    { code: "materials", text: "materials for taking apart", amountMinor: -work.materialMinor },
    { code: "work-time", text: "own time for taking apart", amountMinor: -work.timeMinor },
  ].filter(({ amountMinor }) => amountMinor !== 0);
  const heated = steps.some(({ step }) => step.startsWith("pull-"));
  return {
    sum: {
      ...sum,
      gains: [...sum.gains, certain(-work.totalMinor)],
      lines: [...sum.lines, ...lines],
      minutes: sum.minutes + work.minutes,
      spentMinor: sum.spentMinor + work.materialMinor,
      risks: heated ? [{ code: "pull-head", text: "pulling a shaft with heat can ruin it" }] : [],
    },
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
