import { assignFacts } from "./assign-facts.ts";
import { type BuiltItem, buildItem } from "./build-item.ts";
import type { CatalogueModel } from "./catalogue.ts";
import type { Stretch } from "./clauses.ts";
import { factReaders } from "./fact-readers.ts";
import { findNames, type NameFound } from "./find-model.ts";
import { foreignStretches } from "./foreign-stretches.ts";
import { readIronSets } from "./iron-sets.ts";
import { isForeignAt } from "./item-anchors.ts";
import { type ItemDraft, itemsAbout } from "./item-draft.ts";
import { findNounPhrases, type NounPhrase } from "./item-nouns.ts";
import type { Doubt, Intent, Listing, Span } from "./listing.ts";
import type { Mention } from "./mention.ts";
import { isSpokenFor } from "./name-evidence.ts";
import { type Prices, priceItems } from "./price-items.ts";
import { readFallbacks } from "./read-fallbacks.ts";
import { readIntent } from "./read-intent.ts";
import { type ItemsRead, readItems } from "./read-items.ts";
import { readModelFlex } from "./read-model-flex.ts";
import { type MoneyFound, readMoney } from "./read-money.ts";
import { readNegotiable } from "./read-negotiable.ts";
import { readPostage } from "./read-postage.ts";
import { type Piece, type ReadyCatalogue, readyCatalogue } from "./ready-catalogue.ts";
import { isTradeNoun } from "./trade-words.ts";
import { maskWords, type SqueezedWords, squeezeWords, type Words } from "./words.ts";

/** Longer than any listing; what follows is not read. */
const charactersMost = 8_000;
const itemsMost = 200;
const cutShort: Doubt = {
  field: null,
  start: charactersMost,
  end: null,
  text: `The text is longer than any listing; only its first ${charactersMost} characters were read.`,
};

/** The words of names that are to be blanked out; a word that says what kind of thing it is stays readable. */
function maskOf(names: readonly NameFound[], { plain: all }: Words): Piece[] {
  return names.flatMap(({ parts, models }) => {
    const ofShaft = models.length > 0 && models.every(({ kind }) => kind === "shaft");
    // "Tussock 80 hybrid shaft" says what club it is for; "Wickerfen Hybrid 75" is only called so.
    return parts.filter(
      ({ plain, end }, at) =>
        !isTradeNoun(plain) ||
        (ofShaft &&
          !/^(?:steel|graphite|carbon)$/u.test(plain) &&
          !(at > 0 && at === parts.length - 1) &&
          !/^ shaft/u.test(all.slice(end, end + 6))),
    );
  });
}

interface Named {
  readonly names: readonly NameFound[];
  readonly masked: Words;
  readonly money: readonly MoneyFound[];
  readonly phrases: readonly NounPhrase[];
}

/** The names of the catalogue in the words, the words without them, and what those say of money and things. */
function namesIn(words: Words, ready: ReadyCatalogue): Named {
  const without = (names: readonly NameFound[]): Named => {
    const masked = maskWords(words, maskOf(names, words));
    const money = readMoney(masked);
    return { names, masked, money, phrases: findNounPhrases(maskWords(masked, money)) };
  };
  const all = without(findNames(words, ready));
  const names = all.names.filter((name) => isSpokenFor(words.plain, name, all.names, all.phrases));
  return names.length === all.names.length ? all : without(names);
}

/** "3 or 5 wood" is neither; a digit of a longer number is none. */
function isUnsettledNumber({ field, start, end }: Mention, plain: string): boolean {
  if (field !== "clubNumber") return false;
  const choice =
    /\d ?(?:or|oder|ou|o) $/u.test(plain.slice(Math.max(0, start - 8), start)) ||
    /^ ?(?:or|oder|ou|o) \d/u.test(plain.slice(end, end + 8));
  const within =
    (/\d/u.test(plain[end] ?? "") && /\d/u.test(plain[end - 1] ?? "")) || /\d/u.test(plain[start - 1] ?? "");
  return choice || within;
}

/** The year in short before a name: "'21 Ombrel". */
function shortYears(names: readonly NameFound[], { plain }: Words): Mention[] {
  return names.flatMap(({ start }): Mention[] => {
    const match = /(?<![\d\p{L}])'(?<year>[0-4]\d) ?$/u.exec(plain.slice(Math.max(0, start - 5), start));
    const year = match?.groups?.["year"];
    return match && year
      ? [{ field: "year", value: 2000 + Number(year), start: start - match[0].length, end: start }]
      : [];
  });
}

/** "Steel? No, graphite", "dents I can live with": said, and not so. */
function isTakenBack({ field, end }: Mention, plain: string): boolean {
  const after = plain.slice(end, end + 30);
  return (
    /^ ?\?\s{0,2}(?:no|nope|nah|nein|non|nee)(?![\p{L}])/u.test(after) ||
    (field === "fault" &&
      /^[^.,;\n]{0,12}(?:can live with|don't mind|dont mind|(?:is|are) (?:ok|fine|no problem|acceptable))/u.test(
        after,
      ))
  );
}

/** The adapter families that the names say. */
function familyMentions(names: readonly NameFound[], { plain }: Words): Mention[] {
  return names.flatMap(({ family, start, end }): Mention[] => {
    if (family === null) return [];
    const said: Mention = { field: "adapterFamily", value: family, start, end };
    // "Quillon 2 on it" speaks of an adapter without the word.
    const on =
      /^ ?(?:tip |end |sleeve |adapt[eo]r )?(?:(?:is |already |still )?on(?: it| (?:the )?(?:end|tip))?|fitted|installed|attached|already on)(?= ?(?:$|[.,;)|\n]))/u.exec(
        plain.slice(end, end + 20),
      );
    const tip =
      /(?:with|w\/|has|inc|c\/w|mit|avec|con|plus|\+)(?: an?| the| a new)? ?$/u.test(
        plain.slice(Math.max(0, start - 20), start),
      ) && /^ tip(?![\p{L}])/u.test(plain.slice(end, end + 6));
    if (tip) return [said, { field: "adapter", value: "fitted", start, end: end + 4 }];
    return on ? [said, { field: "adapter", value: "fitted", start, end: end + on[0].length }] : [said];
  });
}

interface Read {
  readonly words: Words;
  readonly masked: Words;
  readonly names: readonly NameFound[];
  readonly money: readonly MoneyFound[];
  readonly intent: Intent | null;
  readonly foreign: readonly Stretch[];
  readonly read: ItemsRead;
}

/** The type and the number of a club that its own noun says count before any others in the words. */
function ownMentions(
  { type, typeAt, number, numberSaid, loft, quantity, plural }: ItemDraft,
  mentions: readonly Mention[],
  listed: boolean,
): Mention[] {
  const own: Mention[] = [];
  if (type && typeAt) own.push({ field: "clubType", value: type, start: typeAt.start, end: typeAt.end });
  if (number) own.push({ field: "clubNumber", value: number.value, start: number.start, end: number.end });
  if (loft) own.push({ field: "loftDeg", value: loft.value, start: loft.start, end: loft.end });
  const inNoun = mentions.find(
    ({ field, start }) => field === "clubNumber" && typeAt && start >= typeAt.start && start < typeAt.end,
  );
  if (inNoun && !number && !quantity?.insideNoun) own.push(inNoun);
  // "5 wood and 7 wood heads": a number before a plural says a club's number where it is not the first thing named.
  const ofNoun =
    numberSaid !== null &&
    type !== "driver" &&
    type !== "putter" &&
    typeAt &&
    !number &&
    !inNoun &&
    !quantity?.insideNoun &&
    !mentions.some(({ field }) => field === "clubNumber");
  if (ofNoun && (!plural || listed || quantity))
    own.push({ field: "clubNumber", value: numberSaid, start: typeAt.start, end: typeAt.end });
  const numberless = type === "driver" || type === "putter";
  const others = mentions.filter(
    ({ field }) =>
      !(field === "clubNumber" && (number || inNoun)) &&
      !(field === "clubType" && type) &&
      !(field === "loftDeg" && loft) &&
      !(field === "clubNumber" && numberless),
  );
  return [...own, ...others];
}

/** What a thing fits says its type where its own noun does not: "shaft for a driver". */
function typeOfFit(draft: ItemDraft, { absorbed }: ItemsRead): Mention[] {
  if (draft.type || (draft.kind !== "shaft" && draft.kind !== "cover")) return [];
  const fit = absorbed.find(({ by, type }) => by === draft && type !== null);
  return fit?.type ? [{ field: "clubType", value: fit.type, start: fit.start, end: fit.end }] : [];
}

const ofShaft: ReadonlySet<string> = new Set(["flex", "shaftMaterial", "shaftMassG", "length"]);

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

/** Facts and, for fields that none of them gives, those that are less sure. */
const withFallbacks = (sure: readonly Mention[], weaker: readonly Mention[]): Mention[] => [
  ...sure,
  ...weaker.filter(({ field }) => !sure.some((other) => other.field === field)),
];

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

function buildItems(
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
      { draft, mentions: [...own, ...typeOfFit(draft, read)], names: allNames, plain: source.words.text },
      ready,
    );
  });
}

/** Puts a price on each item that the words price apart. */
function priced(built: readonly BuiltItem[], { prices }: Prices): BuiltItem[] {
  return built.map((one, place) => {
    const price = prices.get(place);
    if (!price) return one;
    const { start, end } = price.at;
    return {
      ...one,
      item: { ...one.item, price: price.money },
      at: [...one.at, { field: "price", start, end }],
    };
  });
}

const noPrices: Prices = { asking: null, askingAt: null, prices: new Map(), unsure: [] };

/** Turns places in the prepared words into places in the text as it was given. */
function placing(whole: string, { places }: SqueezedWords) {
  const startOf = (start: number) => places[start] ?? whole.length;
  const endOf = (end: number) => (end === 0 ? 0 : (places[end - 1] ?? whole.length - 1) + 1);
  return {
    span: (field: string, start: number, end: number): Span => ({
      field,
      start: startOf(start),
      end: endOf(end),
      words: whole.slice(startOf(start), endOf(end)),
    }),
    doubt: ({ field, start, end, text }: Doubt, prefix = ""): Doubt => ({
      field: field === null ? null : prefix + field,
      start: start === null ? null : startOf(start),
      end: end === null ? null : endOf(end),
      text,
    }),
  };
}

const moneyDoubts = (money: readonly MoneyFound[], { asking, unsure }: Prices): Doubt[] => [
  ...(asking === null
    ? money.flatMap(({ doubt, start, end }) => (doubt ? [{ field: "asking", start, end, text: doubt }] : []))
    : []),
  ...unsure.map(({ start, end }) => ({
    field: "asking",
    start,
    end,
    text: "The words give more than one price.",
  })),
];

/**
 * Reads somebody's words about things for sale: what they are, what is asked, how they are sent. What the words do not say
 * is null. Every fact has its span of the text, every uncertainty its sentence. Never throws, whatever the text.
 */
export function readListing(text: string, catalogue: readonly CatalogueModel[] | ReadyCatalogue): Listing {
  const ready = "names" in catalogue ? catalogue : readyCatalogue(catalogue);
  const whole = text.slice(0, charactersMost);
  const words = squeezeWords(whole);
  const { names, masked, money, phrases } = namesIn(words, ready);
  const said = readIntent(
    masked,
    money.find(({ role }) => role === "asking" || role === "each")?.start ?? null,
  );
  const foreign = foreignStretches(masked.plain, said?.value ?? null);
  const unpriced = maskWords(masked, money);
  // Names stay words to the small readers ("with ▢▢ adapter"), only not words they know.
  const readable = maskWords(maskWords(words, maskOf(names, words), "q"), money);
  const found = readItems({
    plain: unpriced.plain,
    marked: maskWords(masked, money, "¤").plain,
    solid: readable.plain,
    phrases,
    names,
    money,
    foreign,
    makerKinds: ready.makerKinds,
  });
  const read = { ...found, items: found.items.slice(0, itemsMost) };
  const source: Read = { words, masked: unpriced, names, money, intent: said?.value ?? null, foreign, read };
  const sets = readIronSets(readable);
  const inSet = ({ field, start }: Mention) =>
    (field === "clubNumber" || field === "clubType") &&
    sets.some((set) => start >= set.start && start < set.end);
  const mentions = [
    ...factReaders
      .flatMap((reader) => reader(readable))
      .filter(
        (mention) =>
          !inSet(mention) &&
          !isUnsettledNumber(mention, readable.plain) &&
          !isTakenBack(mention, readable.plain),
      ),
    ...sets,
    ...readModelFlex(words, names),
    ...familyMentions(names, words),
    ...shortYears(names, words),
  ].sort((one, other) => one.start - other.start || one.end - other.end);
  const built = buildItems(source, mentions, [...read.extras, ...readFallbacks(readable, names)], ready);
  const listing = finish({ whole, words, masked, money, said, built, read });
  return text.length > charactersMost ? { ...listing, doubts: [...listing.doubts, cutShort] } : listing;
}

interface Finished {
  readonly whole: string;
  readonly words: SqueezedWords;
  readonly masked: Words;
  readonly money: readonly MoneyFound[];
  readonly said: ReturnType<typeof readIntent>;
  readonly built: readonly BuiltItem[];
  readonly read: ItemsRead;
}

/** Adds what is said of the whole listing, and puts every span in its place in the text. */
function finish({ whole, words, masked, money, said, built, read }: Finished): Listing {
  const first = read.items[0];
  const intent = said ?? (first ? { value: "sell" as const, ...first.kindAt } : null);
  const prices = intent?.value === "wanted" ? noPrices : priceItems(read.items, money);
  const items = priced(built, prices);
  const negotiable = readNegotiable(masked);
  const postage = readPostage(masked, money);
  const { span, doubt } = placing(whole, words);
  const head = [
    ...(intent ? [span("intent", intent.start, intent.end)] : []),
    ...(prices.askingAt ? [span("asking", prices.askingAt.start, prices.askingAt.end)] : []),
    ...(negotiable ? [span("negotiable", negotiable.start, negotiable.end)] : []),
    ...(postage ? [span("postage", postage.start, postage.end)] : []),
  ];
  const ofItems = items.flatMap(({ at }, place) =>
    at.map(({ field, start, end }) => span(`items.${place}.${field}`, start, end)),
  );
  const doubtsOfItems = items.flatMap(({ doubts }, place) =>
    doubts.map((one) => doubt(one, `items.${place}.`)),
  );
  return {
    intent: intent?.value ?? null,
    asking: prices.asking,
    negotiable: negotiable?.value ?? null,
    postage: postage?.value ?? null,
    items: items.map(({ item }) => item),
    spans: [...head, ...ofItems],
    doubts: [
      ...(intent?.value === "wanted" ? [] : moneyDoubts(money, prices)).map((one) => doubt(one)),
      ...doubtsOfItems,
    ],
  };
}
