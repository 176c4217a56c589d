import type { Packing } from "./packing.ts";

/** Parts of a packing that share nothing limited, each with the whole of the limits it meets. Parts without uses are left out. */
export function splitPacking(packing: Packing): Packing[] {
  const groups = groupsOf(packing);
  const roots = [...new Set(packing.uses.map(({ takes }) => groups(takes[0]?.resource ?? 0)))];
  return roots.length <= 1
    ? packing.uses.length === 0
      ? []
      : [packing]
    : roots.sort((a, b) => a - b).map((root) => partOf(packing, (node) => groups(node) === root));
}

/** Nodes are resources, then trips, then kinds, then minutes and budget; the function gives a node's group. */
function groupsOf(packing: Packing): (node: number) => number {
  const { resources, trips, kinds } = packing;
  const tripAt = resources.length;
  const kindAt = tripAt + trips.length;
  const minutesAt = kindAt + kinds.length;
  const budgetAt = minutesAt + 1;
  const parent = Array.from({ length: budgetAt + 1 }, (_, node) => node);
  const rootOf = (node: number): number => {
    let root = node;
    while ((parent[root] ?? root) !== root) root = parent[root] ?? root;
    parent[node] = root;
    return root;
  };
  const join = (nodes: readonly number[]) => {
    for (const node of nodes) {
      const [a, b] = [rootOf(nodes[0] ?? node), rootOf(node)];
      parent[Math.max(a, b)] = Math.min(a, b);
    }
  };
  const limits = ({ minutes, outlay }: { minutes: number; outlay: number }) => [
    ...(minutes > 0 && packing.minutes < Number.POSITIVE_INFINITY ? [minutesAt] : []),
    ...(outlay > 0 && packing.budget < Number.POSITIVE_INFINITY ? [budgetAt] : []),
  ];
  for (const use of packing.uses)
    join([
      ...use.takes.map(({ resource }) => resource),
      ...limits(use),
      ...(use.kind < 0 ? [] : [kindAt + use.kind]),
    ]);
  for (const bundle of packing.bundles)
    join([
      ...bundle.gives.map(({ resource }) => resource),
      ...limits(bundle),
      ...(bundle.trip < 0 ? [] : [tripAt + bundle.trip]),
    ]);
  trips.forEach((trip, place) => {
    join([tripAt + place, ...limits(trip)]);
  });
  return rootOf;
}

function partOf(packing: Packing, inside: (node: number) => boolean): Packing {
  const kept = packing.resources.flatMap((resource, place) => (inside(place) ? [{ resource, place }] : []));
  const resourceNow = new Map(kept.map(({ place }, now) => [place, now]));
  const move = (amounts: Packing["uses"][number]["takes"]) =>
    amounts.map(({ resource, count }) => ({ resource: resourceNow.get(resource) ?? -1, count }));
  const uses = packing.uses.filter(({ takes }) => inside(takes[0]?.resource ?? -1));
  const bundles = packing.bundles.filter(({ gives }) => inside(gives[0]?.resource ?? -1));
  const trips = placesOf(bundles.map(({ trip }) => trip));
  const kinds = placesOf(uses.map(({ kind }) => kind));
  return {
    ...packing,
    resources: kept.map(({ resource }) => resource),
    uses: uses.map((use) => ({ ...use, takes: move(use.takes), kind: kinds.indexOf(use.kind) })),
    bundles: bundles.map((bundle) => ({
      ...bundle,
      gives: move(bundle.gives),
      trip: trips.indexOf(bundle.trip),
    })),
    trips: packing.trips.filter((_, place) => trips.includes(place)),
    kinds: packing.kinds.filter((_, place) => kinds.includes(place)),
  };
}

/** The places that occur, in order; −1 is none. */
function placesOf(places: readonly number[]): number[] {
  return [...new Set(places)].filter((place) => place >= 0).sort((a, b) => a - b);
}
