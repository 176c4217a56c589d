import type { Joint } from "../parts/joint.ts";
import type { Candidate } from "./candidate-clubs.ts";
import { copiesOf } from "./copies-of.ts";
import type { DealContext } from "./deal-context.ts";
import { certain, type Gain, sumOfGains } from "./gain.ts";
import { leftOf } from "./left-of.ts";
import type { OfferedThing } from "./listing-things.ts";
import { gainsOfSales, type Sale, worthSelling } from "./sale.ts";
import type { ShelfCosts } from "./shelf-worth.ts";
import { thingOf } from "./thing.ts";
import { mostBorne } from "./way-sum.ts";

/** What clubs are chosen and reckoned with. */
export interface BuildDesk {
  readonly things: readonly OfferedThing[];
  readonly context: DealContext;
  readonly shelf: ShelfCosts;
}

/** What is sold when these clubs are built of the listing: the clubs, what is left of things taken apart, and the rest as it is. */
export function salesOfBuilding(chosen: readonly Candidate[], { things, context }: BuildDesk): Sale[] {
  const taken = new Set(chosen.flatMap(({ takes }) => takes));
  const joints = context.offered.joints.filter((joint) => !isUndone(joint, chosen));
  const rest = things.flatMap(({ parts, asItIs }) => {
    if (!parts.some(({ id }) => taken.has(id))) return asItIs.sale ?? [];
    return leftOf(parts, taken, joints).flatMap((piece) => thingOf(piece, context).sale ?? []);
  });
  return [...chosen.flatMap(({ sale }) => sale ?? []), ...worthSelling(rest)];
}

function isUndone({ parts: [one, other] }: Joint, chosen: readonly Candidate[]): boolean {
  return chosen.some(({ club }) =>
    club.undoes.some(({ parts }) => parts.includes(one) && parts.includes(other)),
  );
}

/** What building these clubs brings, before anything is paid for the listing. */
export function gainsOfBuilding(chosen: readonly Candidate[], desk: BuildDesk): Gain[] {
  const work = chosen.reduce((sum, each) => sum + each.work.totalMinor, 0);
  const shelf = desk.shelf.of(chosen.flatMap(({ uses }) => uses)).amountMinor;
  return [...gainsOfSales(salesOfBuilding(chosen, desk)), certain(-work - shelf)];
}

/**
 * Clubs that can all be built at once, chosen one after another by how much more can be paid for the listing with each. At
 * least one is chosen where there is one, so that building stands beside the other ways even where it is the worse one.
 */
export function chooseClubs(candidates: readonly Candidate[], desk: BuildDesk): Candidate[] {
  const open = candidates
    .filter(({ sale }) => sale !== undefined)
    .map((candidate) => copiesOf(candidate, desk.context.offered));
  const chosen: Candidate[] = [];
  let best = Number.NEGATIVE_INFINITY;
  for (;;) {
    const used = new Set(chosen.flatMap(({ takes, uses }) => [...takes, ...uses]));
    const isFree = ({ takes, uses }: Candidate) => ![...takes, ...uses].some((id) => used.has(id));
    // Of identical things one is tried: the others would come to the same.
    const top = topOf(
      open.flatMap((copies) => copies.find(isFree) ?? []),
      chosen,
      desk,
    );
    if (!top || (chosen.length > 0 && top.borneMinor <= best)) return chosen;
    chosen.push(top.candidate);
    best = top.borneMinor;
  }
}

function topOf(free: readonly Candidate[], chosen: readonly Candidate[], desk: BuildDesk) {
  const { costs } = desk.context;
  let top: { readonly candidate: Candidate; readonly borneMinor: number } | undefined;
  for (const candidate of free) {
    const borneMinor = mostBorne(sumOfGains(gainsOfBuilding([...chosen, candidate], desk)), costs);
    if (!top || borneMinor > top.borneMinor) top = { candidate, borneMinor };
  }
  return top;
}
