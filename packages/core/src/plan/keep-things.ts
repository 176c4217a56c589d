import type { Part } from "../parts/part.ts";
import { withParts } from "../resolve/ready-bench.ts";
import type { DealContext } from "../worth/deal-context.ts";
import { type Gain, sumOfGains } from "../worth/gain.ts";
import type { Kept, PlanPrices } from "../worth/plan-prices.ts";
import type { Sale } from "../worth/sale.ts";
import { thingOf } from "../worth/thing.ts";
import { unsafeFaults } from "../worth/unsafe-faults.ts";
import { buildUses } from "./build-uses.ts";
import { type MeaningfulUse, rolesOf } from "./meaningful-use.ts";
import type { PlanGround } from "./plan-setup.ts";
import { partKey, type StockType } from "./stock.ts";

/** Prices of what the plan knows: of each resource, and what has to be paid over them for a thing that is not on the bench. */
export interface GroundPrices {
  readonly priceOf: (resource: string) => number;
  readonly dearerBy: (type: StockType) => number;
}

/** What one piece of a thing is kept for: a club, a sale as it is, or for whatever others like it are kept for. */
interface Best {
  readonly gain: Gain;
  readonly title: string;
  readonly sale: Sale | undefined;
  readonly minutes: number;
  readonly outlayMinor: number;
  readonly uses: readonly string[];
  readonly waits: boolean;
  /** Whether it is more than a sale as it is. */
  readonly isKept: boolean;
}

/**
 * The best use of each thing of a listing at the prices of a ground: what a part would be priced at if one more of it were
 * there. Of a complete club, that of its head and that of its shaft, each with another partner.
 */
export function keepThings(ground: PlanGround, prices: GroundPrices): PlanPrices["keep"] {
  const known = tablesOf(ground);
  return (context) => {
    const uses = usesWith(context, ground, known);
    return context.offered.things.flat().flatMap((ids, thing) => {
      const parts = ids.map((id) => context.parts.get(id) as Part);
      if (unsafeFaults(parts).length > 0) return [];
      const best = piecesOf(parts).map((piece) => bestOf(piece, uses, { context, prices, known }));
      const kept = best.filter((each) => each !== undefined);
      return kept.some(({ isKept }) => isKept) ? [keptAs(thing, kept)] : [];
    });
  };
}

interface Tables {
  readonly typeOf: ReadonlyMap<string, StockType>;
  readonly roles: ReadonlyMap<string, string>;
  /** Loose adapters by their facts. */
  readonly adapters: ReadonlyMap<string, StockType>;
}

function tablesOf({ types }: PlanGround): Tables {
  const loose = types.filter(({ parts }) => parts.length === 1 && parts[0]?.kind === "adapter");
  return {
    typeOf: new Map(types.flatMap((type) => type.parts.map(({ id }) => [id, type] as const))),
    roles: rolesOf(types),
    adapters: new Map(loose.map((type) => [partKey(type.parts[0] as Part), type])),
  };
}

/** The clubs of one head or shaft of the listing with a partner of the ground. */
function usesWith(context: DealContext, ground: PlanGround, { roles }: Tables): MeaningfulUse[] {
  const { offered, leads } = context;
  const tried = new Set(leads.tried.map(({ id }) => id));
  const first = new Set(offered.things.flatMap((copies) => copies[0] ?? []));
  const parts = offered.parts.filter(({ id }) => first.has(id));
  const joints = offered.joints.filter(({ parts: [id] }) => first.has(id));
  const desk = {
    ready: withParts(ground.ready, parts, joints),
    context: {
      ...context,
      parts: new Map([...ground.context.parts, ...context.parts]),
      joints: [...ground.context.joints, ...offered.joints],
    },
    roles: new Map([...roles, ...offered.parts.map(({ id }) => [id, ownResource(id)] as const)]),
    partings: ground.partings,
    isImagined: () => false,
    extras: new Map(),
  };
  return buildUses(desk, (head, shaft) => tried.has(head.id) !== tried.has(shaft.id));
}

const ownResource = (id: string) => `of the listing ${id}`;

/** Of a complete club its head, and the shaft with all that is on it; anything else is one piece. */
function piecesOf(parts: readonly Part[]): (readonly Part[])[] {
  const heads = parts.filter(({ kind }) => kind === "head");
  const hasShaft = parts.some(({ kind }) => kind === "shaft");
  return hasShaft ? [...heads.map((head) => [head]), parts.filter((part) => !heads.includes(part))] : [parts];
}

interface Desk {
  readonly context: DealContext;
  readonly prices: GroundPrices;
  readonly known: Tables;
}

function bestOf(piece: readonly Part[], uses: readonly MeaningfulUse[], desk: Desk): Best | undefined {
  if (piece.length === 0) return undefined;
  const ids = new Set(piece.map(({ id }) => id));
  const built = uses.flatMap((use) => (use.parts.some((id) => ids.has(id)) ? reckoned(use, desk) : []));
  const others = [asItIs(piece, desk), likeOthers(piece, desk)].filter((each) => each !== undefined);
  const all = [...built, ...others];
  return all.length === 0
    ? undefined
    : all.reduce((one, other) => (one.gain.value >= other.gain.value ? one : other));
}

function reckoned(use: MeaningfulUse, { context, prices, known }: Desk): Best[] {
  if (!use.sale) return [];
  const shelf = use.parts.filter((id) => !context.offered.itemOf.has(id));
  const types = [...new Set(shelf.flatMap((id) => known.typeOf.get(id) ?? []))];
  const priced = use.takes.reduce((sum, { resource, count }) => sum + count * prices.priceOf(resource), 0);
  const dearer = types.reduce((sum, type) => sum + prices.dearerBy(type), 0);
  const { gain } = use.sale;
  const value = use.netMinor - priced - dearer;
  return [
    {
      gain: { value, low: value - (gain.value - gain.low), high: value + (gain.high - gain.value) },
      title: use.title,
      sale: use.sale,
      ...{ minutes: use.minutes, outlayMinor: use.outlayMinor, uses: shelf, isKept: true },
      waits: types.some(({ instances }) => instances.every(({ bundle }) => bundle !== undefined)),
    },
  ];
}

function asItIs(piece: readonly Part[], { context }: Desk): Best | undefined {
  const { sale, title } = thingOf(piece, context);
  if (!sale || sale.gain.value <= 0) return undefined;
  const { gain, minutes, listingFeeMinor } = sale;
  return {
    ...{ gain, title, sale, minutes, outlayMinor: listingFeeMinor },
    ...{ uses: [], waits: false, isKept: false },
  };
}

/** A loose adapter is worth what one like it is worth to the plan. */
function likeOthers([part, ...more]: readonly Part[], { prices, known, context }: Desk): Best | undefined {
  const type = part?.kind === "adapter" && more.length === 0 ? known.adapters.get(partKey(part)) : undefined;
  if (!part || !type) return undefined;
  const value = prices.priceOf(`${type.id}.0`);
  const { title } = thingOf([part], context);
  return {
    ...{ gain: { value, low: 0, high: 2 * value }, title, sale: undefined, minutes: 0, outlayMinor: 0 },
    ...{ uses: [], waits: true, isKept: true },
  };
}

const keptAs = (thing: number, best: readonly Best[]): Kept => ({
  thing,
  gain: sumOfGains(best.map(({ gain }) => gain)),
  titles: best.map(({ title }) => title),
  sales: best.flatMap(({ sale }) => sale ?? []),
  minutes: best.reduce((sum, { minutes }) => sum + minutes, 0),
  outlayMinor: best.reduce((sum, { outlayMinor }) => sum + outlayMinor, 0),
  uses: [...new Set(best.flatMap(({ uses }) => uses))],
  waits: best.some(({ waits }) => waits),
});
