import type { Plan, PlanAction } from "@ferrule/core";
import { moneyText } from "../format/money.ts";

type Do = PlanAction["do"];

/** The order in which a plan is carried out. */
export const doOrder: readonly Do[] = ["fetch", "buy", "take-apart", "build", "sell", "wait"];

/** What stands over the things to do of one sort. */
export const doWords: Readonly<Record<Do, string>> = {
  fetch: "Fetch",
  buy: "Buy",
  "take-apart": "Take apart",
  build: "Build",
  sell: "Sell as it is",
  wait: "Keep waiting",
};

/** Before a title, in a running sentence: "build Northmoor Ombrel driver …". */
export const doVerbs: Readonly<Record<Do, string>> = {
  fetch: "fetch:",
  buy: "buy",
  "take-apart": "take apart",
  build: "build",
  sell: "sell",
  wait: "keep waiting with",
};

/** How good the plan is known to be. */
export function boundSentence({ netMinor, boundMinor, gap, currency, stopped }: Plan): string {
  const most = `No plan can bring more than ${moneyText(Math.round(boundMinor), currency)}`;
  const missedMinor = Math.round(boundMinor) - netMinor;
  if (missedMinor <= 0) return `${most}: this is the best there is.`;
  const share = `${(gap * 100).toFixed(gap < 0.01 ? 2 : 1)} %`;
  const missed = `${most}, so the best there is brings at most ${moneyText(missedMinor, currency)} (${share}) more than this one.`;
  return stopped ? `${missed} The time was up before that could be settled.` : missed;
}

/** What one more of something that is short would bring. */
export function bindingSentence(
  { limit, text, worthMinor }: Plan["binding"][number],
  currency: string,
): string {
  const worth = moneyText(worthMinor, currency);
  if (limit === "budget") return `One more ${moneyText(100, currency)} to spend would bring about ${worth}.`;
  if (limit === "minutes") return `One more hour would bring about ${worth}.`;
  if (limit === "part") return `One more ${text} would bring about ${worth}.`;
  return `One more of the ${text} would bring about ${worth}.`;
}
