import type { Sighting } from "@ferrule/core";
import { newId } from "../bench/new-id.ts";
import type { Author } from "../store/history.ts";
import type { Tables } from "../store/tables.ts";
import type { FailedRow, JudgedRow, RowToJudge } from "../threads/judge-rows.ts";
import { correctionOf } from "../trade/judge-listing.ts";
import type { Watchlist } from "../watch/watchlist.ts";

/** The log for as long as one batch runs: what was in it of the same words on the same day, and what comes into it. */
export interface BatchBook {
  /** The rows that nothing has come of yet, with what the user has made of the same words today. */
  open(): RowToJudge[];
  /** Writes down what has come of some rows, whole or not at all. */
  enter(results: readonly (JudgedRow | FailedRow)[]): void;
}

export function openBatchBook(
  tables: Tables,
  watchlist: Watchlist,
  batch: string,
  today: string,
  by?: Author,
): BatchBook {
  const open = tables.batches.open(batch);
  const given = new Map(open.map(({ row, given }) => [row, given]));
  const sameWords = new Map<string, string>();
  for (const { value } of tables.sightings.all())
    if (value.outcome === "open" && value.seenOn === today) sameWords.set(value.text, value.id);
  let next = 1;
  const freeId = () => {
    const id = newId("sighting", (taken) => tables.sightings.get(taken) !== undefined, next);
    next = Number(id.split("-").at(-1)) + 1;
    return id;
  };
  const enterJudged = (result: JudgedRow) => {
    const row = given.get(result.row);
    if (row === undefined) return;
    const known = sameWords.get(row.text);
    const before = known === undefined ? undefined : tables.sightings.get(known)?.value;
    const id = before?.id ?? freeId();
    const sighting = sightingOf(result, { ...row, id, seenOn: today }, before);
    if (before) tables.sightings.replace(id, sighting);
    else tables.sightings.insert(sighting);
    sameWords.set(row.text, id);
    watchlist.keep(sighting, result.matches);
    tables.batches.finish(batch, result.row, {
      sighting: id,
      verdict: result.verdict,
      mostToPayMinor: result.mostToPay?.amountMinor ?? null,
      netMinor: result.netMinor,
      hits: [...new Set(result.matches.map(({ watch }) => watch))],
      problem: null,
    });
  };
  const enterFailed = ({ row, problem }: FailedRow) => {
    const nothing = { sighting: null, verdict: null, mostToPayMinor: null, netMinor: null, hits: [] };
    tables.batches.finish(batch, row, { ...nothing, problem });
  };
  return {
    open: () =>
      open.map(({ row, given: { text, place, roundTripKm } }) => {
        const known = sameWords.get(text);
        const listing = correctionOf(known === undefined ? undefined : tables.sightings.get(known)?.value);
        return { row, text, ...defined({ place, roundTripKm, listing }) };
      }),
    enter: (results) =>
      tables.together(
        () => {
          for (const result of results) {
            if ("problem" in result) enterFailed(result);
            else enterJudged(result);
          }
        },
        { what: "batch-entered", by },
      ),
  };
}

function sightingOf(
  { read, listing, verdict, mostToPay }: JudgedRow,
  {
    id,
    seenOn,
    text,
    place,
    roundTripKm,
  }: Pick<Sighting, "id" | "seenOn" | "text" | "place" | "roundTripKm">,
  before: Sighting | undefined,
): Sighting {
  const { mostToPay: _before, ...kept } = before ?? { id, seenOn, text, outcome: "open" as const };
  return {
    ...kept,
    read,
    listing,
    verdict,
    ...defined({ place, roundTripKm, mostToPay: mostToPay ?? undefined }),
  } as Sighting;
}

function defined<T extends object>(fields: T): Partial<T> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Partial<T>;
}
