import type { Flex } from "../parts/part.ts";
import type { FactReader } from "./mention.ts";
import { findPhrases, type Phrase, pattern } from "./phrases.ts";
import { withTypos } from "./typos.ts";

const stiff = `(?:${withTypos("stiff", ["staff", "stuff", "still", "stick", "stiffs"])}|stf)`;
const regular = `(?:${withTypos("regular", ["regulars"])}|regulier|reg)`;
const senior = withTypos("senior", ["seniors"]);
const seniors = "(?:senior'?s|senioren)";
const ladies = "(?:ladies'?|lady'?s?|womens?|women's|woman's|damen|dames?|damas?|femme)";
const flex = "(?:flex(?:ion|ibility)?|flx)";
const grams = "(?:grammes?|grams?|gramm|grms?|gms?|grs?|g)";
const letter = "(?:sr|xs|tx|r\\s?\\+|[srlax])";
const lettersEnd = "(?![\\w'+&]|\\s?/\\s?[a-z]\\b|\\s*x\\s*\\d|\\s+\\d{1,2}\\s*(?:x|for)\\b|\\.\\d)";
/** "60g a bargain" is no flex: the letter A, and X before a number, need an end after them. */
const clauseEnd = "(?=\\s*(?:[,;:.)(|/\\n!-]|$)|\\s+(?:flex|shaft|rh|lh|tip|with|w/|graphite|steel|\\d))";

const flexOfLetter: ReadonlyMap<string, Flex> = new Map<string, Flex>([
  ["l", "ladies"],
  ["a", "senior"],
  ["r", "regular"],
  ["r+", "regular-plus"],
  ["sr", "regular-plus"],
  ["s", "stiff"],
  ["x", "x-stiff"],
  ["xs", "x-stiff"],
  ["tx", "x-stiff"],
]);

function flexOf(match: RegExpExecArray): Flex | null {
  return flexOfLetter.get((match.groups?.["at"] ?? "").replace(/\s/g, "")) ?? null;
}

const person =
  "(?:players?|golfers?|members?|men|man|gents?|ladies|people|citizens?|section|captain|team|moments?|swing(?:er|ers|s)?|handed|tour|club|competition|discount|open|golf|lad|gentleman)";
const notRegularFlex = `(?:${regular})[^\\S\\n]+(?:use|used|user|play|playing|plays|price|prices|rrp|retail|sized?|season|seller|buyer|grips?|clean(?:ing|ed)?|service|collection|post|postage|basis|thing|customer|delivery|intervals|round|club|game|visits?|plate|charity|office|trademark|wear|updates|length|loft|lie|head|tee|tees|face|hosel|cover|bag|maintenance|occurrence|contact|${person})\\b`;
const notStiffFlex =
  "(?:price|competition|upper|breeze|drink|neck|back|screw|bristles?|brush|box|card|cardboard|tip|butt|section|to\\s+(?:turn|undo|move|get)|zip|elastic|leather|joints?|hands?|knees?|hip|wind|challenge|penalty)";

const phrases: readonly Phrase<Flex>[] = [
  // Words that are no flex.
  { pattern: pattern`\b${notRegularFlex}`, value: null },
  {
    pattern: pattern`\b${stiff}[^\S\n]+${notStiffFlex}\b|\b(?:tip|butt|hand|mid)[\s-]+${stiff}\b(?!\s+(?:flex|shaft))|\b(?:bit|little|too|feels?|quite|getting|gone|went|rather|bored|scared|back's|back\s+is|not)\s+(?:a\s+)?(?:bit\s+|too\s+|very\s+|quite\s+)?${stiff}\b(?!\s+(?:flex|shaft|graphite|steel))`,
    value: null,
  },
  {
    pattern: pattern`\b(?:${senior}|seniors)\s+${person}\b|\b(?:a|the|our|for|my|by|suit|suits|ideal|fellow|old|any|most)\s+${senior}\b(?!\s+(?:flex|shaft|graphite))`,
    value: null,
  },
  { pattern: pattern`\bnot\s+(?:an?\s+)?${regular}\b|\bnot\s+${ladies}\b`, value: null },
  {
    pattern: pattern`\b(?:has|with|is|have|got|as|what|such|gives|want|wants|for|of|needs?)\s+a\s+${flex}\b|\ba\s+${flex}\s+(?:that|of|in|which|to|point|rating|test|you)\b|\b${flex}\s*(?:point|board|test|frequency|chart)\b|\b${flex}\s+an?\s+(?:bit|little|lot|touch)\b`,
    value: null,
  },
  // Stiff-regular, in all its names.
  { pattern: pattern`\bsr\W{0,3}\(?\s*${senior}\b|\b${senior}\W{0,3}\(?sr\b`, value: "senior" },
  {
    pattern: pattern`\b(?:${stiff}\s*[-/]?\s*${regular}|${regular}\s*[-/]?\s*${stiff}|${regular}\s*[-/]?\s*plus|${regular}\s?\+|regular\s*-?\s*firm|firm\s+${regular})(?![\w])`,
    value: "regular-plus",
  },
  { pattern: pattern`(?<![\w'.&/])(?<at>r\s?\+)(?![\w&])`, value: "regular-plus" },
  {
    pattern: pattern`\bfirm\s*-?\s*(?:${flex}|shaft)\b|\b${flex}\s*[:=(-]?\s*firm\b|(?=f)(?<=\d\s?${grams}\s{0,9})firm\b(?!\s+(?:price|offer|on))`,
    value: "regular-plus",
  },
  {
    pattern: pattern`(?<![\w'.&/-])s\s?[/-]?\s?r(?:\s*-?\s*${flex})?(?![\w'&/-]|\.\s?[a-z])`,
    value: "regular-plus",
  },
  // Extra stiff before stiff.
  {
    pattern: pattern`\b(?:x|extra|ex|xtra|xx|tour\s+x|x-?tra|super|double\s+x)\s*[-/]?\s*${stiff}\b(?:\s*-?\s*${flex}\b)?|\b${stiff}\s*\+\+|\btour\s*-?\s*x\b(?!\s*\d|-)|(?<![\w'])tx(?![\w'])(?!\s*\d)`,
    value: "x-stiff",
  },
  { pattern: pattern`(?<![\w'&])(?:x|xs)\s*[-/]?\s*(?:${flex}|f)(?![\w'])`, value: "x-stiff" },
  {
    pattern: pattern`(?<![\w'&/])s\s*[-/]?\s*${flex}(?![\w'])|(?<![\w'&/])s\s?/\s?f(?![\w'/])`,
    value: "stiff",
  },
  {
    pattern: pattern`(?<![\w'&/])r\s*[-/]?\s*${flex}(?![\w'])|(?<![\w'&/])r\s?/\s?f(?![\w'/])`,
    value: "regular",
  },
  {
    pattern: pattern`(?<![\w'&/])a\s*[-/]?\s*${flex}(?![\w'])|(?<![\w'&/])a\s?/\s?f(?![\w'/])`,
    value: "senior",
  },
  {
    pattern: pattern`(?<![\w'&/])l\s*[-/]?\s*${flex}(?![\w'])|(?<![\w'&/])l\s?/\s?f(?![\w'/])`,
    value: "ladies",
  },
  // A letter after the word flex, a colon, a mass, or a shaft's two figures.
  {
    pattern: pattern`\b(?:shaft\s+)?${flex}\s*(?:is\s+|rating\s*)?[:=(-]\s*(?<at>${letter})${lettersEnd}`,
    value: flexOf,
  },
  {
    pattern: pattern`\b(?:shaft\s+)?${flex}\s+(?:is\s+)?(?<at>sr|xs|tx|r\s?\+|[srlx])${lettersEnd}`,
    value: flexOf,
  },
  { pattern: pattern`\b(?:shaft\s+)?${flex}\s+(?:is\s+)?(?<at>a)(?![\w'])${clauseEnd}`, value: flexOf },
  { pattern: pattern`\bshaft\s*[:=-]\s*(?<at>${letter})(?![\w'+])${clauseEnd}`, value: flexOf },
  {
    pattern: pattern`(?<![\d.,£€$])\d{2,3}(?:[.,]\d)?\s*${grams}\b\.?\s*[-/,(]?\s*(?<at>sr|xs|tx|r\s?\+|[srl])${lettersEnd}`,
    value: flexOf,
  },
  {
    pattern: pattern`(?<![\d.,£€$])\d{2,3}(?:[.,]\d)?\s*${grams}\b\.?\s*[-/,(]?\s*(?<at>[ax])(?![\w'+&])${clauseEnd}`,
    value: flexOf,
  },
  {
    pattern: pattern`\b[a-z]\w*\s+(?:[a-z]{1,4}\s+)?[3-9]\d(?:\s*[-/(]\s*|\s+)(?<at>sr|xs|tx|r\s?\+|[srl])${lettersEnd}(?!\s*(?:grind|sole|bounce|pcs|pieces))`,
    value: flexOf,
  },
  {
    pattern: pattern`\b(?<!\b(?:size|for|pay|was|now|only|asking)\s{1,9})\b(?!(?:size|for|pay|was|now|only|asking|about|than)\b)[a-z]\w*\s+(?:[a-z]{1,4}\s+)?[3-9]\d(?:\s*[-/(]\s*|\s+)(?<at>[ax])(?![\w'+&])${clauseEnd}(?!\s*\d)`,
    value: flexOf,
  },
  {
    pattern: pattern`\b(?!(?:the|late|early|mid|in|my|for|about|under|over|took|of|only|from|his|her|their)\b)[a-z]\w*\s+[3-9]\d(?<at>sr|xs|tx|r\+|[srlx])(?![\w'+&])(?!\s+(?:style|era|music|retro|persimmon|classic))`,
    value: flexOf,
  },
  // The words.
  { pattern: pattern`\b${stiff}(?:\s*-?\s*${flex}\b)?(?![\w])`, value: "stiff" },
  {
    pattern: pattern`\b(?:${senior}|${seniors})\s*-?\s*(?:${flex}|shaft|graphite|schaft)\b|\b(?:senior|am)flex\b|\blite\s*-?\s*${flex}\b|\b${flex}\s*[:=(-]?\s*(?:lite|seniors|senioren)\b|\bseniorenschaft\b|\bsenior\s*/\s*lite\b`,
    value: "senior",
  },
  { pattern: pattern`\b${senior}(?:\s*-?\s*${flex}\b)?(?![\w'])`, value: "senior" },
  {
    pattern: pattern`\b${ladies}\s*-?\s*(?:graphite\s+|lightweight\s+|lite\s+)?(?:${flex}|shaft|schaft)\b|\b${flex}\s*[:=(-]?\s*${ladies}(?![\w'])|\bdamenschaft\b|(?=[lwdf])(?<=\d\s?${grams}\s{0,9})${ladies}(?![\w'])`,
    value: "ladies",
  },
  { pattern: pattern`\b${regular}(?:\s*-?\s*${flex}\b)?(?![\w'])`, value: "regular" },
];

/** Reads a shaft's flex as its label says it. A bare letter is a flex only where the words around it make it one. */
export const readFlex: FactReader = ({ plain }) =>
  findPhrases(plain, phrases).map((found) => ({ field: "flex" as const, ...found }));
