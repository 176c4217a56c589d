import { eitherLofts } from "./alternatives.ts";
import { assignFacts } from "./assign-facts.ts";
import { type BuiltItem, buildItem } from "./build-item.ts";
import type { Stretch } from "./clauses.ts";
import type { NameFound } from "./find-model.ts";
import { isForeignAt } from "./item-anchors.ts";
import { type ItemDraft, itemsAbout } from "./item-draft.ts";
import type { ItemsRead } from "./items-state.ts";
import type { Intent } from "./listing.ts";
import type { Mention } from "./mention.ts";
import { ownMentions, typeOfFit, withFallbacks } from "./own-mentions.ts";
import type { MoneyFound } from "./read-money.ts";
import type { ReadyCatalogue } from "./ready-catalogue.ts";
import type { Words } from "./words.ts";

export interface Read {
  readonly words: Words;
  readonly masked: Words;
  readonly names: readonly NameFound[];
  readonly money: readonly MoneyFound[];
  readonly intent: Intent | null;
  readonly foreign: readonly Stretch[];
  readonly read: ItemsRead;
  readonly copied: ReadonlySet<NameFound>;
}

export const ofShaft: ReadonlySet<string> = new Set(["flex", "shaftMaterial", "shaftMassG", "length"]);

/** A head's model named without any noun is a club where a shaft is described. */
function settleKinds(
  { items }: ItemsRead,
  facts: ReadonlyMap<ItemDraft, readonly Mention[]>,
  all: readonly Mention[],
): void {
  for (const item of items) {
    if (item.named || item.kind !== "head") continue;
    const within = all.filter(({ start }) => start >= item.start && start < item.end);
    if (facts.has(item) && within.some(({ field }) => ofShaft.has(field))) item.kind = "club";
  }
}

/** The names that are said of each item: those in the words about it, but for what it fits or comes from. */
function namesByItem({ masked, names, read, foreign }: Read): Map<ItemDraft, NameFound[]> {
  const byItem = new Map<ItemDraft, NameFound[]>(read.items.map((item) => [item, []]));
  const away = [...read.absorbed, ...foreign].filter(({ start, end }) => end > start);
  for (const name of names) {
    if (away.some(({ start, end }) => name.start >= start && name.start < end)) continue;
    // "…, all Skerrick": the name is said of everything.
    const ofAll = /(?<![\p{L}])(?:all|both|everything)(?: are| is| by| from)? ?$/u.test(
      masked.plain.slice(Math.max(0, name.start - 16), name.start),
    );
    for (const item of ofAll ? read.items : itemsAbout(read.items, name.start))
      if (!isForeignAt(masked.plain, name.start, item.first)) byItem.get(item)?.push(name);
  }
  return byItem;
}

export function buildItems(
  source: Read,
  mentions: readonly Mention[],
  fallbacks: readonly Mention[],
  ready: ReadyCatalogue,
): BuiltItem[] {
  const { masked, read, foreign } = source;
  const sheet = { plain: masked.plain, items: read.items, absorbed: read.absorbed, foreign };
  settleKinds(read, new Map(read.items.map((item) => [item, []])), mentions);
  const facts = assignFacts(sheet, mentions);
  const weaker = assignFacts(sheet, fallbacks);
  const placed = namesByItem(source);
  const lofts = eitherLofts(masked.plain);
  return read.items.map((draft) => {
    const own = withFallbacks(
      ownMentions(draft, facts.get(draft) ?? [], draft !== read.items[0]),
      (weaker.get(draft) ?? []).filter(
        ({ field }) => field !== "clubNumber" || (draft.type !== "driver" && draft.type !== "putter"),
      ),
    );
    const allNames = [...new Set([...draft.names, ...(placed.get(draft) ?? [])])].sort(
      (one, other) => one.start - other.start,
    );
    return buildItem(
      {
        draft,
        mentions: [...own, ...typeOfFit(draft, read)],
        names: allNames,
        plain: source.words.text,
        copied: source.copied,
        openLofts: lofts.filter(({ start }) => itemsAbout(read.items, start).includes(draft)),
      },
      ready,
    );
  });
}
