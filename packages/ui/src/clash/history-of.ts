/** The table of the history that a thing at an address is kept in. */
const tables: readonly (readonly [path: string, table: string])[] = [
  ["/api/bench/parts/", "parts"],
  ["/api/bench/joints/", "joints"],
  ["/api/bench/claims/", "claims"],
  ["/api/bench/goal", "goal"],
  ["/api/catalogue/", "models"],
  ["/api/evidence/", "evidence"],
  ["/api/sightings/", "sightings"],
  ["/api/books/", "entries"],
  ["/api/measurements/", "measurements"],
  ["/api/watch/", "watches"],
  ["/api/costs", "costs"],
  ["/api/settings", "settings"],
  ["/api/labels/setup", "labels"],
  ["/api/advert/template", "sale-template"],
];

/** What the history calls the thing at an address; what there is one of has the id "bench". */
export function historyOf(path: string): { readonly table: string; readonly id: string } | undefined {
  const [at, table] = tables.find(([start]) => path.startsWith(start)) ?? [];
  if (at === undefined || table === undefined) return undefined;
  return { table, id: at.endsWith("/") ? decodeURIComponent(path.slice(at.length)) : "bench" };
}
