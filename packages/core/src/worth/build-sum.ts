import type { Candidate } from "./candidate-clubs.ts";
import { type BuildDesk, gainsOfBuilding, salesOfBuilding } from "./choose-clubs.ts";
import type { DealLine, DealReason } from "./deal.ts";
import type { ShelfCost } from "./shelf-worth.ts";
import { daysOfSales, type WaySum } from "./way-sum.ts";

/** Building these clubs now. */
export function buildSum(chosen: readonly Candidate[], desk: BuildDesk): WaySum {
  const sales = salesOfBuilding(chosen, desk);
  const usesParts = chosen.flatMap(({ uses }) => uses);
  const shelf = desk.shelf.of(usesParts);
  return {
    way: "build-now",
    gains: gainsOfBuilding(chosen, desk),
    lines: [...sales.flatMap(({ lines }) => lines), ...chosen.flatMap(workLines), ...shelfLines(shelf)],
    minutes: sum(chosen.map(({ work }) => work.minutes)) + sum(sales.map(({ minutes }) => minutes)),
    spentMinor:
      sum(chosen.map(({ work }) => work.materialMinor)) +
      sum(sales.map(({ listingFeeMinor }) => listingFeeMinor)),
    days: daysOfSales(sales, certainDays(Math.max(0, ...chosen.map(({ club }) => waitDaysOf(club.work))))),
    clubs: chosen.map(({ club }) => club.id),
    usesParts,
    risks: risksOf(chosen),
    reasons: [...chosen.flatMap(reasonsOf), ...guessReasons(shelf)],
    waiting: null,
  };
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, each) => total + each, 0);

const certainDays = (days: number) => ({ value: days, low: days, high: days });

/** Glue that cures holds the sale up, by whole days. */
export function waitDaysOf(work: readonly { readonly waitMinutes: number }[]): number {
  return Math.ceil(sum(work.map(({ waitMinutes }) => waitMinutes)) / (24 * 60));
}

function workLines({ title, work }: Candidate): DealLine[] {
  return [
    { code: "materials", text: `materials for ${title}`, amountMinor: -work.materialMinor },
    { code: "work-time", text: `own time at the bench for ${title}`, amountMinor: -work.timeMinor },
  ].filter(({ amountMinor }) => amountMinor !== 0);
}

/** What the parts from the shelf would bring otherwise, as a line of a sum. */
export function shelfLines({ amountMinor }: ShelfCost): DealLine[] {
  if (amountMinor === 0) return [];
  return [
    { code: "shelf", text: "what the parts from the shelf would bring otherwise", amountMinor: -amountMinor },
  ];
}

/** Says which parts of the shelf are counted at a guess. */
export function guessReasons({ guessed }: ShelfCost): DealReason[] {
  if (guessed.length === 0) return [];
  return [
    {
      code: "shelf-worth-guessed",
      text: `nobody knows what ${guessed.join(", ")} would bring, so what was paid is counted, and nothing where that is not known`,
    },
  ];
}

function reasonsOf({ title, uses, club }: Candidate): DealReason[] {
  const from = uses.length > 0 ? `with ${uses.join(", ")} from the bench` : "of what is offered";
  const built = { code: "builds", text: `makes ${title} ${from}` };
  const unsettled = { code: "unsettled", text: "a deciding fact is missing, see the questions" };
  return [built, ...(club.verdict === "unsettled" ? [unsettled] : [])];
}

/** The steps that can go wrong for good. */
const riskySteps: Readonly<Record<string, string>> = {
  "pull-head": "pulling a shaft with heat can ruin it",
  "pull-adapter": "pulling an adapter with heat can ruin the shaft",
  "ream-bore": "a reamed bore cannot be undone",
};

function risksOf(chosen: readonly Candidate[]): DealReason[] {
  const steps = [...new Set(chosen.flatMap(({ club }) => club.work.map(({ step }) => step)))];
  return steps.flatMap((step) => (riskySteps[step] ? [{ code: step, text: riskySteps[step] }] : []));
}
