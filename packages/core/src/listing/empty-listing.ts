import type { Listing } from "./listing.ts";

/** A listing in which nothing is offered: with it the bench is judged by itself. */
export const emptyListing: Listing = {
  intent: null,
  asking: null,
  negotiable: null,
  postage: null,
  items: [],
  spans: [],
  doubts: [],
};
