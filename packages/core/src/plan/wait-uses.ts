import { roundMinor } from "../money.ts";
import type { ReadyBench } from "../resolve/ready-bench.ts";
import { clubsAndWants } from "../resolve/resolve-bench.ts";
import type { Want } from "../resolve/result.ts";
import type { DealContext } from "../worth/deal-context.ts";
import type { OfferedThing } from "../worth/listing-things.ts";
import { type OneWait, waitFor } from "../worth/one-wait.ts";
import type { ShelfCosts } from "../worth/shelf-worth.ts";
import { thingOf } from "../worth/thing.ts";
import { unsafeFaults } from "../worth/unsafe-faults.ts";
import { type MeaningfulUse, type Roles, sharesOf } from "./meaningful-use.ts";
import type { StockType } from "./stock.ts";

/** Wants tried for one thing, those that complete most first, and for each of them the partners on the shelf. */
const tried = { wants: 2, partners: 4 };

/** What waiting adds to a plan's model. */
export interface Waits {
  readonly uses: readonly MeaningfulUse[];
  /** How many things can wait for the same, by the kind that such uses count as. */
  readonly mostOfKind: Readonly<Record<string, number>>;
}

/** Keeping a head or a shaft, and its partner on the shelf, until their missing part turns up at the right price. */
export function waitUses(
  types: readonly StockType[],
  { ready, context, roles }: { ready: ReadyBench; context: DealContext; roles: Roles },
): Waits {
  const found = new Map<string, WaitUse>();
  for (const type of types) {
    for (const use of waitsOf(type, ready, context, roles)) {
      const known = found.get(use.id);
      if (!known || known.netMinor < use.netMinor) found.set(use.id, use);
    }
  }
  const uses = [...found.values()];
  const most = new Map(uses.map(({ kind, expectedWaitWeeks }) => [kind, mostWaiting(expectedWaitWeeks)]));
  return { uses, mostOfKind: Object.fromEntries(most) };
}

export interface WaitUse extends MeaningfulUse {
  readonly kind: string;
  readonly expectedWaitWeeks: number;
}

/**
 * Of several things that wait for the same, the first to come serves one. So many wait as are served within this time, one
 * after another; from memory.
 */
const servedWithinWeeks = 8;
const mostWaiting = (expectedWaitWeeks: number) =>
  Math.max(1, Math.floor(servedWithinWeeks / Math.max(expectedWaitWeeks, servedWithinWeeks / 100)));

export const waitKind = (want: Want) => `wait for ${want.id}`;

/** The waits of one sort of thing, alone or with a partner of the shelf. */
export function waitsOf(
  { parts }: StockType,
  ready: ReadyBench,
  context: DealContext,
  roles: Roles,
): WaitUse[] {
  const head = parts.find(({ kind }) => kind === "head");
  const shaft = parts.find(({ kind }) => kind === "shaft");
  const lead = head ?? shaft;
  if (!lead || (head && shaft) || unsafeFaults(parts).length > 0) return [];
  const { wants } = clubsAndWants(ready, lead.id, tried.wants);
  return wants.flatMap((want) =>
    eachPartner(want, lead.id).flatMap((alone) => waitUse(parts, alone, context, roles) ?? []),
  );
}

/** The want as each of the things of the shelf has it that would wait together with this one: each is a choice of its own. */
function eachPartner(want: Want, lead: string): Want[] {
  const isHere = ({ head, shaft }: Want["completes"][number]) => head === lead || shaft === lead;
  return want.completes
    .filter(isHere)
    .slice(0, tried.partners)
    .map((pair) => ({ ...want, completes: [pair], count: 1 }));
}

/** The club it will be; of a shaft whose head nobody knows yet, the shaft. */
const titleOf = ({ parts, asItIs }: OfferedThing, { sale, uses }: OneWait) =>
  parts.some(({ kind }) => kind === "head") || uses.length > 0 ? sale.title : asItIs.title;

/** The shelf's other parts are resources of the plan, so none of their worth is taken off here. */
const noShelf: ShelfCosts = { of: () => ({ amountMinor: 0, guessed: [] }), atLeast: () => 0 };

function waitUse(
  parts: StockType["parts"],
  want: Want,
  context: DealContext,
  roles: Roles,
): WaitUse | undefined {
  const own = new Set(parts.map(({ id }) => id));
  const thing = { item: 0, parts, asItIs: thingOf(parts, context) };
  const waiting = waitFor(thing, want, { ...context, isOffered: (id) => own.has(id) }, noShelf);
  // Waiting that may last for ever is worth nothing that can be counted on.
  if (!waiting?.waits || waiting.answer.expectedWaitWeeks === null) return undefined;
  // A partner waits as it lies there, with all that is on it.
  const partners = waiting.uses.flatMap((id) => context.clusterOf(id));
  const isClub =
    partners.some(({ kind }) => kind === "head") && partners.some(({ kind }) => kind === "shaft");
  if (isClub || unsafeFaults(partners).length > 0) return undefined;
  const ids = [...new Set([...own, ...partners.map(({ id }) => id)])];
  return {
    id: `wait ${ids.toSorted().join("+")} ${want.id}`,
    ...{ do: "wait", title: titleOf(thing, waiting), parts: ids, want, kind: waitKind(want) },
    takeAtOrUnderMinor: waiting.answer.takeAtOrUnderMinor,
    expectedWaitWeeks: waiting.answer.expectedWaitWeeks,
    takes: sharesOf(ids, roles),
    netMinor: roundMinor(waiting.gain.value),
    minutes: waiting.sale.minutes + waiting.work.minutes,
    outlayMinor:
      Math.max(0, waiting.answer.takeAtOrUnderMinor) +
      waiting.work.materialMinor +
      waiting.sale.listingFeeMinor,
  };
}
