import type { Form } from "../parts/part.ts";
import { inFromMm, mmFromIn } from "../units.ts";
import type { FactReader } from "./mention.ts";
import { findPhrases, type Phrase, pattern } from "./phrases.ts";
import { withTypos } from "./typos.ts";

interface Tip {
  readonly diameterIn: number | null;
  readonly form: Form | null;
}

/** The sizes of the trade: .335 and .350 in woods, .355 taper and .370 in irons and hybrids. Common practice, no source. */
const tradeSizesIn = [0.335, 0.35, 0.355, 0.37];
const snapMm = 0.06;

function fromMm(diameterMm: number): number | null {
  const near = tradeSizesIn
    .map((sizeIn) => ({ sizeIn, offMm: Math.abs(mmFromIn(sizeIn) - diameterMm) }))
    .sort((one, other) => one.offMm - other.offMm)[0];
  const diameterIn = near !== undefined && near.offMm <= snapMm ? near.sizeIn : inFromMm(diameterMm);
  return diameterIn >= 0.3 && diameterIn <= 0.42 ? diameterIn : null;
}

/** ".335", "0,335" and "335" are the same size. */
function fromInches(written: string): number | null {
  const diameterIn = Number(`0.${written.replace(/^0?[.,]/, "")}`);
  return diameterIn >= 0.3 && diameterIn <= 0.42 ? diameterIn : null;
}

function formOf(said: string | undefined): Form | null {
  if (said === undefined) return null;
  return said.startsWith("t") || said.startsWith("k") || said.startsWith("con") ? "taper" : "parallel";
}

function tipOf({ groups }: RegExpExecArray): Tip | null {
  const written = groups?.["in"] ?? groups?.["short"];
  const diameterIn =
    written === undefined ? fromMm(Number(groups?.["mm"]?.replace(",", "."))) : fromInches(written);
  return diameterIn === null ? null : { diameterIn, form: formOf(groups?.["before"] ?? groups?.["after"]) };
}

const form = `(?:${withTypos("parallel")}|${withTypos("taper", ["paper"])}(?:ed)?|para|parallele|paralelo|zylindrisch|konisch|conique|conico|tt)`;
const place =
  "(?:tips?|bores?|bored|hosels?|tipped|spitze|pointe|punta|dia(?:meter)?\\.?|diametre|size|od|id)";
const inchSign = "(?:\\s?(?:''|\"|in(?:ch(?:es)?)?\\b(?!\\s+(?:good|great|the|my))))?";
const lead = `(?:(?<before>${form})[\\s,(-]+)?(?:${place}[\\s:=(,-]*){0,3}`;
const trail = `(?:[\\s,)-]*${place}\\b(?!\\s*[:=]?\\s*\\d)){0,2}(?:[\\s,(-]{1,3}(?<after>${form})\\b)?(?:[\\s-]*tip\\b)?`;
const pointed =
  "(?<![\\d.,£€$]|[£€$]\\s)(?<in>0?[.,]3(?:[3-9]\\d|\\d[05])\\d?)(?![\\d%]|[.,]\\d|\\s*(?:gb|eur|€|£|kg|g\\b|m\\b|km))";
const unpointed =
  "(?<![\\d.,£€$#]|[£€$]\\s)(?<in>335|336|340|350|355|370|390|400)(?![\\d%]|[.,]\\d|\\s*(?:cc|cm3|yards?|yds|g\\b|euros?|€|£|quid|cpm|mm))";
const shortPointed = "(?<![\\d.,£€$]|[£€$]\\s)(?<short>0?[.,]3[57])(?!\\d|[.,]\\d)";
const millimetres = "(?<![\\d.,])(?<mm>(?:8|9|10)(?:[.,]\\d{1,2})?)\\s*-?\\s*mm\\b";
const exactMillimetres = "(?<![\\d.,])(?<mm>8[.,]5\\d?|8[.,]9\\d?|9[.,]0\\d?|9[.,]4\\d?)\\s*-?\\s*mm\\b";
const notTip =
  "(?!\\s*(?:ferrules?|wrench|spanner|key|grips?|core|butt|round|ribbed|putter|hex|socket|bolt|screw|thick|wide|long|short|spikes?))";
const notButt = "(?<!\\b(?:butt|grip|core|ferrules?|round)\\s*(?:dia(?:meter)?|size)?\\s*[:=]?\\s*)";

const phrases: readonly Phrase<Tip>[] = [
  {
    pattern: pattern`\bbutt\s*(?:dia(?:meter)?|size|od)?\s*[:=]?\s*0?[.,]?\d{2,3}\b|0?[.,]\d{3}\s*(?:"|in)?\s*(?:butt|ferrules?|core|round|grip)\b`,
    value: null,
  },
  { pattern: pattern`\b${lead}${notButt}${pointed}${inchSign}${notTip}${trail}`, value: tipOf },
  { pattern: pattern`${notButt}${pointed}${inchSign}${notTip}${trail}`, value: tipOf },
  {
    pattern: pattern`(?<![\w])(?:(?<before>${form})[\s,(-]+)?(?:tips?|bores?|hosels?|spitze|pointe|punta|(?:tip|bore|hosel)\s+(?:size|dia(?:meter)?\.?|od|id))[\s:=(-]*(?:is\s+|of\s+)?(?:${unpointed}|${shortPointed})${inchSign}${trail}`,
    value: tipOf,
  },
  {
    pattern: pattern`\b(?<before>${form})[\s,(-]+(?:${unpointed})${inchSign}(?:\s*${place}\b)?`,
    value: tipOf,
  },
  {
    pattern: pattern`(?:${unpointed}|${shortPointed})${inchSign}(?=[\s,(-]*(?:${place}|${form})\b)(?![\s-]*(?:dia|size|od|id)\b)${trail}`,
    value: tipOf,
  },
  {
    pattern: pattern`\b(?:(?<before>${form})[\s,(-]+)?(?:(?:tips?|bores?|hosels?|spitze|pointe|punta|dia(?:meter)?\.?|diametre|durchmesser|spitzendurchmesser|tip-durchmesser)[\s:=(-]*){1,3}(?:is\s+|of\s+|de\s+)?${millimetres}${trail}`,
    value: tipOf,
  },
  {
    pattern: pattern`${millimetres}(?=[\s,(-]*(?:tips?|bores?|hosels?|spitze|pointe|punta|${form})\b)${trail}`,
    value: tipOf,
  },
  { pattern: pattern`${notButt}${exactMillimetres}${notTip}`, value: tipOf },
  {
    pattern: pattern`\b(?<before>${withTypos("parallel")}|${withTypos("taper", ["paper"])}(?:ed)?|konisch|conique)[\s-]*(?:tip|tipped|hosel|bore|spitze)s?\b`,
    value: (match) => ({ diameterIn: null, form: formOf(match.groups?.["before"]) }),
  },
  {
    pattern: pattern`\btips?\s*[:=-]\s*(?<before>${form})\b`,
    value: (match) => ({ diameterIn: null, form: formOf(match.groups?.["before"]) }),
  },
];

/** Reads the size and form of a shaft's tip, or of the bore that takes it. Butts, ferrules and grips have other sizes. */
export const readTip: FactReader = ({ plain }) =>
  findPhrases(plain, phrases).map((found) => ({ field: "tip" as const, ...found }));
