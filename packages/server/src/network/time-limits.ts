import type { ServerOptions } from "node:http";

/** How long a request may take to come in, in milliseconds. How long the answer takes is another matter. */
export interface TimeLimits {
  readonly headersMs: number;
  /** The whole of it; 8 MB at half a megabit a second take as long. */
  readonly requestMs: number;
  /** How often connections are looked at. */
  readonly checkEveryMs: number;
}

export const timeLimits: TimeLimits = { headersMs: 15_000, requestMs: 135_000, checkEveryMs: 5_000 };

/** More connections at once than this are closed as they come. */
export const connectionsMost = 1000;

/** The limits as Node's servers take them, so that nobody holds one up by sending a byte now and then. */
export function timedServer({ headersMs, requestMs, checkEveryMs }: TimeLimits): ServerOptions {
  return {
    headersTimeout: headersMs,
    requestTimeout: requestMs,
    connectionsCheckingInterval: checkEveryMs,
  };
}
