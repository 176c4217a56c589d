import { createHash } from "node:crypto";
import type { Want, Watch } from "@ferrule/core";
import type { KeptWatch } from "../store/watches.ts";

/** Something that is watched, as the resolver would want it, and what it completes. */
export interface Watched {
  readonly watch: Watch;
  readonly want: Want;
}

const longestText = 500;

/** The wants of the bench with what the user says about them, and what is watched by hand. */
export function watchedThings(wants: readonly Want[], kept: readonly KeptWatch[]): Watched[] {
  const marks = new Map(kept.map((each) => [each.id, each]));
  const ofBench = wants.map((want): Watched => {
    const id = watchIdOf(want);
    const { kind, needs, text } = want;
    const plain = { id, kind, needs, text: text.slice(0, longestText), by: "bench" as const };
    return { watch: { ...plain, ...marks.get(id), ...plain }, want };
  });
  const byHand = kept.flatMap((watch) => (watch.by === "hand" ? [{ watch, want: wantOf(watch) }] : []));
  return [...ofBench, ...byHand];
}

const wantStem = "want-";

/** Ids that only wants of the bench have. */
export function isWantId(id: string): boolean {
  return id.startsWith(wantStem);
}

/** The same for the same want, whatever else is on the bench; a want's own id is too long to name it by. */
export function watchIdOf({ id }: Want): string {
  return `${wantStem}${createHash("sha256").update(id).digest("hex").slice(0, 16)}`;
}

function wantOf({ id, kind, needs, text }: Watch): Want {
  return { id, kind, needs, text, completes: [], count: 0 };
}
