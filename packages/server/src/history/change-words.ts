import type { ChangeCode, ChangeEntry, KeptChange } from "../store/history.ts";

const verbs = { added: "Added", changed: "Changed", deleted: "Deleted" } as const;

const phrases: { readonly [Code in ChangeCode]?: string } = {
  "taken-in": "Brought things in from a file",
  "goal-changed": "Changed the goal",
  "goal-deleted": "Deleted the goal",
  "costs-changed": "Changed the costs",
  "settings-changed": "Changed the settings",
  "settings-put-in": "Put settings in",
  "settings-taken-back": "Took back settings that had been put in",
  "labels-changed": "Changed the paper of the labels",
  "labels-printed": "Noted which labels are printed",
  "template-changed": "Changed the template for sale descriptions",
  "listing-bought": "Bought from a listing",
  "parts-sold": "Sold",
  "club-measured": "Measured a club",
  "part-inspected": "Inspected",
  "fault-cleared": "Cleared a fault of",
  "batch-entered": "Entered what a batch of listings came to",
  "example-loaded": "Put the example on the bench",
  "own-bench-started": "Started an own bench",
  "delete-undone": "Undid the last step",
  changed: "Changed something",
};

/** Codes whose sentence goes on with the parts that they are about. */
const ofParts: ReadonlySet<ChangeCode> = new Set(["parts-sold", "part-inspected", "fault-cleared"]);

/** A change in a few words, with what can be told of its things from the first of its entries. */
export function changeWords({ what, things, undoes }: KeptChange, entries: readonly ChangeEntry[]): string {
  if (what === "change-undone") return `Undid change ${undoes}`;
  const phrase = phrases[what] ?? thingPhrase(what, entries[0]);
  const parts = entries.filter(({ table }) => table === "parts").map(({ id }) => id);
  if (ofParts.has(what)) return parts.length > 0 ? `${phrase} ${parts.join(", ")}` : `${phrase} parts`;
  return what === "taken-in" || what === "batch-entered" ? `${phrase} (${things})` : phrase;
}

function thingPhrase(what: ChangeCode, first: ChangeEntry | undefined): string {
  const [noun, verb] = what.split("-") as [string, keyof typeof verbs];
  return `${verbs[verb]} the ${noun}${first ? ` ${first.id}` : ""}`;
}
