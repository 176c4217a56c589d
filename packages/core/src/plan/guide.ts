import type { Packing } from "./packing.ts";

/** The order in which a search looks at uses: all of them, and those that take a resource, the most promising first. */
export interface Guide {
  readonly order: readonly number[];
  readonly byResource: readonly (readonly number[])[];
}

/** By score, then by what they bring, then as they stand; scores that differ by less than the solver's error are equal. */
export function guideOf({ uses, resources }: Packing, scores: readonly number[]): Guide {
  const rounded = scores.map((score) => Math.round(score * 1e4));
  const order = uses
    .map((_, place) => place)
    .sort(
      (a, b) => (rounded[b] ?? 0) - (rounded[a] ?? 0) || (uses[b]?.net ?? 0) - (uses[a]?.net ?? 0) || a - b,
    );
  const byResource: number[][] = resources.map(() => []);
  for (const place of order)
    for (const { resource } of uses[place]?.takes ?? []) byResource[resource]?.push(place);
  return { order, byResource };
}

/** What each use brings: the score of the simplest greedy. */
export function scoresByNet({ uses }: Packing): number[] {
  return uses.map(({ net }) => net);
}

/** What each use brings for what it takes of things that many want and few are there of, and of limited money and time. */
export function scoresByScarcity(packing: Packing): number[] {
  const wanted = packing.resources.map(() => 0);
  for (const { takes, net } of packing.uses)
    for (const { resource } of takes) wanted[resource] = (wanted[resource] ?? 0) + net;
  const scarcity = wanted.map((sum, place) => sum / (1 + (packing.resources[place]?.count ?? 0)));
  const mean = scarcity.reduce((sum, each) => sum + each, 0) / Math.max(1, scarcity.length);
  return packing.uses.map(({ net, takes, minutes, outlay }) => {
    const things = takes.reduce(
      (sum, { resource, count }) => sum + (count * (scarcity[resource] ?? 0)) / (mean || 1),
      0,
    );
    const time = packing.minutes < Number.POSITIVE_INFINITY ? minutes / (packing.minutes + 1) : 0;
    const money = packing.budget < Number.POSITIVE_INFINITY ? outlay / (packing.budget + 1) : 0;
    return net / (0.1 + things + packing.uses.length * 0.01 * (time + money));
  });
}

/** What each use brings per minute, where minutes are limited. */
export function scoresByTime({ uses }: Packing): number[] {
  return uses.map(({ net, minutes }) => net / (1 + minutes));
}
