import type { Route } from "../route.ts";

const loaders: Readonly<Partial<Record<Route["view"], () => Promise<unknown>>>> = {
  listings: () => import("./listings-view.ts"),
  listing: () => import("./listing-view.ts"),
  books: () => import("./books-view.ts"),
  sell: () => import("./sell-view.ts"),
  prices: () => import("./prices-view.ts"),
  costs: () => import("./costs-view.ts"),
  models: () => import("./models-view.ts"),
};

/** Fetches the code of a view that does not come with the page; nothing for one that does. The browser keeps what it has. */
export function loadView(view: Route["view"]): Promise<unknown> | undefined {
  return loaders[view]?.();
}
