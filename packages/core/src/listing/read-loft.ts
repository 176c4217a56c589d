import type { FactReader } from "./mention.ts";
import { figures, figuresOrWords, numberOf } from "./number-words.ts";
import { findPhrases, type Phrase, pattern } from "./phrases.ts";

interface Said {
  readonly loftDeg: number;
  readonly doubt?: string;
}

const sign =
  "(?:°|\\*(?!\\*)|degrees?\\b|degress?\\b|degreees?\\b|degre[a-z]{2,3}\\b|degs?\\b|dgr\\b|grad\\b|degres?\\b|grados?\\b|gradi\\b|graden\\b|grader\\b|graus?\\b)";
const toSign = `\\s*-?\\s*${sign}`;
const notLoft =
  "(?:bounce|lie\\b|upright|flat\\b|flatter|strong|weak|open\\b|closed|torque|of\\s+(?:torque|bounce|adjust|loft\\s+adjust|movement|tilt)|launch|adjust|up\\b|down\\b|either|toe\\s+hang|offset|c\\b|celsius|f\\b|draw|fade|range)";
const before =
  "(?:bounce|lie(?:\\s+angle)?|torque|face\\s+angle|launch(?:\\s+angle)?|attack\\s+angle|tilt|toe\\s+hang|bent|angle)";

/** Lofts of every club lie between these, a driver's the least and a wedge's the most: common practice, no source. */
const loftLeastDeg = 6;
const loftMostDeg = 70;

function loftOf(match: RegExpExecArray): Said | null {
  const loftDeg = numberOf(match.groups?.["at"] ?? "");
  return loftDeg >= loftLeastDeg && loftDeg <= loftMostDeg ? { loftDeg } : null;
}

/** A bare "10.5": the form of a driver's or a fairway wood's loft, and of little else. */
function bareLoft(match: RegExpExecArray): Said | null {
  const said = loftOf(match);
  if (said === null || said.loftDeg > 28 || said.loftDeg < 7) return null;
  return nearClub.test(match.input.slice(Math.max(0, match.index - 60), match.index + 40))
    ? said
    : { ...said, doubt: "This number looks like a loft, but the words do not say so." };
}

const nearClub = /\b(?:driver|wood|fairway|hybrid|rescue|head|loft|rh|lh|right|left|\dw|\dh)\b/;
const unitAfter =
  "(?!\\s*(?:\"|'|%|/\\s?\\d|:\\d|°|€|£|\\$|in\\b(?!\\s+(?:good|great|very|mint|excellent))|ins\\b|inch|cm\\b|mm\\b|m\\b|g\\b|gr\\b|gram|kg\\b|k\\b|lbs?\\b|oz\\b|st\\b|stone|hours?|hrs?|mins?|miles?|km\\b|out\\s+of|euros?|eur\\b|quid|pounds?|gbp|usd|aud|dollars?|bucks|mph|rpm|yards?|weeks?|months?|years?|uk\\b|eu\\b|hcp|h/c|handicap|-\\s?\\d|to\\s+\\d|cpm|ball))";
const notPriced =
  "(?<!(?:£|€|\\$|\\b(?:size|shoes?|uk|eu|asking|for|pay|was|now|of|hcp|handicap|off|eur|usd|gbp|postage|post|p&p|shipping|grip|tip|bounce|lie|plus|from|paid|price|d|c|scored?|rated?|torque|swingweight|length|x|about|minus)\\s*:?\\s{0,9}|[+-]\\s?))";

const wholeEnd = "(?=\\s*(?:[,.;)\\n](?!\\d)|$|rh\\b|lh\\b|right|left\\s+h|lefty|stiff|reg|senior|x-stiff))";

function doubted(match: RegExpExecArray): Said | null {
  const said = loftOf(match);
  return said && { ...said, doubt: "This number looks like a loft, but the words do not say so." };
}

const phrases: readonly Phrase<Said>[] = [
  { pattern: pattern`(?<![\d.,])\d{1,2}(?:[.,]5)?\s*or\s*\d{1,2}(?:[.,]5)?${toSign}`, value: null },
  {
    pattern: pattern`(?<![\d.,])\d{1,2}(?:[.,]5)?\s*(?:or|oder|ou|o|eller|of)\s*\d{1,2}[.,]5(?!\d)`,
    value: null,
  },
  // Ranges of settings, and angles that are no loft.
  {
    pattern: pattern`(?<![\d.,])\d{1,2}(?:[.,]\d{1,2})?\s*(?:${sign}\s*)?(?:-|to|bis|/(?=\s*\d{1,2}(?:[.,]\d)?\s*(?:adjust|range)))\s*\d{1,2}(?:[.,]\d{1,2})?(?:${toSign}|(?=\s*(?:adjustable|adj\b|range|loft|verstellbar|reglable))|(?<=\b(?:adjustable|adj\.?|adjusts?|adjustability|range|setting|settings|verstellbar|reglable|loft)\s*(?:from|of|range|:|loft|von|de|between)?\s*[\d.,]{1,5}\s*(?:-|to|bis)\s*[\d.,]{1,5}))(?!\s*bounce)`,
    value: null,
  },
  { pattern: pattern`(?<![\d.,])(?:\+\s*/?\s*-|±|\+|-/\+)\s*\d{1,2}(?:[.,]\d{1,2})?${toSign}?`, value: null },
  // "14° strong 3 wood" has 14°; "2° strong" is an angle.
  {
    pattern: pattern`(?<at>(?<![\d.,])(?:[89]|[1-5]\d)(?:[.,]\d)?)${toSign}\s*(?:strong|weak)(?=\s+(?:[1-9]\s*-?\s*)?(?:w\b|h\b|wood|fairway|hybrid|driver|rescue|wedge|[pslga]w\b|iron))`,
    value: loftOf,
  },
  // A putter's.
  {
    pattern: pattern`\b(?=loft)(?<=\bputter\b[^\n]{0,90})loft\s*(?:is|of|:|=)?\s*(?<at>[1-6](?:[.,]\d)?)${toSign}`,
    value: (match) => ({ loftDeg: numberOf(match.groups?.["at"] ?? "") }),
  },
  { pattern: pattern`${figures}${toSign}\s*(?:of\s+|x\s+)?${notLoft}`, value: null },
  {
    pattern: pattern`\b${before}\s*(?:is|of|at|:|=|-|angle)?\s*(?:about\s+)?(?:${figures})(?:${toSign})?`,
    value: null,
  },
  {
    pattern: pattern`\b(?:adjust\w*|setting\w*|verstell\w*)\s+(?:by\s+|up\s+to\s+|to\s+|from\s+|down\s+to\s+)?(?:${figures})(?:${toSign})?`,
    value: null,
  },
  { pattern: pattern`(?<at>${figuresOrWords})${toSign}`, value: loftOf },
  {
    pattern: pattern`\bloft\s*(?:is|of|at|angle|:|=|-|\()*\s*(?<at>${figuresOrWords})(?!\s*(?:g\b|mm\b|inch|"|cm\b|-\s?\d|to\s+\d|/\s?\d|adjust))`,
    value: loftOf,
  },
  {
    pattern: pattern`(?<at>${figures})\s*-?\s*loft(?:ed)?\b(?!\s+(?:sleeve|adapter|setting))`,
    value: loftOf,
  },
  // A wedge is called by its loft: "56 wedge", "wedges 52, 56 and 60", "60.10".
  {
    pattern: pattern`(?<![\d.,£€$/-])(?<at>4[4-9]|5\d|6[0-4])(?=(?:\s*(?:,|/|&|and)\s*(?:4[4-9]|5\d|6[0-4])){0,4}\s*-?\s*(?:(?:gap|sand|lob|approach|pitching)\s+)?(?:wedges?|sw|lw|gw|aw|pw)\b)`,
    value: loftOf,
  },
  {
    pattern: pattern`(?<=(?:^|[^£€$\w])(?:4[4-9]|5\d|6[0-4])\s*(?:,|/|&|and)\s*)(?<at>4[4-9]|5\d|6[0-4])(?=(?:\s*(?:,|/|&|and)\s*(?:4[4-9]|5\d|6[0-4])){0,4}\s*-?\s*wedges?\b)`,
    value: loftOf,
  },
  {
    pattern: pattern`\b(?:wedges?|sw|lw|gw|aw|pw)\s*[,:(-]?\s*(?<at>4[4-9]|5\d|6[0-4])(?=\s*[./-]\s*\d{1,2}\b|\s*(?:[,;)|\n]|$)|\s+[a-z&])(?!\s*(?:"|in\b|inch|g\b|gr\b|gram|euro?s?\b|quid|eur\b|pounds|s\b))`,
    value: loftOf,
  },
  {
    pattern: pattern`(?<=\bwedges?\s*[,:(-]?\s*(?:4[4-9]|5\d|6[0-4])(?:\s*(?:,|/|&|and)\s*(?:4[4-9]|5\d|6[0-4])){0,3}\s*(?:,|/|&|and)\s*)(?<at>4[4-9]|5\d|6[0-4])(?![\d.]|\s*(?:euro|quid|"|g\b))`,
    value: loftOf,
  },
  {
    pattern: pattern`(?<![\d.,/])(?<at>4[4-9]|5\d|6[0-4])\s?[./-]\s?(?:0?[4-9]|1[0-6])(?=\s*(?:wedge|sw\b|lw\b|gw\b|aw\b|[smklcvwt]?[\s-]?grind))`,
    value: loftOf,
  },
  // A whole number straight after the club, with nothing it could count or measure after it.
  {
    pattern: pattern`\bdrivers?(?:\s+heads?)?(?:\s+only)?\s*,?\s*(?<at>[89]|1[0-3])${wholeEnd}`,
    value: doubted,
  },
  {
    pattern: pattern`\b[357]\s*-?\s*(?:w|wood)(?:\s+head)?\s*,?\s+(?<at>1[3-9]|2[0-5])${wholeEnd}`,
    value: doubted,
  },
  // A bare number with a half.
  {
    pattern: pattern`${notPriced}(?<![\d.,£€$#+-]|\d\s?/\s?|\w/)(?<at>\d{1,2}(?:[.,]5|\s?½|\s1/2))(?![\d°]|[.,]\d)${unitAfter}`,
    value: bareLoft,
  },
  {
    pattern: pattern`${notPriced}(?<![\d.,/£€$#+-])(?<at>(?:8|9|1\d|2[0-8])[.,]0)(?![\d°]|[.,]\d)${unitAfter}`,
    value: bareLoft,
  },
];

/** Reads the loft of a head. Lies, bounces, ranges of settings, prices and lengths in inches are not lofts. */
export const readLoft: FactReader = ({ plain }) =>
  findPhrases(plain, phrases).map(({ value: { loftDeg, doubt }, start, end }) => ({
    field: "loftDeg" as const,
    value: loftDeg,
    start,
    end,
    ...(doubt === undefined ? {} : { doubt }),
  }));
