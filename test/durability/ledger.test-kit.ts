import type { Entry, Joint, Part, Sighting } from "@ferrule/core";

/** What a bench holds, as its server tells it, with the deletes as they stand in its file. */
export interface BenchState {
  readonly parts: ReadonlyMap<string, Part>;
  readonly joints: ReadonlyMap<string, Joint>;
  readonly entries: readonly Entry[];
  readonly sightings: ReadonlyMap<string, Sighting>;
  /** How many noted prices there are. */
  readonly evidence: number;
  /** The texts of all that can be undone. */
  readonly deletions: readonly string[];
}

/** One change that was asked for. Where it is neither done nor undone, half of it is there. */
export interface Change {
  readonly what: string;
  /** The server has said that it is done. */
  acknowledged: boolean;
  isDone(state: BenchState): boolean;
  isUndone(state: BenchState): boolean;
}

/** What is wrong with a bench after a crash: an acknowledged change that is gone, or half of one. */
export function wrongsOf(changes: readonly Change[], state: BenchState): string[] {
  return [...changes.flatMap((change) => wrongOf(change, state)), ...strayWrongs(state)];
}

function wrongOf({ what, acknowledged, isDone, isUndone }: Change, state: BenchState): string[] {
  if (isDone(state)) return [];
  if (!isUndone(state)) return [`${what}: half of it is there`];
  return acknowledged ? [`${what}: acknowledged, and gone`] : [];
}

/** A storm gives its own things ids that begin so; all others were given theirs by a purchase. */
export const ownIdStart = "storm-";

/** What no single change answers for: parts that no purchase names, and sales without their price noted. */
function strayWrongs({ parts, entries, evidence }: BenchState): string[] {
  const named = new Set(entries.flatMap((entry) => (entry.type === "buy" ? (entry.parts ?? []) : [])));
  const stray = [...parts.keys()].filter((id) => !id.startsWith(ownIdStart) && !named.has(id));
  const sold = [...parts.values()].filter(({ soldFor }) => soldFor !== undefined).length;
  return [
    ...stray.map((id) => `part ${id}: on the bench, and no purchase in the books names it`),
    ...(sold === evidence ? [] : [`${sold} parts sold one by one, and ${evidence} prices noted`]),
  ];
}
