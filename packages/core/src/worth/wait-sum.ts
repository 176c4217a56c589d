import { roundMinor } from "../money.ts";
import { shelfLines } from "./build-sum.ts";
import type { DealLine, DealReason } from "./deal.ts";
import type { DealContext } from "./deal-context.ts";
import type { OfferedThing } from "./listing-things.ts";
import { type OneWait, waitFor } from "./one-wait.ts";
import { gainsOfSales, worthSelling } from "./sale.ts";
import type { ShelfCosts } from "./shelf-worth.ts";
import { unsafeFaults } from "./unsafe-faults.ts";
import { daysOfSales, type WaySum } from "./way-sum.ts";

export type Waited = { readonly sum: WaySum } | { readonly why: readonly DealReason[] };

/** Keeping what a head or a shaft of the listing needs in mind, and taking it when one comes at the right price. */
export function waitSum(things: readonly OfferedThing[], context: DealContext, shelf: ShelfCosts): Waited {
  const open = firstOfEach(things).flatMap((thing) => {
    const wants = isComplete(thing) ? [] : wantsOf(thing, context);
    return wants.map((want) => ({ thing, want }));
  });
  if (open.length === 0)
    return because("nothing-to-wait-for", "no single missing part is known that would complete it");
  const waits = open.flatMap(({ thing, want }) => waitFor(thing, want, context, shelf) ?? []);
  if (waits.length === 0) return because("no-evidence", "nobody knows what the finished club would sell for");
  const worth = waits.filter(({ waits }) => waits);
  if (worth.length === 0)
    return because("not-worth-waiting", "holding it costs as much as the missing part can be hoped to bring");
  const best = worth.reduce((one, other) => (one.gain.value >= other.gain.value ? one : other));
  return { sum: sumOfWaiting(best, things) };
}

const because = (code: string, text: string): Waited => ({ why: [{ code, text }] });

/** Of identical things one: the others wait no worse. */
function firstOfEach(things: readonly OfferedThing[]): OfferedThing[] {
  return things.filter(({ item }, at) => things.findIndex((other) => other.item === item) === at);
}

/** Whether nothing is missing, or what is missing is not one part: a club, a set of heads, something not to be swung. */
function isComplete({ parts }: OfferedThing): boolean {
  const count = (kind: string) => parts.filter((part) => part.kind === kind).length;
  return count("head") + count("shaft") !== 1 || unsafeFaults(parts).length > 0;
}

/** What would complete a thing's head or shaft, as the resolver says it. */
function wantsOf({ parts }: OfferedThing, context: DealContext) {
  const lead = context.leads.tried.find((part) => part.kind !== "adapter" && parts.includes(part));
  return lead ? context.resolveWith(lead.id).wants.slice(0, wantsMax) : [];
}

/** Wants looked at for one part: those that complete most come first. */
const wantsMax = 4;

function sumOfWaiting(best: OneWait, things: readonly OfferedThing[]): WaySum {
  const { sale, work, shelf, answer } = best;
  const others = worthSelling(
    things.filter((thing) => thing !== best.thing).flatMap(({ asItIs }) => asItIs.sale ?? []),
  );
  const spent = sale.gain.value - work.totalMinor - shelf.amountMinor - best.gain.value;
  const lines: DealLine[] = [
    ...sale.lines,
    { code: "materials", text: "materials when the part is here", amountMinor: -work.materialMinor },
    { code: "work-time", text: "own time at the bench", amountMinor: -work.timeMinor },
    ...shelfLines(shelf),
    { code: "missing-part", text: "the missing part, and the wait for it", amountMinor: -roundMinor(spent) },
    ...others.flatMap((other) => other.lines),
  ];
  return {
    way: "wait",
    gains: [best.gain, ...gainsOfSales(others)],
    lines: lines.filter(({ amountMinor }) => amountMinor !== 0),
    minutes: work.minutes + sale.minutes + others.reduce((sum, { minutes }) => sum + minutes, 0),
    spentMinor:
      work.materialMinor +
      answer.takeAtOrUnderMinor +
      [sale, ...others].reduce((sum, { listingFeeMinor }) => sum + listingFeeMinor, 0),
    days: best.days && daysOfSales([sale, ...others], best.days),
    clubs: [],
    usesParts: best.uses,
    risks: answer.priorOnly
      ? [{ code: "prior-only", text: "no part like it has been seen yet, so how often one comes is a guess" }]
      : [],
    reasons: [{ code: "waits-for", text: `waits for ${answer.text}` }],
    waiting: answer,
  };
}
