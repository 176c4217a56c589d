import type { lengthBases } from "../parts/part.ts";
import { inFromCm, inFromM, inFromMm } from "../units.ts";
import type { FactReader } from "./mention.ts";
import { figures, figuresOrWords, numberOf } from "./number-words.ts";
import { findPhrases, type Phrase, pattern } from "./phrases.ts";

type Basis = (typeof lengthBases)[number];

interface Said {
  readonly lengthIn: number;
  readonly doubt?: string;
}

/** Shafts and clubs that are sold lie between these, a child's club to a long putter: common practice, no source. */
const lengthLeastIn = 24;
const lengthMostIn = 56;

function within(lengthIn: number): Said | null {
  return lengthIn >= lengthLeastIn && lengthIn <= lengthMostIn ? { lengthIn } : null;
}

function inchesOf(match: RegExpExecArray): Said | null {
  return within(numberOf(match.groups?.["number"] ?? ""));
}

function convertedBy(inFrom: (length: number) => number): (match: RegExpExecArray) => Said | null {
  return (match) => within(inFrom(numberOf(match.groups?.["number"] ?? "")));
}

/** "44.5" that only "length" or "plays" makes a length: a longer range would take a handicap or a loft for one. */
function contextOf(match: RegExpExecArray): Said | null {
  const said = inchesOf(match);
  return said !== null && said.lengthIn >= 32 && said.lengthIn <= 50 ? said : null;
}

function bareOf(match: RegExpExecArray): Said | null {
  const said = inchesOf(match);
  if (said === null || said.lengthIn < 40 || said.lengthIn > 48) return null;
  return { ...said, doubt: "This number looks like a length in inches, but the words do not say so." };
}

const afterIn =
  "(?!\\s+(?:good|great|excellent|mint|perfect|pristine|very|used|nice|superb|total|my|the|an?|all|stock|new|as|fair|ok|okay|decent|lovely|average|immaculate|fantastic|brilliant|amazing|near|really|super|this|that|its|it's|unused|original|working|tip-?top|top|vgc|gc|black|red|white|blue|silver|person|store|shop|hand|use|need|stiff|regular|x|senior|20\\d\\d)\\b)";
const inchSign = `(?:''|"|'(?![\\w'])|inch(?:es|s)?\\b|ins?\\b\\.?${afterIn}|inchs\\b|zoll\\b|pouces?\\b|pulgadas?\\b|pollici\\b|tum\\b|tommer\\b|inches\\b)`;
const number = `(?<number>${figures})`;
const worded = `(?<number>${figuresOrWords})`;
const notLength =
  "(?!\\s*-?\\s*(?:long\\s+)?(?:tube|box|parcel|package|tv|screen|monitor|waist|chest|bag|net|rack|x\\s*\\d|by\\s+\\d|grip\\s+length|leg|chain))";
const notClub =
  "(?=[\\da-z])(?<!\\b(?:tube|box|parcel|package|tv|waist|chest|size|bag|height|inseam|rack|leg|screen)\\s*(?:is|of|:|=|-|,|size)?\\s*)";

const phrases: readonly Phrase<Said>[] = [
  {
    pattern: pattern`(?<![\d.,])\d{1,3}(?:[.,]\d+)?\s*(?:cm|mm|"|in|inch)?\s*(?:x|by)\s*\d{1,3}(?:[.,]\d+)?\s*(?:(?:cm|mm|"|in|inch)?\s*(?:x|by)\s*\d{1,3}\s*)?(?:cm|mm|"|inch|in)\b`,
    value: null,
  },
  { pattern: pattern`\b(?:over|under|between|than)\s+(?:a\s+)?${worded}\s*-?\s*${inchSign}`, value: null },
  {
    pattern: pattern`(?<![\d.,])(?<at>(?<feet>[2-4])\s*(?:ft|foot|feet|')\.?\s*(?<rest>\d{1,2}(?:[.,]\d)?)(?:\s*(?:"|''|ins?\b|inch(?:es)?\b))?)(?=\s*(?:long|length|shaft|club|overall|[,.;)\n]|$))`,
    value: (match) => within(12 * Number(match.groups?.["feet"]) + numberOf(match.groups?.["rest"] ?? "")),
  },
  { pattern: pattern`${notClub}(?<at>${worded}\s*-?\s*${inchSign})${notLength}`, value: inchesOf },
  {
    pattern: pattern`${notClub}(?<at>${number}\s*-?\s*(?:cms?|centimet(?:re|er)s?|zentimeter|centimetres|centimetros)\b)${notLength}`,
    value: convertedBy(inFromCm),
  },
  {
    pattern: pattern`${notClub}(?<at>${number}\s*-?\s*(?:mms?|millimet(?:re|er)s?|millimetres|milimetros)\b)${notLength}`,
    value: convertedBy(inFromMm),
  },
  {
    pattern: pattern`${notClub}(?<at>(?<number>(?<![\d.,])1[.,][0-3]\d\d?)\s*(?:m|metres?|meters?|metros?)\b)${notLength}`,
    value: convertedBy(inFromM),
  },
  {
    pattern: pattern`\b(?:length|lgth|lange|longueur|longitud|largo|lunghezza|lengte|langd|laenge)\b(?:\s*(?:is|of|at|approx\.?|about|circa|ca\.?|:|=|-|~|\(|shaft|tip\s+to\s+butt|with\s+adapter|inc\s+adapter))*\s*(?<at>${number})(?!\s*(?:cm|mm|m\b|°|g\b|deg|£|€|%))`,
    value: contextOf,
  },
  {
    pattern: pattern`\b(?:plays?|playing|played|measures?|measured|measuring|cut(?:\s+down)?|built|trimmed|butt\s+cut|finished|comes\s+out)\s+(?:(?:at|to|to\s+play|play|about|approx\.?|exactly|just)\s+){0,3}(?<at>${number})(?!\s*(?:cm|mm|m\b|°|g\b|deg|£|€|%|holes?|times|rounds|hcp|handicap|h/c|off\b|degrees))`,
    value: contextOf,
  },
  {
    pattern: pattern`(?=\d)(?<![£€$#]\s?)(?<at>${number})\s+(?=(?:tip[\s-]+to[\s-]+(?:butt|grip|end)|butt[\s-]+to[\s-]+tip|end[\s-]+to[\s-]+end|overall|uncut|raw\b|long\b|(?:inc|incl|including|with|without|w/|w/o|excl|excluding)\s+(?:the\s+|a\s+|\w+\s+\d\s+)?(?:adapt[eo]r|sleeve)|playing\s+length|in\s+length))`,
    value: contextOf,
  },
  {
    pattern: pattern`(?=\d)(?<![£€$#]\s?)(?<![\d.,/-])(?<at>(?<number>(?:3[3-9]|4[0-8])(?:\s?[½¼¾⅛⅜⅝⅞]|(?:\s|-)(?:1/2|1/4|3/4|[1357]/8))))(?![\d°/])(?!\s*(?:°|deg|cm|mm|euro|quid))`,
    value: contextOf,
  },
  {
    pattern: pattern`(?=4)(?<!(?:£|€|\$|#|\b(?:asking|for|pay|was|now|of|eur|usd|gbp|postage|post|p&p|plus|paid|price|offers?|size|d|c)\s*:?)\s{0,9})(?<![\d.,/:+-])(?<at>(?<number>4[0-7][.,](?:5|25|75)))(?![\d°]|[.,]\d)(?!\s*(?:°|\*|deg|grad|cm|mm|m\b|g\b|gr|kg|€|£|\$|eur|quid|pounds|gbp|usd|dollars|%|/|x\s?\d|-\s?\d|miles|km|mph))`,
    value: bareOf,
  },
];

const adapter =
  "(?:(?:the|an?|its|fitted|\\w{1,20}\\s+\\d|\\w{1,20}|hosel|loft)\\s+){0,2}(?:adapt[eo]rs?|sleeves?|adpater|adaptateur|adaptador)";
const including =
  "(?:inc\\.?|incl\\.?|including|includes|included|with|w/|plus|inkl\\.?|med|met|mit|avec|con|to\\s+(?:the\\s+)?(?:end|tip|bottom)\\s+of)";
const excluding =
  "(?:without|zonder|w/o|excl\\.?|excluding|exc\\.?|ex|not\\s+including|not\\s+inc|no|less|minus|before|ohne|sans|sin|zonder|utan)";
const near =
  "[\\s(-]*(?:long|total|overall|uncut|tip\\s+to\\s+butt|butt\\s+to\\s+tip|tip\\s+to\\s+grip|end\\s+to\\s+end|measured|in\\s+length|length)?[\\s(,-]*(?:measured\\s+|length\\s+)?";

const aloneAfter = new RegExp(
  `^${near}(?:${excluding}\\s+${adapter}|bare\\b|raw\\b|shaft\\s+(?:only|alone)|raw\\s+shaft|no\\s+tip\\b)`,
);
const adapterAfter = new RegExp(
  `^${near}(?:${including}\\s+${adapter}|tip\\s+to\\s+butt\\s+(?:with|inc\\w*)\\s+${adapter}|${adapter}\\s+(?:included|inc)\\b|(?:with|w/|inc|incl|including)\\.?\\s+(?:the\\s+)?tip\\b)`,
);
const playingAfter =
  /^[\s(,-]*(?:spiellange|longueur\s+de\s+jeu|playing(?:\s+length)?\b|overall\s+(?:club\s+)?length|club\s+length|total\s+(?:club\s+)?length|finished\s+length|as\s+(?:a\s+)?built|built\b|overall\b)/;
const aloneBefore = new RegExp(
  `(?:${excluding}\\s+${adapter}|bare\\s+shaft|shaft\\s+only|bare|kale(?:\\s+lengte)?|nu|nackt|raw|shaft\\s+alone)(?:\\s+length)?[\\s:(=,-]*(?:it\\s+)?(?:is|measures|measured|of|at|length|shaft|lange|longueur|longitud)?[\\s:(=-]*$`,
);
const adapterBefore = new RegExp(
  `(?:length|measures|measured|measuring|long|lange|longueur|longitud)\\s+${including}\\s+${adapter}[\\s:(=-]*(?:is|of|at|on)?[\\s:(=-]*$|${including}\\s+${adapter}\\s+(?:on\\s+|fitted\\s+)?(?:it\\s+)?(?:is|measures|length)[\\s:(=-]*$`,
);
const playingBefore =
  /(?:plays?|playing|played|built|finished|assembled|overall|club|total)(?:\s+(?:at|to|length|lange|club|club\s+length|about|approx|exactly|just|out|measures|is|of|play|long|spiellange)){0,3}[\s:(=-]*$|spiellange[\s:(=-]*$/;
const uncut = /\b(?:uncut|raw|untrimmed|unopened|full\s+length)\b/;
const noAdapter = new RegExp(`\\b${excluding}\\s+${adapter}\\b|\\badapt[eo]r\\s+removed\\b|\\bbare\\b`);

/** The words of the same line or sentence before a place and after it, a few dozen characters of them. */
function aroundOf(plain: string, start: number, end: number): readonly [string, string] {
  const before = plain.slice(Math.max(0, start - 60), start);
  const after = plain.slice(end, end + 60);
  const cut = Math.max(...["\n", ";", "|", "•", ". ", "! "].map((stop) => before.lastIndexOf(stop)));
  return [
    before.slice(cut + 1),
    after.split(/[\n;|•]|(?<!\b(?:incl?|excl?|inkl|exkl|approx|ca))[.!]\s/, 1)[0] ?? "",
  ];
}

function basisOf(plain: string, start: number, end: number): Basis {
  const [before, after] = aroundOf(plain, start, end);
  if (adapterAfter.test(after)) return "with-adapter";
  if (aloneAfter.test(after)) return "shaft-alone";
  if (adapterBefore.test(before)) return "with-adapter";
  if (aloneBefore.test(before)) return "shaft-alone";
  if (playingAfter.test(after) || playingBefore.test(before)) return "playing";
  return uncut.test(before + after) && noAdapter.test(before + after) ? "shaft-alone" : "unstated";
}

/** Reads lengths of clubs and shafts, and what each was measured over where the words say so. */
export const readLength: FactReader = ({ plain }) =>
  findPhrases(plain, phrases).map(({ value: { lengthIn, doubt }, start, end }) => ({
    field: "length" as const,
    value: { lengthIn, basis: basisOf(plain, start, end) },
    start,
    end,
    ...(doubt === undefined ? {} : { doubt }),
  }));
