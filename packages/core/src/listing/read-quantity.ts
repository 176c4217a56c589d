import type { Stretch } from "./clauses.ts";

/** How many of a thing, and the words that say it. */
export interface QuantityFound {
  readonly value: number;
  readonly start: number;
  readonly end: number;
  /** Whether the number stands inside the noun phrase and would otherwise be a club's: "job lot of 5 wood heads". */
  readonly insideNoun: boolean;
}

const numberWords: ReadonlyMap<string, number> = new Map(
  Object.entries({
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    seven: 7,
    eight: 8,
    nine: 9,
    ten: 10,
    eleven: 11,
    twelve: 12,
    thirteen: 13,
    "a dozen": 12,
    zwei: 2,
    drei: 3,
    vier: 4,
    funf: 5,
    deux: 2,
    trois: 3,
    quatre: 4,
    dos: 2,
    tres: 3,
    cuatro: 4,
    cinco: 5,
    pair: 2,
    couple: 2,
    brace: 2,
    paar: 2,
    paire: 2,
    par: 2,
    trio: 3,
    dozen: 12,
    "half a dozen": 6,
    "half dozen": 6,
  }),
);
const words = [...numberWords.keys()].sort((one, other) => other.length - one.length).join("|");

/** Words that name a thing, and whether they name it in the plural. */
export interface Counted extends Stretch {
  readonly plural: boolean;
}

/** Words that may stand between a count and its thing, names being blanks already. */
const adjectives =
  "(?:(?:0?\\.3\\d\\d|taper|parallel|tips?|of|x|no\\.?|off|brand|new|used|loose|spare|old|assorted|mixed|various|identical|matching|corded|black|white|red|blue|undersize|standard|midsize|jumbo|unused|genuine|graphite|steel|stiff|regular|senior|ladies|rh|lh|right|left|hand|handed|golf|different|random|mint|good|my|wood|complete|decent|bare|pulled|uncut|oem|tour|more|the|these|lightly|unbranded|unnamed|no[ -]?name|unlabelled) ?|-|, ?)*";

const times = new RegExp(
  `(?<![\\p{L}\\d.,£€$/-])(\\d{1,3}|${words}) ?(?:x|no\\.?|off|nos\\.?|pcs|pc|st\\.?k\\.?|stuck|pieces|units|pieces of|of)(?![\\p{L}\\d]) *(?:(?!heads?|shafts?|grips?|covers?|adapters?|with|and|from|driver|wood|iron)\\p{L}{4,} )?${adjectives} *$`,
  "u",
);
const counted = new RegExp(
  `(?<![\\p{L}\\d.,£€$/#°-]|no\\.? |model )(\\d{1,3}|${words}) +(?:a )?${adjectives} *$`,
  "u",
);
const bracketed = /^ ?\((\d{1,3})\) (?:[\p{L}]+ ){0,3} *$/u;
const named = new RegExp(`(?<![\\p{L}])(?:an? )?(${words})(?: of)? *${adjectives} *$`, "u");
const lotOf =
  /(?:job ?lot|lot|set|bundle|box|collection|pile|pack|bag|selection|batch|bunch|load)(?: of)?:? *$/u;
const assorted =
  /^[ ,(-]{0,3}(?:mixed|assorted|various|different|all different|random|unbranded)(?![\p{L}])/u;
const lotCount = new RegExp(
  `(?:job ?lot|lot|set|bundle|box|collection|pile|pack|bag|selection|batch)(?: of)? ?:?(\\d{1,3}|${words}) +${adjectives} *$`,
  "u",
);
const later =
  /^(?: ?[,(:-])? ?(?:(\d{1,2}) x (?=\p{L})|[^.,;:\n\d(]{0,30}(?<!\p{L})x ?(\d{1,3})(?!\d|[."°]\d|["°/])|\((\d{1,2})(?: ?(?:off|x|no\.?|of them))?\)|(\d{1,3}) ?(?:off|no\.|pcs|stk)(?![\p{L}]))/u;
const laterSaid =
  /(?<![\p{L}\d.,£€$/])(?:(?:qty|quantity|anzahl|menge|quantite|cantidad)(?: of)?[ :=]{1,2}(\d{1,3})|(\d{1,3}|two|three|four|five|six|eight|ten|twelve) (?:of them|for sale|to sell|in total)|(?:bag|box|set|pack|lot|bundle|job ?lot|sleeve) of (\d{1,3}|two|three|four|five|six|seven|eight|nine|ten|twelve|thirteen|a dozen)(?! (?:driver|wood|iron|head|shaft|grip|different|mixed|assorted))|(?<=[,;] ?)(?:a )?(pair)(?=[ ,.;]|$)|(?:have|got) (\d{1,3}|two|three|four|five|six|seven|eight|nine|ten) (?:of (?:these|them)|but|altogether|in total))(?![\p{L}])/u;

const countOf = (said: string): number => numberWords.get(said) ?? Number(said);

const plausible = (value: number) => Number.isInteger(value) && value >= 2 && value <= 999;

/** The count said before a noun phrase, from `from` on. */
function before(plain: string, phrase: Counted, from: number): QuantityFound | null {
  const ahead = plain.slice(Math.max(from, phrase.start - 70), phrase.start);
  const line = ahead.slice(ahead.lastIndexOf("\n") + 1);
  const inNoun = /^(\d{1,2}) /u.exec(plain.slice(phrase.start, phrase.end));
  if (
    inNoun?.[1] &&
    phrase.plural &&
    (lotOf.test(line) || assorted.test(plain.slice(phrase.end, phrase.end + 20)))
  ) {
    const value = Number(inNoun[1]);
    if (plausible(value))
      return { value, start: phrase.start, end: phrase.start + inNoun[1].length, insideNoun: true };
  }
  // "2 hybrid heads", "3 hybrids": a number before things of one type counts them, where it is no number of such a club.
  const several = /^(?:(2) \p{L}+|([2-9]) (?:hybrids|rescues)) (?:heads|shafts|\p{L}*covers)$/u.exec(
    plain.slice(phrase.start, phrase.end),
  );
  const count = several?.[1] ?? several?.[2];
  if (count && phrase.plural)
    return { value: Number(count), start: phrase.start, end: phrase.start + count.length, insideNoun: true };
  // "Six hybrids" are six, where "six hybrid" is one.
  const wordInNoun = /^(two|three|four|five|six|seven|eight|nine) /u.exec(
    plain.slice(phrase.start, phrase.end),
  );
  if (wordInNoun?.[1] && phrase.plural)
    return {
      value: countOf(wordInNoun[1]),
      start: phrase.start,
      end: phrase.start + wordInNoun[1].length,
      insideNoun: true,
    };
  const patterns = [lotCount, times, bracketed, named, ...(phrase.plural ? [counted] : [])];
  for (const pattern of patterns) {
    const match = pattern.exec(line);
    const value = match?.[1] === undefined ? Number.NaN : countOf(match[1]);
    if (!match?.[1] || !plausible(value)) continue;
    const start = phrase.start - line.length + match.index + match[0].indexOf(match[1]);
    return { value, start, end: start + match[1].length, insideNoun: false };
  }
  return null;
}

/** The count said after a noun phrase, up to `to`. */
function after(plain: string, phrase: Counted, to: number): QuantityFound | null {
  const rest = plain.slice(phrase.end, Math.min(to, phrase.end + 160));
  const close = later.exec(rest.trimEnd() === "" ? "" : rest.replace(/^ +/u, " "));
  const shift = close ? rest.length - rest.replace(/^ +/u, " ").length : 0;
  const match = close ?? laterSaid.exec(rest);
  const said = match?.slice(1).find((group) => group !== undefined);
  if (!match || said === undefined || !plausible(countOf(said))) return null;
  const start = phrase.end + shift + match.index + match[0].lastIndexOf(said);
  return { value: countOf(said), start, end: start + said.length, insideNoun: false };
}

/** How many of the thing that a noun phrase names, where the words around it say; `from` and `to` are where others' words begin. */
export function readQuantity(plain: string, phrase: Counted, from: number, to: number): QuantityFound | null {
  return before(plain, phrase, from) ?? after(plain, phrase, to);
}
