import { countText } from "../format/number.ts";
import type { HistoryEntry, Who } from "../history-api.ts";
import { hrefs } from "../route.ts";
import { fieldText } from "./field-words.ts";
import { settingText } from "./setting-words.ts";

interface TableWords {
  readonly noun: string;
  /** Where one of them is shown. */
  readonly href: (id: string) => string;
}

const to = (path: string) => () => path;

const tables: Readonly<Record<string, TableWords>> = {
  parts: { noun: "part", href: hrefs.part },
  joints: { noun: "joint", href: to("/") },
  claims: { noun: "fit claim", href: to("/claims") },
  models: { noun: "model", href: to("/models") },
  evidence: { noun: "price", href: to("/prices") },
  sightings: { noun: "listing", href: hrefs.listing },
  entries: { noun: "line of the books", href: to("/books") },
  measurements: { noun: "measured club", href: to("/") },
  inspections: { noun: "inspection", href: to("/") },
  clearances: { noun: "cleared fault", href: to("/") },
  watches: { noun: "want", href: to("/watch") },
  "labels-printed": { noun: "label", href: to("/labels") },
  goal: { noun: "goal", href: to("/settings") },
  costs: { noun: "costs", href: to("/costs") },
  settings: { noun: "settings", href: to("/settings") },
  labels: { noun: "paper of the labels", href: to("/labels") },
  "sale-template": { noun: "template for sale descriptions", href: to("/") },
  "former-settings": { noun: "settings that can be taken back", href: to("/settings") },
  example: { noun: "example", href: to("/") },
};

/** Tables that hold one thing, which needs no name. */
const single: ReadonlySet<string> = new Set([
  "goal",
  "costs",
  "settings",
  "labels",
  "sale-template",
  "former-settings",
  "example",
]);

/** Who made a change: the name of the device, or what it was made with. */
export function whoText({ means, name }: Who): string {
  if (name !== null) return name;
  if (means === "command-line") return "The command line";
  return means === "here" ? "This machine" : "A device that is not paired any more";
}

/** What a thing is called in the history: "the part H01", "the costs". */
export function thingText({ table, id }: Pick<HistoryEntry, "table" | "id">): string {
  const noun = tables[table]?.noun ?? table.replaceAll("-", " ");
  return single.has(table) ? `the ${noun}` : `the ${noun} ${id}`;
}

/** Where the thing is shown; a joint and what was found at a part are shown with the part. */
export function thingHref({ table, id, before, after }: HistoryEntry): string {
  const { part, parts } = (after ?? before ?? {}) as { part?: unknown; parts?: readonly unknown[] };
  const about = typeof part === "string" ? part : parts?.[0];
  if (table !== "entries" && table !== "parts" && typeof about === "string") return hrefs.part(about);
  return tables[table]?.href(id) ?? "/";
}

/** What a field of a thing is called. */
export function historyField(table: string, field: string): string {
  const settings: Readonly<Record<string, string>> = { goal: "goal", costs: "costs", settings: "display" };
  const above = settings[table];
  return above ? settingText(`${above}.${field}`) : fieldText(field);
}

/** What happened to a thing, where it came or went. */
export function entryVerb({
  before,
  after,
}: Pick<HistoryEntry, "before" | "after">): "added" | "deleted" | "changed" {
  if (before === null) return "added";
  return after === null ? "deleted" : "changed";
}

/** "and 3 more things". */
export function moreText(count: number): string {
  return `and ${countText(count, "more thing")}`;
}
