import {
  clubsAndWants,
  modelFinder,
  readyBench,
  rules,
  type Want,
  type Watch,
  type WatchIndex,
  watchIndex,
} from "@ferrule/core";
import { unsold } from "../bench/unsold.ts";
import type { DocumentTable } from "../store/document-table.ts";
import type { Tables } from "../store/tables.ts";
import type { WorldTools } from "../trade/world.ts";
import { type Watched, watchedThings } from "./bench-watches.ts";

export interface WatchTools extends WorldTools {
  readonly tables: Tables;
}

/** What is watched, and the index that finds it in listings. */
export interface WatchDesk {
  readonly find: WatchIndex;
  /** An index of some things alone. */
  readonly findOf: (watches: readonly Watch[]) => WatchIndex;
  readonly watched: readonly Watched[];
}

/** Made anew when what it rests on has changed, and kept till then. */
export interface WatchDesks {
  ready(): WatchDesk;
  /** Differs after every change of the bench, its goal, the costs, the day or one of these tables. */
  stampOf(...more: readonly Pick<DocumentTable<never>, "changes">[]): string;
}

/** Wants of the bench that are watched: those that complete most come first. */
const wantsMost = 200;

export function openWatchDesks(tools: WatchTools): WatchDesks {
  const { tables, bench, costs, models, today } = tools;
  const stampOf: WatchDesks["stampOf"] = (...more) =>
    JSON.stringify([bench.stamp(), tables.stampOf(...more), bench.goal(), costs.read(), today()]);
  let wants: { readonly stamp: string; readonly value: readonly Want[] } | undefined;
  let desk: { readonly stamp: string; readonly value: WatchDesk } | undefined;
  const wantsNow = () => {
    const stamp = JSON.stringify([bench.stamp(), bench.goal()]);
    if (wants?.stamp !== stamp) wants = { stamp, value: benchWants(tools) };
    return wants.value;
  };
  return {
    stampOf,
    ready: () => {
      const stamp = stampOf(tables.models, tables.watches);
      if (desk?.stamp === stamp) return desk.value;
      const kept = tables.watches.all().map(({ value }) => value);
      const watched = watchedThings(wantsNow(), kept);
      const finder = modelFinder(models.all());
      const findOf: WatchDesk["findOf"] = (watches) => watchIndex(watches, finder, costs.read());
      desk = { stamp, value: { watched, findOf, find: findOf(watched.map(({ watch }) => watch)) } };
      return desk.value;
    },
  };
}

/** What the stored bench lacks, without what has been sold; nothing where it does not hold together. */
function benchWants({ bench, reference }: WatchTools): readonly Want[] {
  const { parts, joints, claims, goal } = unsold(bench.view());
  const made = readyBench({ parts, joints, claims, goal: { ...goal, limit: wantsMost } }, rules, reference);
  return made.ok ? clubsAndWants(made.ready).wants : [];
}
