import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";

/** Parts that are joined to each other, directly or through others: what lies on the shelf as one thing. */
export type Cluster = readonly Part[];

/** For every part, the thing it is a piece of; a loose part is a thing by itself. */
export function clustersOf(parts: readonly Part[], joints: readonly Joint[]): ReadonlyMap<string, Cluster> {
  const clusters = new Map<string, Part[]>(parts.map((part) => [part.id, [part]]));
  for (const { parts: ends } of joints) {
    const [one, other] = [clusters.get(ends[0]), clusters.get(ends[1])];
    if (!one || !other || one === other) continue;
    one.push(...other);
    for (const { id } of other) clusters.set(id, one);
  }
  return clusters;
}
