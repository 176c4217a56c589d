import { type Deal, type DealQuery, dealJudge } from "@ferrule/core";
import { KeptPrices } from "./priced-world.ts";
import type { ThreadPort } from "./thread-port.ts";
import type { PlanWorld } from "./thread-task.ts";

/** A listing to judge, as somebody waits for it. */
export interface JudgeOrder {
  readonly number: number;
  /** The name of what the prices of its bench rest on: the same for the same bench on the same day. */
  readonly priced: string;
  readonly world: PlanWorld;
  readonly query: DealQuery;
}

export type JudgePost = JudgeOrder | "no-more";

export type JudgeMessage = { readonly number: number } & (
  | { readonly deal: Deal }
  | { readonly error: Error }
);

/** Judges one listing after another, as they are posted, by prices that are kept for those to come. */
export async function judgeListings(port: ThreadPort): Promise<void> {
  const prices = new KeptPrices();
  const say = (message: JudgeMessage) => port.say(message);
  for (;;) {
    const order = (await port.next()) as JudgePost;
    if (order === "no-more" || port.shouldStop()) return;
    const { number, priced, world, query } = order;
    try {
      const judge = dealJudge(await prices.of(priced, world, await port.solver()));
      say({ number, deal: judge(query) });
    } catch (error) {
      say({ number, error: error as Error });
    }
  }
}
