import type { Clash, Settled } from "./clash.ts";

/** Where calls bring what was changed meanwhile, and the page asks a person about it. */
export class ClashDesk {
  /** Asks; without anybody to ask, it stays open. */
  ask: (clash: Clash) => Promise<Settled> = async () => ({ is: "open" });
}

/** The one for this page. */
export const clashDesk = new ClashDesk();
