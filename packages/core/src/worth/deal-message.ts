import type { DealQuestion, DealVerdict } from "./deal.ts";

/** Questions that a stranger answers gladly; more are left for the next message. */
const askedAtOnce = 6;

/**
 * The seller's questions, the most decisive first, as one polite message; empty where there is nothing to ask, and where the
 * listing is to be left: nobody writes to a stranger about what they will not buy.
 */
export function dealMessage(title: string, questions: readonly DealQuestion[], verdict: DealVerdict): string {
  if (verdict === "leave") return "";
  const asked = questions.filter(({ to }) => to === "seller").map(({ text }) => `- ${text}`);
  if (asked.length === 0) return "";
  return [
    `Hello, I am interested in your ${title}. Before I decide, could you tell me:`,
    ...asked.slice(0, askedAtOnce),
    "Thank you very much.",
  ].join("\n");
}
