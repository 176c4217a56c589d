import type { ClubType } from "../parts/part.ts";
import type { FactReader, Mention } from "./mention.ts";
import { findPhrases, matchesOf, type Phrase, pattern, placeOfGroup } from "./phrases.ts";
import { withTypos } from "./typos.ts";

/** What words say of a club's type, and of its number where they name one; `numbers` is the place of one or more numbers. */
interface Said {
  readonly clubType: ClubType;
  readonly clubNumber?: string;
  readonly numbers?: readonly [number, number];
}

const numberWords = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
const one = `(?:[1-9]|1[1-3]|${numberWords.slice(2).join("|")})`;
const more = `(?:\\s*(?:,|/|&|\\+|and|-)\\s*${one})`;
const first = `(?<![\\w.,/£€$-])(?<numbers>${one}`;
const oneOrMore = `${first}${more}{0,7})`;
const several = `${first}${more}{1,7})`;
const notNumber =
  "(?:\"|°|'|in\\b|inch|g\\b|deg|x\\b|left\\b|clubs?\\b|pieces?\\b|heads?\\b|shafts?\\b|grips?\\b|of\\b|off\\b|for\\b|months?\\b|years?\\b|weeks?\\b|days?\\b|available\\b|total\\b|quid\\b|eur|€|£|rounds?\\b|holes?\\b|times?\\b)";
const few = `(?<numbers>[1-9](?:\\s*(?:,|/|&|\\+|and)\\s*[1-9]){0,7})(?![\\d.,]*\\d|\\s*${notNumber})`;
const wood = `(?:${withTypos("wood", ["word", "work", "would", "world", "food"])}|wd|metal)`;
const iron = `(?:${withTypos("iron", ["irish", "ion"])}|irns?)`;
const hybrid = `(?:${withTypos("hybrid")}|hibrido|ibrido|hybride|hyb|hy|rescue|resc|utility)`;
const driver = `(?:${withTypos("driver", ["drive", "drives", "driven", "diver"])}|drvr?)`;
const fairway = `(?:${withTypos("fairway")}|fwy|fway|fw)`;
const wedge = withTypos("wedge", ["weds", "edge", "wedged"]);
const putter = withTypos("putter", ["putted", "puttee", "putt"]);

function say(clubType: ClubType, clubNumber?: string): Said {
  return clubNumber === undefined ? { clubType } : { clubType, clubNumber };
}

function numbered(clubType: ClubType): (match: RegExpExecArray) => Said {
  return (match) => {
    const place = placeOfGroup(match, "numbers");
    return place ? { clubType, numbers: place } : { clubType };
  };
}

const letters: ReadonlyMap<string, string> = new Map([
  ["p", "PW"],
  ["s", "SW"],
  ["a", "AW"],
  ["g", "GW"],
  ["l", "LW"],
]);

/** "4-pw", "5 to p" and "3 thru 9" as the trade writes them: "4-PW", "5-PW", "3-9". */
function rangeOf(match: RegExpExecArray): string {
  const last = match.groups?.["last"] ?? "";
  return `${match.groups?.["first"]}-${letters.get(last.charAt(0)) ?? last}`;
}

const to = "\\s*(?:-|to|thru|through|bis|til|a)\\s*";
const wedgeLetters = "[psagl]\\s?/?\\s?w";

const traps: readonly Phrase<Said>[] = [
  {
    pattern: pattern`\b(?:screw|delivery|taxi|van|bus|lorry|truck|designated|courier|the|uber)[\s-]+drivers?\b(?=\s+(?:will|can|to|is|who|set|bit))|\bscrew[\s-]drivers?\b|\b(?:delivery|taxi|van|bus|lorry|truck|designated|courier)\s+drivers?\b`,
    value: null,
  },
  {
    pattern: pattern`\b(?:off|from|down|on|find|finds|finding|hit|hits|hitting|every|more)\s+(?:the\s+|more\s+|every\s+)?fairways?\b(?!\s+wood)|\bfairways?\s+(?:finder|and\s+greens?|every)\b`,
    value: null,
  },
  {
    pattern: pattern`\butility\s+(?:bills?|room|knife|belt|bag)\b|\b(?:rescue|hybrid)\s+(?:dogs?|cats?|centre|car|bike|balls?|grips?)\b`,
    value: null,
  },
  {
    pattern: pattern`\b(?:cast|wrought|steam|scrap|soldering|branding|angle)\s+iron\b|\biron\s+(?:out|man)\b|\bcast-iron\b`,
    value: null,
  },
  { pattern: pattern`\b(?:door|cheese|heel)\s+wedges?\b`, value: null },
  {
    pattern: pattern`\bsw\s*[:=]?\s*[cdef]\s?\d|\b[cdef]\d(?:\.\d)?\s+sw\b|\b(?:in|near|around)\s+sw\b|\bsw\s+(?:london|england|france|scotland|ireland)\b`,
    value: null,
  },
];

const named: readonly Phrase<Said>[] = [
  {
    pattern: pattern`\b1(?:st)?[\s-]*${wood}s?\b|(?<![\w.])1\s?w\b|\bmini[\s-]driver\b|\b${driver}s?\b`,
    value: say("driver"),
  },
  { pattern: pattern`\bpitching[\s-]*${wedge}s?\b(?:\s*\(?pw\b)?`, value: say("wedge", "PW") },
  { pattern: pattern`\bsand[\s-]*(?:${wedge}s?|${iron})\b(?:\s*\(?sw\b)?`, value: say("wedge", "SW") },
  { pattern: pattern`\blob[\s-]*${wedge}s?\b(?:\s*\(?lw\b)?`, value: say("wedge", "LW") },
  { pattern: pattern`\bgap[\s-]*${wedge}s?\b(?:\s*\(?gw\b)?`, value: say("wedge", "GW") },
  { pattern: pattern`\b(?:approach|attack)[\s-]*${wedge}s?\b(?:\s*\(?aw\b)?`, value: say("wedge", "AW") },
  {
    pattern: pattern`(?<![\w.,£€$/°-])(?<numbers>(?<first>[2-9])${to}(?<last>${wedgeLetters}|p|s(?=\s*${iron})))(?![\w'])(?:\s*${iron}s?\b)?`,
    value: (match) => ({ ...numbered("iron")(match), clubNumber: rangeOf(match) }),
  },
  {
    pattern: pattern`\b(?:${iron}s?(?:\s*set)?|eisen|fers?|hierros?|ferri|jarn|ijzers?)\s*[:,(-]?\s*(?<numbers>(?<first>[1-9])${to}(?<last>[6-9]))(?![\d.]|\s*(?:°|deg|"|inch|in\b))`,
    value: (match) => ({ ...numbered("iron")(match), clubNumber: rangeOf(match) }),
  },
  {
    pattern: pattern`(?<![\w.,£€$/°-])(?<numbers>(?<first>[1-9])${to}(?<last>[6-9]))\s*-?\s*${iron}s?\b`,
    value: (match) => ({ ...numbered("iron")(match), clubNumber: rangeOf(match) }),
  },
];

const counted = "(?:pair\\s+of|two|three|both|\\d\\s?x|x\\s?\\d|single)\\s+(?:\\w+\\s+)?";

const pulled =
  "\\b(?:pulled|pull|removed|taken|came|out)\\s+(?:from|out\\s+of|off|of)\\s+(?:an?\\s+|my\\s+|the\\s+|old\\s+)?";

const withNumber: readonly Phrase<Said>[] = [
  // What a shaft was pulled from is no number of its own.
  { pattern: pattern`${pulled}(?<at>[1-9]\s*-?\s*${iron})\b`, value: say("iron") },
  { pattern: pattern`${pulled}(?<at>[1-9]\s*-?\s*(?:${wood}|w))\b`, value: say("fairway") },
  { pattern: pattern`${pulled}(?<at>[1-9]\s*-?\s*(?:${hybrid}|h))\b`, value: say("hybrid") },
  {
    pattern: pattern`(?=\d)(?<=\birons?\b[^.;\n]{0,40},\s*)(?<numbers>(?<first>[2-5])\s*-\s*(?<last>[6-9]))(?=\s*(?:[,.;)\n]|$))`,
    value: (match) => ({ ...numbered("iron")(match), clubNumber: rangeOf(match) }),
  },
  {
    pattern: pattern`\b(?:set|lot|bundle|box|bag|pile|total|batch|bunch|all|choice|selection)\s+(?:of\s+)?\d{1,2}\s*(?<at>${wood})\s+heads\b`,
    value: say("fairway"),
  },
  {
    pattern: pattern`(?=\d)(?<!${counted})(?<![\w.,-])\d{1,2}\s+(?<at>wood)\s+heads\b`,
    value: say("fairway"),
  },
  {
    pattern: pattern`(?=\d)(?<!${counted})(?<![\w.,-])\d{1,2}\s+(?<at>iron)\s+(?:heads|shafts)\b`,
    value: say("iron"),
  },
  {
    pattern: pattern`(?=\d)(?<!${counted})(?<![\w.,-])\d{1,2}\s+(?<at>hybrid)\s+(?:heads|shafts)\b`,
    value: say("hybrid"),
  },
  { pattern: pattern`${several}\s*-?\s*(?:fairway\s+)?${wood}s\b`, value: numbered("fairway") },
  { pattern: pattern`${several}\s*-?\s*${hybrid}s\b`, value: numbered("hybrid") },
  {
    pattern: pattern`(?=\d)(?<=\b${counted})(?<numbers>[1-9])\s*-?\s*${wood}s\b`,
    value: numbered("fairway"),
  },
  {
    pattern: pattern`(?=\d)(?<=\b${counted})(?<numbers>[1-9])\s*-?\s*${hybrid}s\b`,
    value: numbered("hybrid"),
  },
  {
    pattern: pattern`\b(?:set|lot|bundle|box|bag|pile|total|batch|bunch|all|selection)\s+of\s+(?:\d{1,2}|${one})\s*(?<at>${iron}s)\b`,
    value: say("iron"),
  },
  {
    pattern: pattern`\b(?:set|lot|bundle|box|bag|pile|total|batch|bunch|all|selection)\s+of\s+(?:\d{1,2}|${one})\s*(?<at>${hybrid}s)\b`,
    value: say("hybrid"),
  },
  {
    pattern: pattern`${oneOrMore}\+?\s*-?\s*(?:fairway\s+)?(?:${wood}(?<!s)|w|fw|fairway(?:\s+wood)?)(?![\w'/])`,
    value: numbered("fairway"),
  },
  {
    pattern: pattern`${oneOrMore}(?:\s*-?\s*${hybrid}(?<!s)|-?h)(?![\w'/])(?!\s+(?:drive|away|ago|old|later))`,
    value: numbered("hybrid"),
  },
  { pattern: pattern`${oneOrMore}(?:\s*-?\s*${iron}(?<!s)|-?i)(?![\w'/])`, value: numbered("iron") },
  {
    pattern: pattern`(?=\d)(?<=\b(?:pair\s+of|both|two|\dx|\d\sx|x\d)\s+(?:\w+\s+)?)(?<numbers>[1-9])\s*-?\s*${iron}s\b`,
    value: numbered("iron"),
  },
  {
    pattern: pattern`(?<![\w.])(?<numbers>[1-9](?:\s*(?:,|/|&|\+|and)\s*[1-9]){1,7})\s*-?\s*${iron}s\b`,
    value: numbered("iron"),
  },
  {
    pattern: pattern`(?<![\w.])(?<numbers>[1-9])(?:er)?[\s-]*(?:holz|bois|madera|legno)\b|\b(?:(?:fairway)?holz|bois(?:\s+de\s+parcours)?|maderas?|legno|trae|hout)\s*(?:n[o°]\.?\s*)?#?(?<n2>[1-9])\b`,
    value: (match) => ({ clubType: "fairway", ...placeOfEither(match) }),
  },
  {
    pattern: pattern`(?<![\w.])(?<numbers>[1-9])(?:er)?[\s-]*eisen\b|\b(?:eisen|fers?|hierros?|ferro|jarn|ijzer)\s*(?:n[o°]\.?\s*)?#?(?<n2>[1-9])(?![\d.,]*\d)`,
    value: (match) => ({ clubType: "iron", ...placeOfEither(match) }),
  },
  {
    pattern: pattern`\b(?:${hybrid}s?)(?:\s+club)?\s*(?:,\s*)?(?:no\.?\s*|number\s*|nr\.?\s*|n°\s*)?#?${few}(?!\s*(?:-|to)\s*\d|\s*${wood}|\s*${iron}|\s*h\b|\s*-?\s*hy)`,
    value: numbered("hybrid"),
  },
  {
    pattern: pattern`\b(?:fairway(?:\s+woods?)?|fwy|fw|woods?)\s*(?:no\.?\s*|number\s*|nr\.?\s*|n°\s*)?#?${few}(?!\s*(?:-|to)\s*\d|\s*${wood}|\s*w\b|\s*${iron}|\s*${hybrid})`,
    value: numbered("fairway"),
  },
  {
    pattern: pattern`\b${iron}s?\s*(?:,?\s*heads?\s+only)?\s*(?:[:,]\s*)?(?:no\.?\s*|number\s*|nr\.?\s*|n°\s*)?#?${few}(?!\s*(?:-|to|thru|x)\s*[\dpsagl]|\s*-?\s*(?:${wood}|${iron}|${hybrid}))`,
    value: numbered("iron"),
  },
];

const alone: readonly Phrase<Said>[] = [
  {
    pattern: pattern`\b(?:fairway[\s-]*woods?|fairwayh[o]lz(?:er)?|${fairway}s?|bois\s+de\s+parcours|madera\s+de\s+calle)\b`,
    value: say("fairway"),
  },
  {
    pattern: pattern`\b(?<at>wood)\s+heads\b|\b(?<!${"(?:persimmon|driver|driver and|drivers and|hard|soft|real|drift|cotton|fire)\\s+"})woods\b(?!\s+(?:near|behind|at|on|by))`,
    value: say("fairway"),
  },
  {
    pattern: pattern`\b(?:${withTypos("hybrid")}s?|hibridos?|ibridos?|hybrides?|hyb|rescues?|utility)\b`,
    value: say("hybrid"),
  },
  {
    pattern: pattern`\b(?:${iron}s?|ironset|eisensatz|eisen|eisenset|fers|hierros?|jarnset|ijzers?)\b(?!\s*-?\s*on\b)`,
    value: say("iron"),
  },
  {
    pattern: pattern`(?<![\w'&.])(?<letter>[psagl])/?w(?![\w'&]|\s?\d)(?:\s*-?\s*${wedge}s?\b)?`,
    value: (match) => say("wedge", letters.get(match.groups?.["letter"] ?? "")),
  },
  { pattern: pattern`\b(?:sandwedge|${wedge}s?|cocheur)\b`, value: say("wedge") },
  { pattern: pattern`\b(?:${putter}s?|flatstick)\b`, value: say("putter") },
];

function placeOfEither(match: RegExpExecArray): { numbers?: readonly [number, number] } {
  const place = placeOfGroup(match, "numbers") ?? placeOfGroup(match, "n2");
  return place ? { numbers: place } : {};
}

const phrases = [...traps, ...named, ...withNumber, ...alone];
const eachNumber = new RegExp(one, "g");

function figure(said: string): string {
  const place = numberWords.indexOf(said);
  return place < 0 ? said : `${place + 1}`;
}

function numbersAt(plain: string, [from, to]: readonly [number, number]): Mention[] {
  return matchesOf(plain.slice(from, to), eachNumber).map(({ 0: said, index }) => ({
    field: "clubNumber" as const,
    value: figure(said),
    start: from + index,
    end: from + index + said.length,
  }));
}

/** Reads what type of club the words name, and its number: "3 wood", "7i", "4-PW", "sand wedge", "irons 5, 7 and 9". */
export const readClubType: FactReader = ({ plain }) =>
  findPhrases(plain, phrases).flatMap(({ value: { clubType, clubNumber, numbers }, start, end }) => {
    const type: Mention = { field: "clubType", value: clubType, start, end };
    if (clubNumber === undefined) return numbers ? [type, ...numbersAt(plain, numbers)] : [type];
    const [from, upTo] = numbers ?? [start, end];
    return [type, { field: "clubNumber", value: clubNumber, start: from, end: upTo }];
  });
