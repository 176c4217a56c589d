import { tell } from "../events.ts";
import { hrefs } from "../route.ts";
import type { BuyReply } from "../trade-api.ts";
import { partTitle } from "../words/part-title.ts";

/** Says what came on the bench, with the way back, and goes to the part that a club begins with. */
export function tellBought(from: EventTarget, { parts }: BuyReply): void {
  const chief =
    ["head", "shaft"].flatMap((kind) => parts.filter((part) => part.kind === kind))[0] ?? parts[0];
  const what = chief ? partTitle(chief) : "It";
  const others = parts.length - 1;
  tell(from, "ferrule-done", {
    text: others > 0 ? `${what} and ${others} more are on the bench.` : `${what} is on the bench.`,
    undoable: true,
    undone: "The purchase is taken back.",
  });
  tell(from, "ferrule-go", { path: chief ? hrefs.part(chief.id) : "/" });
}
