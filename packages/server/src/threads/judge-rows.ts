import {
  type Deal,
  dealJudge,
  type Listing,
  modelFinder,
  readListing,
  readyCatalogue,
  watchIndex,
} from "@ferrule/core";
import type { FoundMatch } from "../watch/kept-hits.ts";
import { type PricedWorld, pricedWorld } from "./priced-world.ts";
import type { ThreadPort } from "./thread-port.ts";
import type { RowsTask } from "./thread-task.ts";

/** One listing for the thread to judge. */
export interface RowToJudge {
  readonly row: number;
  readonly text: string;
  /** What the user made of the same words before. */
  readonly listing?: Listing;
  readonly place?: string;
  readonly roundTripKm?: number;
}

/** More rows, or that there are none. */
export type RowsPost = readonly RowToJudge[] | "no-more";

export interface JudgedRow {
  readonly row: number;
  readonly read: Listing;
  readonly listing: Listing;
  readonly verdict: Deal["verdict"];
  readonly mostToPay: Deal["mostToPay"];
  readonly netMinor: number | null;
  readonly matches: readonly FoundMatch[];
}

export interface FailedRow {
  readonly row: number;
  readonly problem: string;
}

/** What the thread says: a row, or that it has done all that it was given. */
export type RowsMessage = JudgedRow | FailedRow | "more";

/** Reads, judges and matches listings for a bench that is made ready once, for as long as rows are posted. */
export async function judgeRows(task: RowsTask, port: ThreadPort): Promise<void> {
  const say = (message: RowsMessage) => port.say(message);
  const judge = rowJudge(task, await pricedWorld(task.world, await port.solver()));
  say("more");
  for (;;) {
    const rows = (await port.next()) as RowsPost;
    if (rows === "no-more") return;
    for (const row of rows) {
      if (port.shouldStop()) return;
      say(judged(row, judge));
    }
    say("more");
  }
}

/** One listing that cannot be judged does not keep the others from it. */
function judged(row: RowToJudge, judge: (row: RowToJudge) => JudgedRow): JudgedRow | FailedRow {
  try {
    return judge(row);
  } catch (error) {
    return { row: row.row, problem: (error as Error).message };
  }
}

function rowJudge({ watches }: RowsTask, world: PricedWorld): (row: RowToJudge) => JudgedRow {
  const ready = readyCatalogue(world.catalogue);
  const judge = dealJudge(world);
  const match = watchIndex(watches, modelFinder(world.catalogue), world.costs);
  return ({ row, text, listing: corrected, place, roundTripKm }) => {
    const read = readListing(text, ready);
    const listing = corrected ?? read;
    const deal = judge({ listing, ...(roundTripKm === undefined ? {} : { roundTripKm }) });
    const matches = match(listing, place).map(({ watch, ...rest }) => ({ ...rest, watch: watch.id }));
    const { verdict, mostToPay } = deal;
    return { row, read, listing, verdict, mostToPay, netMinor: netOf(deal), matches };
  };
}

/** What the best way with the listing leaves over leaving it, also where it is below nothing; null where nobody knows. */
function netOf({ alternatives }: Deal): number | null {
  const nets = alternatives.flatMap(({ way, net }) =>
    way === "leave" || net === null ? [] : net.valueMinor,
  );
  return nets.length === 0 ? null : Math.max(...nets);
}
