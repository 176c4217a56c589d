import type { ItemKind } from "./catalogue.ts";
import { overlaps, type Stretch } from "./clauses.ts";
import type { NameFound } from "./find-model.ts";
import { isHeadLike } from "./item-draft.ts";
import type { NounPhrase } from "./item-nouns.ts";
import type { MoneyFound } from "./read-money.ts";

/** What the words say, as far as the items need it. */
export interface ItemSource {
  /** The prepared words with the names of the catalogue blanked out. */
  readonly plain: string;
  /** The same words with "¤" where a sum of money stands. */
  readonly marked: string;
  /** The same words with the names as letters, where it matters that a word stands there. */
  readonly solid: string;
  readonly phrases: readonly NounPhrase[];
  readonly names: readonly NameFound[];
  readonly money: readonly MoneyFound[];
  /** Stretches that are about things which are not offered. */
  readonly foreign: readonly Stretch[];
  /** The kinds of thing that each maker makes. */
  readonly makerKinds: ReadonlyMap<string, ReadonlySet<ItemKind>>;
}

/** How the words around an anchor tie it to what went before. */
export interface AnchorCues {
  /** "no shaft", "shaft not included". */
  readonly denied: boolean;
  /** "from a driver", "to fit the Ombrel": what the item before it fits or comes from. */
  readonly foreign: boolean;
  /** "with a shaft", "fitted with". */
  readonly joined: boolean;
  /** "and", "+", a comma, a new line: the next of a list. */
  readonly listed: boolean;
  /** "spare", "another". */
  readonly another: boolean;
  /** "1)", "2)" at the start of the line. */
  readonly numbered: boolean;
  readonly lineStart: boolean;
  /** "only", "just the", "loose". */
  readonly only: boolean;
  /** A price of its own follows before the next anchor. */
  readonly priced: boolean;
  /** "shaft is", "grip:", "head weight": a word about a part of the thing. */
  readonly described: boolean;
  /** In brackets by itself: "headcover (driver)". */
  readonly bracketed: boolean;
  /** Right behind a count: "1 wrench". */
  readonly counted: boolean;
  /** "… included". */
  readonly included: boolean;
  /** "Shaft:". */
  readonly labelled: boolean;
  /** "In the head", "the head": a part spoken of. */
  readonly within: boolean;
  readonly the: boolean;
  /** Alone between commas. */
  readonly between: boolean;
  /** "From a driver": what it came off, which need not be what it is for. */
  readonly from: boolean;
  /** "Complete driver". */
  readonly complete: boolean;
  /** A price right behind it. */
  readonly pricedClose: boolean;
}

/** A noun phrase or a model's name, as they follow one another in the words. */
export interface Anchor extends Stretch {
  readonly phrase: NounPhrase | null;
  readonly name: NameFound | null;
  readonly kind: ItemKind;
  readonly cues: AnchorCues;
}

const articles =
  "(?:(?:the|an?|my|any|all|your|his|her|our|old|other|most|some|new|newer|these|those|this|that|same|of|various|older|modern|standard|current|previous|matching|original|der|die|das|den|dem|einen?|einem|einer|meine[nrm]?|mon|ma|mes|les?|la|un|una|une|los|las|mi|stiff|regular|broken|left|right|hand|handed|rh|lh) ){0,4}";
const foreignJoin = new RegExp(
  `(?<![\\p{L}])(?:(?<!¤ ?|looking |wanted |searching |search |hunting |\\d |asking |market |selling |quid |euros? |each |both |p&p |postage |shipping |post )for|from|off(?: of)?|out of|to (?:fit|suit)|fits?|suits?|suiting|suitable for|fitting|into|pulled(?: from| off| out of)?|removed from|taken (?:from|off|out of)|came (?:with|off|from|out of|on|in)|was (?:in|on)|belongs to|used (?:in|on|with)|compatible with|to go (?:in|on|with)|works (?:in|with|on)|goes (?:in|on)|matches|fur|fuer|passend (?:fur|zu|auf)|passt (?:fur|in|auf|zu|an)|in (?=my |an? |the |our |his )|aus(?: dem| einem| meinem)?|vom|von|pour|compatible|provient (?:de|d'un)|para|compatible con|de un|issue? d'un|d'un)[ :]{0,2}${articles}(?:[\\p{L}]{0,14} )?$`,
  "u",
);
const withJoin =
  /(?<![\p{L}])(?:with|w\/|w|comes? with|complete with|c\/w|fitted(?: with)?|mit|avec|con|has|on an?|in an?)[ .:]{0,2}[^\n;.,]{0,40}$/u;
const listJoin =
  /(?:(?<![\p{L}])(?:and|plus|und|et|y|also|as well as)|[&+,;/|\n]|[.!] |\n ?[-*•] ?)[ :]{0,2}(?:(?:an?|one|the|another|a spare|some|my|ein(?:e|en)?|une?|una?|loose|old|\d{1,3} ?x?|two|three|four|pair of|right|left|hand(?:ed)?|rh|lh|also|selling|have|got|there is|is|lefty|mens|ladies|spare|used|new) ?)*$/u;
const negated =
  /(?<![\p{L}])(?:no|not|without|w\/o|minus|less|missing|lacks?|excluding|excl|needs(?: an?)?|require[sd]?(?: an?)?|ohne|uten|utan|zonder|senza|geen|ingen|kein(?:e|en)?|sans|pas d[e']|sin|wanting an?|just needs an?)[ .:]{0,2}(?:the |an? |any |its |original |new |of |matching )*(?:(?:shaft|adapter|sleeve|grip|head|cover|headcover|wrench|tool|schaft|manche|varilla)s?(?:,| and| or|\/| &| oder| ni| ou|\/) ?)*$/u;
const deniedAfter =
  /^ ?(?:is |are |was |has been |were |:|-)? ?(?:(?:\p{L}+ ){0,4}not (?:be )?(?:included|inc|incl|supplied|for sale|part of|in the sale)|(?:only )?for (?:display|illustration|photo|demo|picture)|shown (?:only )?for|no longer|missing|removed|gone|lost|astray|nah|nope|no(?=[ ,.;\n)]|$)|non (?:fourni|compris|inclus)e?s?|fehlt|fehlen|weg(?!\p{L})|ontbreekt|saknas|mangler|long gone|snapped|broken off|sold|excluded|sold separately|nicht dabei|non compris|no incluid\p{L})/u;
const another =
  /(?<![\p{L}])(?:spare|extra|additional|second|another|other|also (?:a|an|have|selling|for sale|got)|separate(?:ly)?|loose|individual|a further|2nd)[ :]{0,2}(?:\p{L}+ ){0,2}$/u;
const numbered =
  /(?:^|\n) ?(?:\(?\d{1,2}[).:](?!\d)|[a-f]\)|item \d{1,2}:?|lot \d{1,2}:?|#\d{1,2}[ :]|no\.? ?\d{1,2}[:)]) ?[^\n]{0,60}$/u;
const bullet = /^ ?[-*•·]/u;
const bulletAlone = /^ ?[-*•·] ?$/u;
const onlyAfter = /^[ ,(:-]{0,3}(?:only|alone|just|no shaft|\(no shaft|solo|seule?|nur|allein)(?![\p{L}])/u;
const onlyBefore =
  /(?:just (?:the |a )?|only (?:the |a )?|loose |bare |nur (?:der |den )?|seulement la |solo (?:la )?| - ?)$/u;

const described =
  /^(?:s)? ?(?::|=|is |are |was |were |looks? |has |have |in (?:good|great|excellent|very|fair|nice|decent|perfect|mint|superb|used)|and (?:grip|shaft|face|crown|sole) (?:is|are|in)|condition|shows?|needs?|could|feels?|plays|measures|length|flex|weight|been|a bit|bit |still|worn|perished|slippy|good|excellent|decent|fine|ok|crack|dent|damage|scratch|mark|chip)/u;

const kindOfName = (name: NameFound): ItemKind | null => {
  const kinds = new Set(name.models.map(({ kind }) => kind));
  const order = ["head", "club", "shaft", "adapter", "grip", "wrench", "cover"] as const;
  return order.find((kind) => kinds.has(kind)) ?? null;
};

const isPriced = (money: readonly MoneyFound[], from: number, to: number) =>
  money.some(({ role, start }) => (role === "asking" || role === "each") && start >= from && start < to);

/** The end of the line, or of a few lines' worth of words, in which a price would be the anchor's own. */
const priceReach = (plain: string, end: number, next: number) => {
  const line = plain.indexOf("\n", end);
  return Math.min(next, line < 0 ? plain.length : line, end + 110);
};

/** Names are long blanks; a cue looks over them. */
const squeezed = (words: string) => words.replace(/ {2,}/gu, " ");

/** Whether nothing else is named before a place in its line. */
const leadsLine = (plain: string, previous: number, start: number) =>
  previous === 0 || plain.slice(previous, start).includes("\n");

/** The line of the thing named before, from its start. */
const lineAt = (plain: string, previous: number) => {
  const from = plain.lastIndexOf("\n", Math.max(0, previous - 1)) + 1;
  return plain.slice(from, previous);
};

/** In a list with a mark before each line, a noun with a name or a type is an entry; "headcover" or "shaft: stiff" is a detail. */
const isOwnEntry = (phrase: NounPhrase | null, name: NameFound | null, after: string) =>
  phrase !== null &&
  (name !== null || phrase.type !== null) &&
  !/^ ?(?::|is |included|inc(?![\p{L}]))/u.test(after);

function cuesOf(
  { plain, marked, money }: ItemSource,
  { start, end, phrase, name }: Bare,
  previous: number,
  next: number,
): AnchorCues {
  const nounEnd = phrase?.end ?? end;
  const before = squeezed(marked.slice(Math.max(0, start - 140), start));
  const after = squeezed(marked.slice(end, end + 60));
  const line = before.slice(before.lastIndexOf("\n") + 1);
  const sentence = line.slice(Math.max(line.lastIndexOf(". "), line.lastIndexOf("; ")) + 1);
  const lineStart = before.includes("\n") || start <= 140;
  return {
    denied: negated.test(sentence) || deniedAfter.test(after),
    foreign: foreignJoin.test(line) && !/(?:lot|set|all|going|irons|them) from $/u.test(line),
    from: !/(?<![\p{L}]|not )(?:for|to (?:fit|suit)|suits?|fur|pour|para|passend)[ :]{0,2}(?:\p{L}+ ){0,5}$/u.test(
      line,
    ),
    within: /(?<![\p{L}])(?:in|on|inside|to|of|the|its|his|my) (?:the )?$/u.test(line),
    the: /(?<![\p{L}])(?:the|this|that|der|die|das|le|la|les|el|los|las|de|het) $/u.test(line),
    between: /[,;|/] ?$/u.test(line) && /^ ?(?:[,;|/.]|$)/u.test(after),
    joined: withJoin.test(sentence),
    listed: listJoin.test(before),
    another: another.test(sentence),
    numbered:
      lineStart &&
      leadsLine(plain, previous, start) &&
      (numbered.test(line) ||
        (bulletAlone.test(line) && bullet.test(lineAt(plain, previous)) && isOwnEntry(phrase, name, after))),
    lineStart: lineStart && /^ ?[-*•>·~o]? ?(?:[\p{L}\d]+ ?){0,3}$/u.test(line),
    only: onlyAfter.test(after) || onlyBefore.test(line),
    priced: isPriced(money, end, priceReach(plain, end, next)),
    described: described.test(after),
    included:
      /^(?: \p{L}+){0,2} ?(?:is |are |also )?(?:included|inc|incl|with it|with them|thrown in|yes|supplied|on it|fitted|attached|installed|on(?= ?[,.;)]))(?![\p{L}])/u.test(
        after,
      ),
    labelled: /^ ?:/u.test(plain.slice(nounEnd, nounEnd + 2)),
    complete:
      /(?:complete|whole|assembled|fully built|ready to play|komplett\p{L}*|complet|completo) (?:golf )?$/u.test(
        before,
      ),
    pricedClose: isPriced(money, end, end + 5),
    bracketed: /[(] ?$/u.test(line) && /^ ?[)]/u.test(after),
    counted: /(?:^|[,;:+&\n(-]|and|plus|und|et|y) ?(?:[1-9]|[12]\d|one) ?x? $/u.test(before),
  };
}

/** Whether a name after an item's own noun is of what the item fits or comes from. */
export function isForeignAt(plain: string, start: number, first: number): boolean {
  if (start <= first) return false;
  const before = squeezed(plain.slice(Math.max(0, start - 140), start));
  return foreignJoin.test(before.slice(before.lastIndexOf("\n") + 1));
}

interface Bare extends Stretch {
  readonly phrase: NounPhrase | null;
  readonly name: NameFound | null;
  readonly kind: ItemKind;
}

/** The one kind of thing that a maker makes, if it makes but one: then its name alone may stand for such a thing. */
const kindOfMaker = ({ maker }: NameFound, kinds: ItemSource["makerKinds"]): ItemKind | null => {
  const made = new Set([...(maker === null ? [] : (kinds.get(maker) ?? []))]);
  return made.size === 1 ? ([...made][0] as ItemKind) : null;
};

const fitsPhrase = (name: NameFound, phrase: NounPhrase) =>
  name.models.length === 0 ||
  name.models.some(
    ({ kind, clubType }) =>
      (isHeadLike(kind) ? isHeadLike(phrase.kind) : kind === phrase.kind) &&
      (!clubType || !phrase.type || clubType === phrase.type),
  );

/** Whether only a few words, none that parts two things, stand between a name and a noun: "Ombrel 10.5 driver". */
const close = (plain: string, from: number, to: number) =>
  to >= from &&
  /^(?:(?!(?:and|und|et|y|plus|with|from|for|off) )[^,;:\n()|•+&!]|(?<=\d),(?=\d)){0,28}$/u.test(
    plain.slice(from, to).replace(/ {2,}/gu, " "),
  );

/** Each noun with the name that belongs to it: the one inside it, straight before it, or straight after it. */
function pairNames(plain: string, phrases: readonly NounPhrase[], names: readonly NameFound[]): Bare[] {
  const taken = new Set<NameFound>();
  const nouns = phrases.map((phrase, at): Bare => {
    const previousEnd = phrases[at - 1]?.end ?? 0;
    const free = names.filter((name) => !taken.has(name) && fitsPhrase(name, phrase));
    const inside = free.filter((name) => overlaps(name, phrase));
    const before = free.filter(
      (name) => name.start >= previousEnd && name.end <= phrase.start && close(plain, name.end, phrase.start),
    );
    const name = inside[0] ?? before.findLast(({ models }) => models.length > 0) ?? null;
    if (name) taken.add(name);
    const { start } = name && name.start < phrase.start ? name : phrase;
    return { start, end: Math.max(phrase.end, name?.end ?? 0), phrase, name, kind: phrase.kind };
  });
  return nouns.map((noun, at): Bare => {
    if (noun.name || !noun.phrase) return noun;
    const next = nouns[at + 1]?.start ?? plain.length;
    const after = names.find(
      (name) =>
        !taken.has(name) &&
        name.models.length > 0 &&
        name.start >= noun.end &&
        name.end <= next &&
        fitsPhrase(name, noun.phrase as NounPhrase) &&
        (noun.phrase?.plural ? /^[ -]{0,3}(?:by )?$/u : /^[ :-]{0,3}(?:(?:is|the|an?|by|from) ){0,2}$/u).test(
          plain.slice(noun.end, name.start).replace(/ {2,}/gu, " "),
        ),
    );
    if (!after) return noun;
    taken.add(after);
    return { ...noun, name: after, end: after.end };
  });
}

/** "Brackwater hybrid head": the family that a head takes, which is no adapter for sale. */
const namesWhatFits = ({ end, family }: NameFound, phrases: readonly NounPhrase[]) =>
  family !== null && phrases.some(({ start, kind }) => kind === "head" && start >= end && start - end <= 1);

function bareAnchors({ plain, phrases, names, foreign, makerKinds }: ItemSource): Bare[] {
  const nouns = pairNames(plain, phrases, names);
  const paired = new Set(nouns.map(({ name }) => name));
  const alone = names.flatMap((name): Bare[] => {
    const kind = kindOfName(name) ?? kindOfMaker(name, makerKinds);
    if (kind === "adapter" && namesWhatFits(name, phrases)) return [];
    if (kind === null || paired.has(name) || phrases.some((phrase) => overlaps(phrase, name))) return [];
    return [{ start: name.start, end: name.end, phrase: null, name, kind }];
  });
  return [...alone, ...nouns]
    .filter((anchor) => !foreign.some((stretch) => overlaps(stretch, anchor)))
    .sort((one, other) => one.start - other.start || one.end - other.end);
}

/** Everything in the words that may name an item, in order. */
export function itemAnchors(source: ItemSource): Anchor[] {
  const bare = bareAnchors(source);
  return bare.map((anchor, at) => ({
    ...anchor,
    cues: cuesOf(source, anchor, bare[at - 1]?.end ?? 0, bare[at + 1]?.start ?? source.plain.length),
  }));
}
