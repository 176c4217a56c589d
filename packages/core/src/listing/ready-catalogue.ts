import type { CatalogueModel, ItemKind } from "./catalogue.ts";
import { isTradeNoun } from "./trade-words.ts";
import { prepareWords } from "./words.ts";

/** What a name of the catalogue may mean: some of its models, a maker, an adapter family. */
export interface NameMeaning {
  readonly models: readonly CatalogueModel[];
  /** The maker it names, alone or before a model. */
  readonly maker: string | null;
  readonly family: string | null;
  /** How many pieces the name has where it is longest. */
  readonly pieces: number;
}

/** A catalogue made ready for finding its names in words. */
export interface ReadyCatalogue {
  readonly names: ReadonlyMap<string, NameMeaning>;
  readonly piecesMax: number;
  /** Every word of every name, to know a right word from a wrongly spelt one. */
  readonly vocabulary: ReadonlySet<string>;
  /** Words of the vocabulary long enough to be misspelt, and the trigrams by which they are found. */
  readonly spellings: readonly string[];
  readonly trigrams: ReadonlyMap<string, readonly number[]>;
  /** The kinds of thing that each maker makes. */
  readonly makerKinds: ReadonlyMap<string, ReadonlySet<ItemKind>>;
}

/** One run of letters or of digits; names are compared piece by piece, so that "Skerrick460" is "Skerrick 460". */
export interface Piece {
  readonly plain: string;
  readonly start: number;
  readonly end: number;
}

const romanNumerals: ReadonlyMap<string, string> = new Map([
  ["ii", "2"],
  ["iii", "3"],
  ["iv", "4"],
]);

/** The pieces of prepared text; a Roman numeral is its number, and "mk" or "mark" before a number says nothing. */
export function piecesOf(plain: string): Piece[] {
  return Array.from(plain.matchAll(/\p{L}+|\d+(?:[.,]\d+)?/gu), ({ 0: found, index }) => ({
    plain: romanNumerals.get(found) ?? found,
    start: index,
    end: index + found.length,
  }));
}

const keyOf = (name: string) => piecesOf(prepareWords(name).plain).map(({ plain }) => plain);

interface Draft {
  models: CatalogueModel[];
  maker: string | null;
  family: string | null;
  pieces: number;
}

/** The trigrams of a word, with its ends marked. */
export function trigramsOf(word: string): string[] {
  const marked = `^${word}$`;
  return Array.from({ length: Math.max(0, marked.length - 2) }, (_, at) => marked.slice(at, at + 3));
}

const longEnough = (word: string) => word.length >= 4 && /^\p{L}+$/u.test(word);

function trigramIndex(spellings: readonly string[]): Map<string, number[]> {
  const trigrams = new Map<string, number[]>();
  spellings.forEach((word, at) => {
    for (const trigram of new Set(trigramsOf(word))) {
      const postings = trigrams.get(trigram);
      if (postings) postings.push(at);
      else trigrams.set(trigram, [at]);
    }
  });
  return trigrams;
}

/** By maker, the one-word aliases of one-word models: "Ombrell" for "Ombrel". */
function otherSpellings(models: readonly CatalogueModel[]): Map<string, Map<string, Set<string>>> {
  const spellings = new Map<string, Map<string, Set<string>>>();
  for (const { maker, model, aliases } of models) {
    const [word, ...more] = keyOf(model);
    const single = (aliases ?? [])
      .map(keyOf)
      .filter((name) => name.length === 1 && /^\p{L}{4,}$/u.test(name[0] ?? ""));
    if (word === undefined || more.length > 0 || single.length === 0) continue;
    const ofMaker = spellings.get(maker) ?? new Map<string, Set<string>>();
    spellings.set(
      maker,
      ofMaker.set(word, new Set([...(ofMaker.get(word) ?? []), ...single.map(([other = ""]) => other)])),
    );
  }
  return spellings;
}

/** Names, and the same names with their first word spelt as sellers spell it elsewhere: "Ombrell 2" as "Ombrel 2". */
function withSpellings(
  names: readonly string[][],
  spellings: ReadonlyMap<string, ReadonlySet<string>> | undefined,
): string[][] {
  const others = names.flatMap(([word = "", ...more]) =>
    more.length === 0 ? [] : [...(spellings?.get(word) ?? [])].map((spelt) => [spelt, ...more]),
  );
  return [...names, ...others];
}

/** Makes a catalogue ready once, for reading many listings. A name may belong to several models; which is meant, the words decide. */
export function readyCatalogue(models: readonly CatalogueModel[]): ReadyCatalogue {
  const names = new Map<string, Draft>();
  const spellingsOf = otherSpellings(models);
  const makerKinds = new Map<string, Set<ItemKind>>();
  const add = (pieces: readonly string[]): Draft | null => {
    if (pieces.length === 0) return null;
    const key = pieces.join("");
    const draft = names.get(key) ?? { models: [], maker: null, family: null, pieces: pieces.length };
    draft.pieces = Math.max(draft.pieces, pieces.length);
    names.set(key, draft);
    return draft;
  };
  const vocabulary = new Set<string>();
  for (const model of models) {
    const maker = keyOf(model.maker);
    const madeBy = add(maker);
    if (madeBy) madeBy.maker = model.maker;
    const own = withSpellings(
      [model.model, ...(model.aliases ?? [])].map(keyOf),
      spellingsOf.get(model.maker),
    );
    for (const pieces of own.flatMap((name) => [name, [...maker, ...name]])) {
      const draft = add(pieces);
      if (draft && pieces.length > maker.length && pieces.join("").startsWith(maker.join("")))
        draft.maker = model.maker;
      if (draft && !draft.models.includes(model)) draft.models.push(model);
      const family = model.adapterFamily;
      const says = family && (model.kind === "adapter" || pieces.join("").includes(keyOf(family).join("")));
      if (draft && says) draft.family = family;
    }
    // "Ombrel cover" is spoken of as "Ombrel" where the words around it say that it is a cover.
    if (model.kind === "cover" || model.kind === "wrench" || model.kind === "adapter")
      for (const pieces of own.map((name) => name.filter((word) => !isTradeNoun(word)))) {
        const draft = add(pieces);
        if (draft && !draft.models.includes(model)) draft.models.push(model);
        if (draft && model.kind === "adapter" && model.adapterFamily) draft.family = model.adapterFamily;
      }
    if (model.adapterFamily) {
      const draft = add(keyOf(model.adapterFamily));
      if (draft) draft.family = model.adapterFamily;
    }
    makerKinds.set(model.maker, (makerKinds.get(model.maker) ?? new Set()).add(model.kind));
    for (const piece of [...maker, ...own.flat(), ...keyOf(model.adapterFamily ?? "")]) vocabulary.add(piece);
  }
  const spellings = [...vocabulary].filter(longEnough);
  return {
    names,
    piecesMax: Math.min(
      12,
      [...names.values()].reduce((most, { pieces }) => Math.max(most, pieces), 0),
    ),
    vocabulary,
    spellings,
    trigrams: trigramIndex(spellings),
    makerKinds,
  };
}
