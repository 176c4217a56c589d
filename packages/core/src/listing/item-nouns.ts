import type { ClubType } from "../parts/part.ts";
import type { ItemKind } from "./catalogue.ts";
import { ironSetToWedge, ironsWithWedges } from "./iron-sets.ts";
import { findPhrases, type Phrase } from "./phrases.ts";
import { withTypos } from "./typos.ts";
import type { Words } from "./words.ts";

/** A word, or a few, for a thing that can be sold. */
interface Noun {
  /** The part it names; null where it names a type of club only. */
  readonly part: Exclude<ItemKind, "club"> | "club-word" | null;
  readonly type: ClubType | null;
  readonly plural: boolean;
}

/** Nouns that stand together and name one thing: "driver head", "3 wood headcover", "tête de driver". */
export interface NounPhrase {
  readonly kind: ItemKind;
  /** Whether it names its kind outright ("head", "shaft"), not only a type of club ("driver"). */
  readonly part: boolean;
  readonly type: ClubType | null;
  /** Whether it is a word like "clubs" that says nothing more. */
  readonly vague: boolean;
  readonly plural: boolean;
  readonly start: number;
  readonly end: number;
}

const noun =
  (part: Noun["part"], type: ClubType | null = null) =>
  (match: RegExpExecArray): Noun => ({
    part,
    type,
    plural: /(?:s|wrenches|en|kopfe|schafte)$/u.test(match[0]) && !/(?:ss|2s)$/u.test(match[0]),
  });

const word = (source: string) => new RegExp(`(?<![\\p{L}\\d.,])(?:${source})(?![\\p{L}\\d])`, "gu");
const typo = (spelling: string, others: readonly string[] = []) => `${withTypos(spelling, others)}s?`;

/** Numbers as clubs have them. */
/** A set of irons by its first and last. */
const ironRange =
  "(?<=(?:irons?|eisen|fers?|hierros?|set)(?:[ :,-]| set | heads? | heads only )?)[1-9](?: ?- ?| to | thru | bis )(?:1[0-2]|[4-9])|[1-9](?: ?- ?| to | thru | bis )(?:1[0-2]|[4-9])(?= ?(?:irons?|eisen|fers?|hierros?|iron set))";

/** Numbers as clubs have them. */
const clubDigits =
  "(?:#|no\\.? ?|nr\\.? ?|number ?)?(?:[1-9]|1[0-3]|one|two|three|four|five|six|seven|eight|nine)";

/** Words that look like nouns for sale and are none. */
const traps: readonly Phrase<Noun>[] = [
  word(
    "heads? ?up|over ?head|head ?(?:weights?|mass|speed|off)|(?:weight|mass) of (?:the )?head|headings?|screw ?heads?|on (?:the )?wood|iron(?:ing|ed)? out|wood effect|firewood|tool ?(?:box|kit|bag)|cover(?:s|ed|ing)? (?:the |my |your |all |some |any )?(?:cost|post|postage|p&p|fees|shipping|everything|bag|up)|grips? ?(?:size|tape|solvent)|key (?:feature|point|thing)s?|to key|driver'?s (?:side|door|licen[cs]e)|drive shaft|man ?cave|club ?(?:house|champ(?:ion)?|member|pro|mates?|shop|record|night|captain|secretary|level|competition|comp|day)|golf club (?:bag|trolley|member)|(?:at|from|of|in|to) (?:the|my|our|local) (?:golf )?club|club(?:fitter| fitter| maker|maker| builder| repair| length| head speed)|head (?:pro|over|to|out)|tip(?:ped|ping)?|sleeve of balls|ball sleeves?|sleeves? of (?:golf )?balls?",
  ),
].map((pattern) => ({ pattern, value: null }));

const phrases: readonly Phrase<Noun>[] = [
  ...traps,
  {
    pattern: word(
      "(?:golf )?head[ -]?(?:covers?|cvrs?|coverr?s?|socks?)|h ?/ ?c(?:overs?|s)?|hcs?|h\\.c\\.?|covers?(?! (?:the|all|my|your|cost|post))|(?:schlager|driver|kopf|holz|club)?hauben?|capuchons?|couvre[ -]?(?:clubs?|tetes?)|fundas?|hoes(?:je)?|housses?|headcovers?|hedcovers?",
    ),
    value: noun("cover"),
  },
  {
    pattern: word(
      "(?:torque |t-|allen |hosel |adapter |sleeve )?(?:wrench|wrenches|wrentch|wench|spanners?)|(?:torque|adjustment|adjusting|adjuster|adjustable|hosel|adapter|sleeve|weight) (?:tools?|keys?)|tools?|keys?|(?:dreh\\p{L}*|inbus\\p{L}*|adapter|torx|torque)?schlussel|nokkel|(?:moment|skruv)?nyckel|(?:moment)?sleutel|nogle|cles?(?: (?:dynamometrique|de serrage|torque|de reglage))?|llaves?(?: (?:dinamometrica|de ajuste|torque))?",
    ),
    value: noun("wrench"),
  },
  {
    pattern: word("driver ?(?:kopf|kopfe|head|hode|huvud|kop)s?|(?:driver|dr)kopf"),
    value: noun("head", "driver"),
  },
  { pattern: word("(?:holz|fairway)(?:holz)?kopfe?"), value: noun("head", "fairway") },
  { pattern: word("hybridkopfe?"), value: noun("head", "hybrid") },
  { pattern: word("eisenkopfe?"), value: noun("head", "iron") },
  { pattern: word("putterkopfe?"), value: noun("head", "putter") },
  { pattern: word("wedgekopfe?"), value: noun("head", "wedge") },
  { pattern: word("driver-?(?:schafte?|skaft|shaft)"), value: noun("shaft", "driver") },
  { pattern: word("(?:fairway|holz|fairwayholz)schafte?"), value: noun("shaft", "fairway") },
  { pattern: word("hybridschafte?"), value: noun("shaft", "hybrid") },
  { pattern: word("(?:eisen)schafte?"), value: noun("shaft", "iron") },
  {
    pattern: word(
      "(?:golf|shaft|hosel|tip|schaft)?[ -]?(?:adapt[eo]rs?|adapto?rs?|addapt[eo]rs?|adpat[eo]rs?|adapt[eo]rhulsen?|adaptateurs?|adaptador(?:es)?|manchons?|hulsen?|casquillos?)|(?:hosel |shaft |tip )?(?:sleeves?|sleves?|sleave?s?)|shaft tips?(?= (?:for|to fit|to suit))",
    ),
    value: noun("adapter"),
  },
  {
    pattern: word(
      `(?:golf )?club ?heads?|heads?|hedas?|haeds?|schlagerk(?:opf|opfe)|kopfe?|kop|tetes?|cabezas?|cabezal(?:es)?|heds?|klubbhuvud|huvud|hode|testa`,
    ),
    value: noun("head"),
  },
  {
    pattern: word(
      `${typo("shaft", ["shift", "sharp", "short", "shat"])}|schafte?|manches?|varillas?|skaft|shafft`,
    ),
    value: noun("shaft"),
  },
  { pattern: word("grips?|gripps?|griff(?:e|en)?|poignees?|empunaduras?|puños?"), value: noun("grip") },
  // Types of club, with their number where it stands beside.
  {
    pattern: word(
      `1[ -]?w(?:ood)?s?|${typo("driver", ["drivel", "drive", "drives", "driven", "diver"])}|drivers|drv(?:er|r)?s?|dr(?=[ ,]\\d)`,
    ),
    value: noun(null, "driver"),
  },
  {
    pattern: word(
      `(?:f(?:air)?way|fwy|fw) ?(?:woods?|metals?|holz(?:er)?)?s?|fairways?|${typo("fairway")}(?: woods?)?|${clubDigits}[ -]?(?:er )?(?:woods?|w|holz|hlz|fw|fairway(?: woods?)?|metal|bois|\\+ ?w)|(?:wood|w|(?:fairway)?holz|bois(?: de parcours)?|madera(?: de calle)?|fairway(?: wood)?|fw)[ -]?(?:#|no\\.? ?|nr\\.? ?)?[2-9]|bois(?: de parcours)?|maderas?(?: de calle)?|fairwayholz(?:er)?|holz(?:er)?|trouve|woods|wood(?= heads)`,
    ),
    value: noun(null, "fairway"),
  },
  {
    pattern: word(
      `${clubDigits}[ -]?(?:er )?(?:hybrids?|hybride|hyb|hy|h|rescues?|utility|ut|u)|(?:hybrids?|hybride[ns]?|hibridos?|hyb|rescues?|utility|hy)(?: woods?| irons?| clubs?)? ?(?:#|no\\.? ?|nr\\.? ?)?(?:[2-9](?![\\d.,]|[ -]?(?:x|°|deg|way)))?|${typo("hybrid")}|rescues?|utility(?: (?:irons?|clubs?|woods?))?|utilities|hibridos?`,
    ),
    value: noun(null, "hybrid"),
  },
  { pattern: word(ironsWithWedges), value: noun(null, "iron") },
  { pattern: new RegExp(ironSetToWedge, "gu"), value: noun(null, "iron") },
  { pattern: word(ironRange), value: noun(null, "iron") },
  {
    pattern: word(
      `${clubDigits}[ -]?(?:er )?(?:irons?|i|eisen|fers?|hierros?|iorns?)|(?:irons?|eisen|fers?|hierros?)[ -]?(?:#|no\\.? ?|nr\\.? ?)?[2-9](?![\\d.,])|(?:${typo("iron")})(?: ?sets?)?|irons|eisen(?:satz|set|schlager)?|fers|hierros?|serie de fers|driving irons?`,
    ),
    value: noun(null, "iron"),
  },
  {
    pattern: word(
      `(?:${typo("wedge")})|wedges|(?:pitching|sand|lob|gap|approach|attack)[ -]?(?:wedges?|irons?)|(?:p|s|l|g|a)w|sandeisen|cunas?`,
    ),
    value: noun(null, "wedge"),
  },
  { pattern: word(`${typo("putter", ["butter", "putted", "potter"])}|putters`), value: noun(null, "putter") },
  {
    pattern: word("(?:golf )?clubs?|wood|schlager|golfschlager|palos?(?: de golf)?|clubs? de golf"),
    value: noun("club-word"),
  },
];

const cluster = (gap: string) => /^(?: ?[-/] ?| )?$/u.test(gap) || /^ *$/u.test(gap);
const ofType = (gap: string) =>
  /^ (?:de |du |del |d'|fur |fur den |para |of an? |pour |pour le )(?:le |la |un |mi |my )?$/u.test(gap);

interface PlacedNoun {
  readonly value: Noun;
  readonly start: number;
  readonly end: number;
}

function phraseOf(nouns: readonly PlacedNoun[]): NounPhrase {
  const first = nouns[0] as PlacedNoun;
  const last = nouns.at(-1) as PlacedNoun;
  const parts = nouns.flatMap(({ value: { part } }) => (part === null || part === "club-word" ? [] : [part]));
  const type = nouns.find(({ value }) => value.type !== null)?.value.type ?? null;
  const kind = parts.at(-1) ?? "club";
  return {
    kind,
    part: parts.length > 0,
    type,
    vague: parts.length === 0 && type === null,
    plural: nouns.some(({ value }) => value.plural),
    start: first.start,
    end: last.end,
  };
}

/** The things named in the words, in order. `words` have the names of the catalogue blanked out. */
export function findNounPhrases({ plain }: Words): NounPhrase[] {
  const nouns = findPhrases(plain, phrases);
  const groups: PlacedNoun[][] = [];
  for (const one of nouns) {
    const group = groups.at(-1);
    const before = group?.at(-1);
    const gap = before ? plain.slice(before.end, one.start) : "";
    const type = one.value.part === null && one.value.type !== null;
    // "GW SW LW" are three.
    const lettered =
      /^[pslga]w$/u.test(plain.slice(one.start, one.end)) &&
      /^[pslga]w$/u.test(plain.slice(before?.start ?? 0, before?.end ?? 0));
    const sameType =
      !lettered &&
      (group?.every(({ value }) => value.type === null || value.type === one.value.type) ?? true);
    const together =
      before && !gap.includes("\n") && (cluster(gap) || (type && before.value.part !== null && ofType(gap)));
    // Two types of club are two clubs: "driver 3 wood hybrid".
    const hasType = group?.some(({ value }) => value.type !== null) ?? false;
    const hasPart = group?.some(({ value }) => value.part !== null && value.part !== "club-word") ?? false;
    const again = one.value.part !== null && one.value.part !== "club-word" && hasPart;
    const joinsPart = again && cluster(gap) && one.value.part !== "head" && before?.value.part !== "cover";
    if (together && group && !(type && hasType && !sameType) && (!again || joinsPart)) group.push(one);
    else groups.push([one]);
  }
  return groups.map(phraseOf);
}
