import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import { type Cluster, clustersOf } from "../worth/clusters.ts";

/** One thing as it lies there: its parts, always in the same order for things that are alike. */
export interface Instance {
  readonly parts: Cluster;
  /** The bundle it comes with; nothing for what is on the bench. */
  readonly bundle: string | undefined;
}

/** A sort of thing: however many there are, what can be done with one can be done with each. */
export interface StockType {
  readonly id: string;
  /** One of them, which speaks for all. */
  readonly parts: Cluster;
  readonly joints: readonly Joint[];
  readonly instances: readonly Instance[];
}

/** Things that are bought together or not at all. */
export interface StockBundle {
  readonly id: string;
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
}

/** Facts that make no difference to what can be done with a part: its name, and what happened to it. */
const incidental: ReadonlySet<string> = new Set(["id", "note", "paid", "acquiredOn", "soldFor", "soldOn"]);

/** Sorts everything into types: things of the same parts with the same facts, joined in the same way, are alike. */
export function stockTypes(
  bench: { readonly parts: readonly Part[]; readonly joints: readonly Joint[] },
  bundles: readonly StockBundle[],
): StockType[] {
  const sources = [{ id: undefined, ...bench }, ...bundles];
  const types = new Map<string, { parts: Cluster; joints: readonly Joint[]; instances: Instance[] }>();
  for (const { id, parts, joints } of sources) {
    for (const cluster of new Set(clustersOf(parts, joints).values())) {
      const ordered = inOrder(cluster);
      const own = jointsOf(ordered, joints);
      const key = signature(ordered, own);
      const instance = { parts: ordered, bundle: id };
      const known = types.get(key);
      if (known) known.instances.push(instance);
      else types.set(key, { parts: ordered, joints: own, instances: [instance] });
    }
  }
  return [...types.values()].map((type, at) => ({ id: `t${at + 1}`, ...type }));
}

function inOrder(cluster: Cluster): Cluster {
  const keyed = cluster.map((part) => ({ part, key: partKey(part) }));
  return keyed
    .sort((one, other) => (one.key < other.key ? -1 : one.key > other.key ? 1 : 0))
    .map(({ part }) => part);
}

/** A part's facts as one word, the same for parts that are alike. */
export function partKey(part: Part): string {
  return JSON.stringify(inOrderOfNames(Object.entries(part).filter(([name]) => !incidental.has(name))));
}

/** Facts by their names in order, those within them too: the order in which somebody wrote them down means nothing. */
function inOrderOfNames(facts: readonly [string, unknown][]): unknown[] {
  return facts
    .map(([name, value]) => {
      const isGroup = typeof value === "object" && value !== null && !Array.isArray(value);
      return [name, isGroup ? inOrderOfNames(Object.entries(value)) : value] as const;
    })
    .sort(([one], [other]) => (one < other ? -1 : 1));
}

function jointsOf(cluster: Cluster, joints: readonly Joint[]): Joint[] {
  const own = new Set(cluster.map(({ id }) => id));
  return joints.filter(({ parts: [one] }) => own.has(one));
}

function signature(cluster: Cluster, joints: readonly Joint[]): string {
  const place = new Map(cluster.map(({ id }, at) => [id, at]));
  const joined = joints.map(
    ({ type, parts }) =>
      `${type} ${parts
        .map((id) => place.get(id) ?? 0)
        .sort((one, other) => one - other)
        .join("-")}`,
  );
  return JSON.stringify([cluster.map(partKey), joined.sort()]);
}
