import type { Route } from "../route.ts";

const loaders: Readonly<Partial<Record<Route["view"], () => Promise<unknown>>>> = {
  club: () => import("./club-view.ts"),
  refusal: () => import("./refusal-view.ts"),
  plan: () => import("./plan-view.ts"),
  watch: () => import("./watch-view.ts"),
  listings: () => import("./listings-view.ts"),
  batch: () => import("./batch-view.ts"),
  listing: () => import("./listing-view.ts"),
  books: () => import("./books-view.ts"),
  sell: () => import("./sell-view.ts"),
  sheet: () => import("./sheet-view.ts"),
  inspection: () => import("./inspection-view.ts"),
  advert: () => import("./advert-view.ts"),
  prices: () => import("./prices-view.ts"),
  costs: () => import("./costs-view.ts"),
  together: () => import("./together-view.ts"),
  models: () => import("./models-view.ts"),
  settings: () => import("./settings-view.ts"),
  labels: () => import("./labels-view.ts"),
  code: () => import("./code-view.ts"),
  history: () => import("./history-view.ts"),
  devices: () => import("./devices-view.ts"),
  waiting: () => import("./waiting-view.ts"),
};

/** Whether the code of a view is here; most of it comes with the page. */
export function isHere(view: Route["view"]): boolean {
  return loaders[view] === undefined || customElements.get(`ferrule-${view}-view`) !== undefined;
}

/** Fetches the code of a view that does not come with the page. */
export async function loadView(view: Route["view"]): Promise<void> {
  await loaders[view]?.();
}
