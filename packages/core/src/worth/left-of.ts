import type { Joint } from "../parts/joint.ts";
import { type Cluster, clustersOf } from "./clusters.ts";

/**
 * What is left of a thing when some of its parts go elsewhere: parts that are still joined to each other stay one thing. A
 * grip alone is left out: off its shaft it is no piece that sells.
 */
export function leftOf(parts: Cluster, taken: ReadonlySet<string>, joints: readonly Joint[]): Cluster[] {
  const left = parts.filter(({ id }) => !taken.has(id));
  if (left.length <= 1) return left.filter(({ kind }) => kind !== "grip").map((part) => [part]);
  const pieces = [...new Set(clustersOf(left, joints).values())];
  return pieces.filter((piece) => piece.some(({ kind }) => kind !== "grip"));
}
