import type { Club, Joint, NearMiss, Part, Verdict } from "@ferrule/core";
import { verdictOrder } from "../words/verdict-words.ts";
import { type PartKindGroup, partKinds, straightIn } from "./part-kinds.ts";

/** A head's kind, what is between, and a shaft's kind: the best that any of their clubs comes to. */
export interface Way {
  readonly head: PartKindGroup;
  readonly between: PartKindGroup;
  readonly shaft: PartKindGroup;
  readonly verdict: Verdict;
  /** Clubs of the best verdict, or refused pairs. */
  readonly count: number;
}

/** One line of the picture: the best of the ways that go along it. */
export interface Link {
  readonly from: string;
  readonly to: string;
  readonly verdict: Verdict;
  /** Whether some of these parts are joined on the bench already. */
  readonly isJoined: boolean;
}

export interface Together {
  readonly groups: readonly PartKindGroup[];
  readonly ways: readonly Way[];
  readonly links: readonly Link[];
}

type Tried = Pick<Club | NearMiss, "head" | "adapter" | "shaft" | "verdict">;

const isBetter = (one: Verdict, other: Verdict) => verdictOrder.indexOf(one) < verdictOrder.indexOf(other);

/** What goes with what, kind by kind, from the clubs and refusals that an answer brought. */
export function together(parts: Iterable<Part>, joints: readonly Joint[], tried: readonly Tried[]): Together {
  const { groups, keyOf } = partKinds(parts, joints);
  const byKey = new Map(groups.map((group) => [group.key, group]));
  const groupOf = (id: string) => byKey.get(keyOf.get(id) ?? "");
  const ways = new Map<string, Way>();
  for (const { head: headId, adapter, shaft: shaftId, verdict } of tried) {
    const [head, shaft] = [groupOf(headId), groupOf(shaftId)];
    if (!head || !shaft) continue;
    const between = adapter === null ? straightIn(head) : groupOf(adapter);
    if (!between) continue;
    byKey.set(between.key, between);
    const key = [head.key, between.key, shaft.key].join("|");
    const known = ways.get(key);
    if (known?.verdict === verdict) ways.set(key, { ...known, count: known.count + 1 });
    else if (!known || isBetter(verdict, known.verdict))
      ways.set(key, { head, between, shaft, verdict, count: 1 });
  }
  const all = [...ways.values()].sort(
    (one, other) =>
      verdictOrder.indexOf(one.verdict) - verdictOrder.indexOf(other.verdict) || other.count - one.count,
  );
  return { groups: [...byKey.values()], ways: all, links: linksOf(all, joinedKinds(joints, keyOf)) };
}

/** Pairs of kinds of which some are joined on the bench. */
function joinedKinds(joints: readonly Joint[], keyOf: ReadonlyMap<string, string>): ReadonlySet<string> {
  return new Set(
    joints.flatMap(({ parts: [one, other] }) => {
      const [a, b] = [keyOf.get(one) ?? "", keyOf.get(other) ?? ""];
      return [`${a}|${b}`, `${b}|${a}`];
    }),
  );
}

function linksOf(ways: readonly Way[], joined: ReadonlySet<string>): readonly Link[] {
  const links = new Map<string, Link>();
  for (const { head, between, shaft, verdict } of ways)
    for (const [from, to] of [
      [head.key, between.key],
      [between.key, shaft.key],
    ] as const) {
      const key = `${from}|${to}`;
      const known = links.get(key);
      if (!known || isBetter(verdict, known.verdict))
        links.set(key, { from, to, verdict, isJoined: joined.has(key) });
    }
  return [...links.values()];
}

/** The ways through one kind, all of them where none is chosen. */
export function throughKind({ ways }: Together, key: string | undefined): readonly Way[] {
  return key === undefined
    ? ways
    : ways.filter(({ head, between, shaft }) => [head, between, shaft].some((group) => group.key === key));
}

/** The lines of some of the ways. */
export function linksOfWays(whole: Together, ways: readonly Way[]): readonly Link[] {
  const joined = new Set(whole.links.filter((link) => link.isJoined).map(({ from, to }) => `${from}|${to}`));
  return linksOf(ways, joined);
}
