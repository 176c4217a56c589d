import { clausesOf, type Stretch } from "./clauses.ts";
import { type ItemDraft, isHeadLike, itemsAbout } from "./item-draft.ts";
import { canHave } from "./item-fields.ts";
import type { Absorbed } from "./items-state.ts";
import type { Mention } from "./mention.ts";

/** Words by which a fact is said of everything. */
const ofAll =
  /(?<![\p{L}])(?:all|both|each|every|everything|they(?:'re| are)?|alle|beide|tous|toutes|les deux|todos|todas|ambos|the lot are)(?![\p{L}])/u;

const isWithin = ({ start, end }: Stretch, at: number) => at >= start && at < end;

const distance = (item: ItemDraft, at: number) =>
  at < item.first ? item.first - at : at > item.last ? at - item.last : 0;

interface Sheet {
  readonly plain: string;
  readonly items: readonly ItemDraft[];
  readonly absorbed: readonly Absorbed[];
  readonly foreign: readonly Stretch[];
}

/** The sentence or line that a place is in. */
function sentenceAt(plain: string, at: number): Stretch {
  const before = plain.slice(0, at);
  const start =
    Math.max(
      before.lastIndexOf("\n"),
      before.lastIndexOf(". "),
      before.lastIndexOf("! "),
      before.lastIndexOf("; "),
      -1,
    ) + 1;
  const rest = /\n|[.!;](?= |$)/u.exec(plain.slice(at));
  return { start, end: rest ? at + rest.index : plain.length };
}

/** With the fields that the words before have given already. */
type SheetSoFar = Sheet & { readonly saidBefore: ReadonlySet<string>; readonly all: readonly Mention[] };

const ofEach: ReadonlySet<string> = new Set(["hand", "flex", "shaftMaterial"]);

/** "Driver, 3w & 5w RH": behind things named one right after another, a fact is said of each. */
function endsTightList({ items, saidBefore }: SheetSoFar, { field, start }: Mention): boolean {
  const last = items.at(-1);
  if (!last || start < last.last || !ofEach.has(field) || saidBefore.has(field)) return false;
  return items.every(
    ({ first, kind }, at) => isHeadLike(kind) && (at === 0 || first - (items[at - 1]?.last ?? 0) <= 14),
  );
}

/** "Left handed 7 iron and putter": before things joined by "and", a hand is the hand of each that has none of its own. */
function beginsPair({ items, plain }: SheetSoFar, { field, start, end }: Mention, later: readonly Mention[]) {
  const [first, second] = items;
  if (field !== "hand" || !first || !second || items.length > 3) return false;
  const touching = start < first.first && /^[\s-]*$/u.test(plain.slice(end, first.first));
  const joined = items.every(
    ({ first: from, kind }, at) =>
      isHeadLike(kind) &&
      (at === 0 ||
        /^ ?(?:,|and|&|\+|und|et|y|og|och|en)? ?(?:an? )?$/u.test(plain.slice(items[at - 1]?.last, from))),
  );
  return touching && joined && !later.some((other) => other.field === "hand" && other.start > start);
}

/** Whether a fact is said of all the things at once. */
function isOfAll(sheet: SheetSoFar, mention: Mention, clauses: readonly Stretch[]): boolean {
  const { plain, items } = sheet;
  if (items.length < 2) return false;
  const clause = clauses.find((stretch) => isWithin(stretch, mention.start)) ?? mention;
  if (ofAll.test(plain.slice(clause.start, clause.end))) return true;
  // "All RH, ladies flex, graphite".
  const run = sentenceAt(plain, mention.start);
  const said = [
    ...plain.slice(run.start, mention.start).matchAll(/(?<![\p{L}])(?:all|both)(?![\p{L}])/gu),
  ].at(-1);
  const from = run.start + (said?.index ?? 0);
  if (said && ofEach.has(mention.field) && !items.some(({ first }) => first > from && first < mention.start))
    return true;
  const words = plain.slice(Math.max(0, mention.start - 12), mention.end);
  if (
    mention.field === "cover" &&
    /(?:with|inc|including|all|no|without|\+|and|&) (?:the |any |matching |original |head)*\p{L}*covers$/u.test(
      words,
    )
  )
    return true;
  const sentence = sentenceAt(plain, mention.start);
  if (
    ofAll.test(plain.slice(sentence.start, mention.start)) &&
    !items.some(({ first }) => isWithin(sentence, first))
  )
    return true;
  // A hand in a sentence of its own is the hand of all: "Right handed."
  const alone = !items.some(({ first, last }) => isWithin(sentence, first) || isWithin(sentence, last - 1));
  if (endsTightList(sheet, mention) || beginsPair(sheet, mention, sheet.all)) return true;
  if (!alone) return false;
  if (mention.field === "hand") return true;
  const hasHand = /(?<![\p{L}])(?:rh|lh|right|left)(?![\p{L}])/u.test(
    plain.slice(sentence.start, sentence.end),
  );
  return hasHand && (mention.field === "flex" || mention.field === "shaftMaterial");
}

/** The items under a heading that a place is in: what it says, it says of all of them. */
function underHeading(items: readonly ItemDraft[], { heading }: ItemDraft, at: number): ItemDraft[] {
  return heading !== null && at < heading ? items.filter((other) => other.heading === heading) : [];
}

/** "Grooves worn on the 56", "an adapter comes with the 9": the club that a fact names by its loft or its number. */
function numberedAt(able: readonly ItemDraft[], plain: string, { end }: Mention): ItemDraft | undefined {
  const said =
    /^[^.;,\n\d]{0,16}(?<![\p{L}])(?:on|in|with|to) the (\d{1,2}(?:\.5)?|[psagl]w)(?![\p{L}\d])/u.exec(
      plain.slice(end, end + 30),
    )?.[1];
  if (said === undefined || able.length < 2) return undefined;
  return able.find(
    ({ loft, number, numberSaid }) =>
      loft?.value === Number(said) || (number?.value ?? numberSaid) === said.toUpperCase(),
  );
}

const comesWith: ReadonlySet<string> = new Set(["cover", "wrench", "adapter"]);

/** The items that a fact is said of: all, or the one whose words it stands in, or the nearest that can have it. */
function ownersOf(sheet: SheetSoFar, mention: Mention, clauses: readonly Stretch[]): ItemDraft[] {
  const able = sheet.items.filter(({ kind }) => canHave(kind, mention) || isOnShaft(kind, mention));
  if (able.length === 0) return [];
  const repeated = sheet.items.find(({ again }) => again.some((stretch) => isWithin(stretch, mention.start)));
  if (repeated && able.includes(repeated)) return [repeated];
  if (isOfAll(sheet, mention, clauses)) return able;
  const about = itemsAbout(sheet.items, mention.start);
  const named = numberedAt(able, sheet.plain, mention);
  if (named) return [named];
  const inside = about.filter((item) => able.includes(item));
  if (inside.length > 0)
    return [...new Set(inside.flatMap((item) => [item, ...underHeading(able, item, mention.start)]))];
  // What comes with a thing is not said of another: "wrench" is the wrench that is sold.
  if (comesWith.has(mention.field) && about.length > 0) return [];
  const nearest = Math.min(...able.map((item) => distance(item, mention.start)));
  const near = able.filter((item) => distance(item, mention.start) === nearest);
  return near;
}

/** Facts that things bring with them which are not offered are nobody's. */
function isForeign({ absorbed, foreign }: Sheet, mention: Mention): boolean {
  const at = (stretch: Stretch) => isWithin(stretch, mention.start);
  return foreign.some(at) || absorbed.some(at);
}

/** A dent of no said place, where the thing is a shaft. */
const isOnShaft = (kind: ItemDraft["kind"], mention: Mention) =>
  kind === "shaft" && mention.field === "fault" && mention.onShaft !== undefined;

const ofOwner = ({ kind }: ItemDraft, mention: Mention): Mention =>
  kind === "shaft" && mention.field === "fault" && mention.onShaft
    ? { ...mention, value: mention.onShaft }
    : mention;

/** Gives each fact to the items it is said of. */
export function assignFacts(sheet: Sheet, mentions: readonly Mention[]): Map<ItemDraft, Mention[]> {
  const clauses = clausesOf(sheet.plain);
  const saidBefore = new Set<string>();
  const facts = new Map<ItemDraft, Mention[]>(sheet.items.map((item) => [item, []]));
  for (const mention of mentions) {
    if (isForeign(sheet, mention)) continue;
    for (const owner of ownersOf({ ...sheet, saidBefore, all: mentions }, mention, clauses))
      facts.get(owner)?.push(ofOwner(owner, mention));
    saidBefore.add(mention.field);
  }
  return facts;
}
