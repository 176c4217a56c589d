import type { FactReader } from "./mention.ts";
import { findPhrases, type Phrase, pattern } from "./phrases.ts";

const year =
  "(?=[12])(?<![\\d£€$.,/+-])(?<![\\d)]\\s)(?<at>(?:19[5-9]\\d|20[0-4]\\d))(?![\\d%°]|[.,/-]\\d|\\s\\d{3})";
const modelWord =
  "(?:model(?!\\s+year\\s+\\d)|models|version|edition|release[sd]?|range|line|generation|gen|modell|modele|modelo|modello)";
const dated =
  "(?:in|since|from|until|till|by|before|after|around|circa|during|of|back|year|may|june|july|spring|summer|autumn|winter|january|february|march|april|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec|early|late|mid|end|code|call|text|tel|phone|number|no|ref|bought|purchased|asking|want|paid|cost|price|offers|gekauft|en|im|seit|depuis|desde|x|for|about|over|under|only|was|now|the)";
const notModel =
  "(?:season|open|masters|when|and|but|or|so|with|in|on|at|is|was|from|for|to|by|as|it|this|that|these|i|used|unused|bought|new|good|great|excellent|mint|condition|rounds?|miles|euro?s?|quid|pounds?|dollars?|usd|gbp|eur|rpm|yards|grams?|g|mm|am|pm|hrs|cc|ono|obo|posted|onwards|purchase|receipt|ryder|world|captain|club\\s+champ|prize|winter|summer|not|have|has|only|selling|collection|pick|calls|after|please|or)";

function yearOf(match: RegExpExecArray): number {
  return Number(match.groups?.["at"]);
}

const phrases: readonly Phrase<number>[] = [
  {
    pattern: pattern`\b(?:model\s+year|modelljahr|baujahr|year(?:\s+of\s+(?:model|release|manufacture))?|annee|ano|jahrgang|arsmodell|my|bouwjaar)\s*(?:is\s+)?[:=-]?\s*${year}`,
    value: yearOf,
  },
  {
    pattern: pattern`\b(?:model|modell|modele|modelo|version|edition|range|released|launched|came\s+out|made|new\s+for|originally\s+from)\s*(?:is\s+|in\s+|of\s+|from\s+|[:=-]\s*|an?\s+)?${year}`,
    value: yearOf,
  },
  { pattern: pattern`${year}(?:'s|\s+season's)?\s*-?\s*(?:\w{1,20}\s+)?${modelWord}\b`, value: yearOf },
  {
    pattern: pattern`(?<!\d)'(?<at>(?<short>[0-4]\d))\s+(?:model|version|edition)\b`,
    value: (match) => 2000 + Number(match.groups?.["short"]),
  },
  {
    pattern: pattern`(?=[12])(?:(?<=^\s*|[\n:;.!|*]\s*|\b(?:a|an|my|selling|my\s+old|sale|sell|original|wtb|wanted)\s+)|(?<!\b${dated}\s{1,9}))${year}(?=\s+[a-z]{3,})(?!\s+${notModel}\b)`,
    value: yearOf,
  },
  { pattern: pattern`(?<=\w\s*)\(${year}(?=\s*(?:\)|model))`, value: yearOf },
  { pattern: pattern`\bthe\s+${year}(?=\s+(?:one|ones|version)\b)`, value: yearOf },
  {
    pattern: pattern`(?<=\b(?:driver|wood|hybrid|irons?|putter|wedges?|heads?|fairway|rescue)\s+)${year}(?=\s*(?:[/|*•,;.)]|\n|$))`,
    value: yearOf,
  },
  // Alone between the bars, stars or commas of a title.
  { pattern: pattern`(?<=[/|*•~,.;]\s*)${year}(?=\s*(?:[/|*•~,;.)]|\n|$))`, value: yearOf },
];

/** Reads the year of a model. A date of purchase or sale, a price and a telephone number are no such year. */
export const readYear: FactReader = ({ plain }) =>
  findPhrases(plain, phrases).map((found) => ({ field: "year" as const, ...found }));
