import Fuse from "fuse.js";
import type { ClubType } from "../parts/part.ts";
import { spellingDistance } from "./nearest-spelling.ts";
import {
  type NameMeaning,
  type Piece,
  piecesOf,
  type ReadyCatalogue,
  trigramsOf,
} from "./ready-catalogue.ts";
import { isOrdinaryWord } from "./trade-words.ts";
import type { Words } from "./words.ts";

/** A name of the catalogue where it stands in the words, with all it may mean. */
export interface NameFound extends NameMeaning {
  /** Where the maker's part of the name ends and the model's begins; both the start where it names no maker. */
  readonly makerEnd: number;
  readonly modelStart: number;
  readonly start: number;
  readonly end: number;
  /** Where the letters and digits of the name stand, for masking. */
  readonly parts: readonly Piece[];
  /** Whether the name could be an everyday word, so that something near it has to speak for it. */
  readonly ordinary: boolean;
}

/** How many wrong letters a word of some length may have and still be known. */
const wrongLettersMost = (length: number) => (length < 5 ? 0 : length < 8 ? 1 : 2);

/** The words of the catalogue that share the most trigrams with a word, best first, few enough to look at one by one. */
function shortlist(word: string, { trigrams, spellings }: ReadyCatalogue): string[] {
  const shared = new Map<number, number>();
  for (const trigram of trigramsOf(word))
    for (const at of trigrams.get(trigram) ?? []) shared.set(at, (shared.get(at) ?? 0) + 1);
  const enough = Math.max(1, Math.floor(word.length / 4));
  return [...shared]
    .filter(([, count]) => count >= enough)
    .sort(([one, countOfOne], [other, countOfOther]) => countOfOther - countOfOne || one - other)
    .slice(0, 24)
    .map(([at]) => spellings[at] as string);
}

/** The word of the catalogue that a misspelt word must have meant, or null when none or several are as near. */
function meantWord(word: string, ready: ReadyCatalogue): string | null {
  const most = wrongLettersMost(word.length);
  if (most === 0 || !/^\p{L}+$/u.test(word)) return null;
  const ranked = shortlist(word, ready)
    .map((spelling) => ({ spelling, distance: spellingDistance(word, spelling, most) }))
    .filter(({ distance, spelling }) => distance <= Math.min(most, wrongLettersMost(spelling.length)))
    .map(({ spelling, distance }) => {
      const { score } = Fuse.match(word.slice(0, 32), spelling, { threshold: 0.6, ignoreLocation: true });
      return { spelling, rank: distance + (score ?? 1) / 10 };
    })
    .sort((one, other) => one.rank - other.rank);
  const [best, next] = ranked;
  if (!best || (next && next.rank === best.rank)) return null;
  return best.spelling;
}

/** The pieces as they were meant: a misspelt word of the catalogue is spelt as there. */
function respelt(pieces: readonly Piece[], ready: ReadyCatalogue): Piece[] {
  return pieces.map((piece) => {
    if (ready.vocabulary.has(piece.plain) || ready.names.has(piece.plain) || isOrdinaryWord(piece.plain))
      return piece;
    const singular = piece.plain.replace(/'?s$/u, "");
    const meant =
      ready.vocabulary.has(singular) && singular.length > 4 ? singular : meantWord(piece.plain, ready);
    return meant === null ? piece : { ...piece, plain: meant };
  });
}

const joins = (between: string) => between.length <= 3 && !/[\n,;:+&()]/u.test(between);

/** Whether the number that ends a name belongs to what follows instead: "Fenwrack 10°", "Skerrick 3 wood". */
const startsMeasure = /^ ?-?(?:deg|grad|degr|°|\*|"|in\b|inch|gr?\b|gram|cm\b|mm\b|x\b)|^[.,]\d/u;
const startsClub: readonly (readonly [RegExp, ClubType])[] = [
  [/^[ -]?(?:wood|w\b|fairway|metal|fw|bois|holz|er holz)/u, "fairway"],
  [/^[ -]?(?:hybrid|h\b|hy\b|hyb|rescue|utility)/u, "hybrid"],
  [/^[ -]?(?:iron\b|i\b|eisen|er eisen)/u, "iron"],
];

interface Ending {
  readonly last: Piece;
  readonly shorter: NameMeaning;
  readonly longer: NameMeaning;
}

const hasType = ({ models }: NameMeaning, type: ClubType) => models.some(({ clubType }) => clubType === type);

/** Whether the last number of the longer of two names is a loft or a club's number rather than its own. */
function endsInOthersNumber(plain: string, { last, shorter, longer }: Ending): boolean {
  const written = plain.slice(last.start, last.end);
  if (!/^\d/u.test(written)) return false;
  const after = plain.slice(last.end, last.end + 10);
  if (startsMeasure.test(after)) return true;
  const type = startsClub.find(([pattern]) => pattern.test(after))?.[1];
  if (!type || Number(written) > 9) return false;
  return hasType(shorter, type) || !hasType(longer, type);
}

interface Window {
  readonly pieces: readonly Piece[];
  readonly plain: string;
  readonly ready: ReadyCatalogue;
}

/** One short or everyday word, with no number to mark it as a name. */
const isOrdinaryName = (parts: readonly Piece[]) =>
  parts.length === 1 && parts.every(({ plain }) => isOrdinaryWord(plain) || plain.length <= 4);

/** Where the maker's part of a name ends and the model's begins. */
function makerPart(parts: readonly Piece[], maker: string | null, ready: ReadyCatalogue) {
  const start = parts[0]?.start ?? 0;
  let key = "";
  for (const [at, part] of maker === null ? [] : parts.entries()) {
    key += part.plain;
    if (ready.names.get(key)?.maker === maker)
      return { makerEnd: part.end, modelStart: parts[at + 1]?.start ?? start };
  }
  return { makerEnd: start, modelStart: start };
}

/** The longest name that starts at a piece. */
function nameAt({ pieces, plain, ready }: Window, at: number): NameFound | null {
  let key = "";
  let best: NameFound | null = null;
  for (let count = 1; count <= ready.piecesMax && at + count <= pieces.length; count += 1) {
    const last = pieces[at + count - 1] as Piece;
    const previous = pieces[at + count - 2];
    if (count > 1 && !joins(plain.slice((previous as Piece).end, last.start))) break;
    key += last.plain;
    const meaning = ready.names.get(key);
    if (!meaning) continue;
    if (best && endsInOthersNumber(plain, { last, shorter: best, longer: meaning })) continue;
    const parts = pieces.slice(at, at + count);
    const first = pieces[at] as Piece;
    const ordinary = isOrdinaryName(parts);
    best = {
      ...meaning,
      start: first.start,
      end: last.end,
      parts,
      ordinary,
      ...makerPart(parts, meaning.maker, ready),
    };
  }
  return best;
}

/** Every name of the catalogue in the words, the longest first at each place, none over another. */
export function findNames(words: Words, ready: ReadyCatalogue): NameFound[] {
  if (ready.names.size === 0) return [];
  const pieces = respelt(piecesOf(words.plain), ready);
  const window = { pieces, plain: words.plain, ready };
  const found: NameFound[] = [];
  for (let at = 0; at < pieces.length; ) {
    const name = nameAt(window, at);
    if (name) found.push(name);
    at += name ? name.parts.length : 1;
  }
  return found;
}
