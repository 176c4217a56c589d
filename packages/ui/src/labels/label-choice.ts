import type { Part, PartKind } from "@ferrule/core";
import type { Label } from "../label-api.ts";

/** Which labels are meant by a choice: `new`, `all`, or a kind of part. */
export type LabelChoice = "new" | "all" | PartKind;

/** The codes that a choice ticks. */
export function chosenCodes(
  labels: readonly Label[],
  parts: ReadonlyMap<string, Part>,
  choice: LabelChoice,
): ReadonlySet<string> {
  const isMeant = ({ part, joined, printed }: Label) => {
    if (choice === "all") return true;
    if (choice === "new") return !printed;
    return [part, ...joined].some((id) => parts.get(id)?.kind === choice);
  };
  return new Set(labels.filter(isMeant).map(({ code }) => code));
}
