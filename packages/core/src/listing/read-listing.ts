import type { BuiltItem } from "./build-item.ts";
import { buildItems, type Read } from "./build-items.ts";
import type { CatalogueModel } from "./catalogue.ts";
import { copiedNames } from "./copies.ts";
import { factReaders } from "./fact-readers.ts";
import { findNames, type NameFound } from "./find-model.ts";
import { foreignStretches } from "./foreign-stretches.ts";
import { readIronSets } from "./iron-sets.ts";
import { findNounPhrases, type NounPhrase } from "./item-nouns.ts";
import type { ItemsRead } from "./items-state.ts";
import type { Doubt, Listing } from "./listing.ts";
import type { Mention } from "./mention.ts";
import { isSpokenFor } from "./name-evidence.ts";
import { familyMentions, shortYears } from "./name-mentions.ts";
import { placing } from "./place-spans.ts";
import { type Prices, priceItems } from "./price-items.ts";
import { readFallbacks } from "./read-fallbacks.ts";
import { readIntent } from "./read-intent.ts";
import { readItems } from "./read-items.ts";
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
  const copied = copiedNames(words.plain, names);
  const source: Read = {
    words,
    masked: unpriced,
    names,
    money,
    intent: said?.value ?? null,
    foreign,
    read,
    copied,
  };
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
