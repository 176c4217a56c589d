import type { FactReader } from "./mention.ts";
import { findPhrases, type Phrase, pattern } from "./phrases.ts";

const grams = "(?:grammes?|grams?|gramm|gramos|grammi|grms?|gms?|grs?|g)";
const number = "(?<![\\d.£€$]|\\d,)(?<at>(?<mass>\\d{2,3}(?:[.,]\\d{1,2})?)";
const notShaft =
  "(?:grips?|counter|adapters?|adaptors?|sleeves?|screws?|bolts?|balls?|heads?|headcovers?|weights|weight\\s+(?:screw|port|kit))";

/** Shafts weigh from about 35 g to about 135 g: common practice, no source. Heads of every club weigh more than this, screws less. */
function shaftMass(match: RegExpExecArray): number | null {
  const massG = Number(match.groups?.["mass"]?.replace(",", "."));
  return massG >= 35 && massG <= 140 ? massG : null;
}

const phrases: readonly Phrase<number>[] = [
  { pattern: pattern`(?<![\d.,])\d{1,3}\s?${grams}?\s?(?:-|to|/)\s?\d{2,3}\s?${grams}\b`, value: null },
  { pattern: pattern`${number}\s*-?\s*${grams})\s+(?:rubber\s+|cord\s+)?${notShaft}\b`, value: null },
  {
    pattern: pattern`\b(?:grips?|heads?|adapters?|adaptors?|counterweight|screw|total|club)(?:\s+(?:weight|mass|weighs|weighing|is|of|at|only|about|approx))*\s*[:=-]?\s*${number}\s*${grams})\b(?!\s+(?:shaft|stiff|regular))`,
    value: null,
  },
  { pattern: pattern`${number}\s*-?\s*${grams})(?![\w])`, value: shaftMass },
  {
    pattern: pattern`\bshaft\s+(?:weight|mass)\s*[:=]?\s*${number})(?![\d.,]|\s*[a-z"°%-])`,
    value: shaftMass,
  },
];

/** Reads the mass of a shaft in grams. Two figures without a unit are a model's number, not grams. */
export const readShaftMass: FactReader = ({ plain }) =>
  findPhrases(plain, phrases).map((found) => ({ field: "shaftMassG" as const, ...found }));
