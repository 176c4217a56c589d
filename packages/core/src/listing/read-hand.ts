import type { Hand } from "../parts/part.ts";
import type { FactReader } from "./mention.ts";
import { findPhrases, type Phrase, pattern } from "./phrases.ts";
import { withTypos } from "./typos.ts";

const right = `(?:${withTypos("right", ["rigid"])}|rgt|rite|rt|wright)`;
const left = withTypos("left", ["life", "lets"]);
const handed = `(?:${withTypos("handed", ["handle", "hundred"])}|hand(?:er|ers|ad)?|hnd|hd|handig|handers)`;
const person = "(?:mens?|men's|gents?'?|ladies'?|lady's|womens?|women's|adults?|juniors?|seniors?)";
const notTheClub =
  "(?:not|non|never|no|i'?m|i am|he'?s|he is|she'?s|she is|(?:son|daughter|wife|husband|partner|dad) is|gone|going|turned|switch(?:ed|ing) to|chang(?:ed|ing) to|now play|i play|playing)";
const place =
  "(?:sides?|edge|corner|pic|pics|picture|photo|column|drive|panel|thread|door|bend|lane|image|settings?)";

const phrases: readonly Phrase<Hand>[] = [
  { pattern: pattern`\b(?:${right}|${left})[\s-]*hand(?:ed)?\s+(?:\w+\s+)?${place}\b`, value: null },
  {
    pattern: pattern`\b${notTheClub}\s+(?:an?\s+|for\s+)?(?:${left}[\s-]*${handed}|lh|leftie|lefty|${right}[\s-]*${handed}|rh)\b`,
    value: null,
  },
  { pattern: pattern`\b${right}[\s-]*${handed}\b`, value: "right" },
  { pattern: pattern`\b${left}[\s-]*${handed}\b`, value: "left" },
  {
    pattern: pattern`(?<![\w'&]|(?:^|\W)\w{0,2}/)(?:rh|rhd|rhg|r\.\s?h\.?|r\s?[/-]\s?h|rhand|r-hand(?:ed)?|r\s+handed|righty|righties)(?![\w'&])`,
    value: "right",
  },
  {
    pattern: pattern`(?<![\w'&]|(?:^|\W)\w{0,2}/)(?:lh|lhd|lhg|l\.\s?h\.?|l\s?[/-]\s?h|lhand|l-hand(?:ed)?|l\s+handed|lefty|lefties|lefthander|leftie)(?![\w'&])`,
    value: "left",
  },
  {
    pattern: pattern`\b(?:cack|caggy|cacky|corrie|corry|kack)[\s-]*(?:handed|hander|fisted)\b|\bmolly[\s-]?dook(?:er)?\b|\bsouthpaw\b|\bciotog\b|\bkithogue\b`,
    value: "left",
  },
  {
    pattern: pattern`\b(?:hand|handed|dexterity|orientation|handedness|hand\s+orientation|ausfuhrung|main|mano)\s*[:=-]?\s*(?<at>right|rechts|droite|derecha|destra|r)\b`,
    value: "right",
  },
  {
    pattern: pattern`\b(?:hand|handed|dexterity|orientation|handedness|hand\s+orientation|ausfuhrung|main|mano)\s*[:=-]?\s*(?<at>left|links|gauche|izquierda|sinistra|zurda|l)\b`,
    value: "left",
  },
  {
    pattern: pattern`\b${person}\s+(?<at>right)\b(?!\s+(?:now|price|size|place|club|home|person|one|choice))`,
    value: "right",
  },
  { pattern: pattern`\b${person}\s+(?<at>left)\b(?!\s+(?:in|the|it|at|on|over|behind))`, value: "left" },
  {
    pattern: pattern`\b(?:rechtshand(?:er|ed|ausfuhrung)?|rechtshaender|rechtshandig|droitiers?|droitieres?|diestr[oa]s?|destros?|hogerhand|hogerfattad|hogerhant|hogerspelare|hogre|hoger|hoyre(?:handet|hendt)?|hojre(?:handet)?|right[\s-]+shot|shoots\s+right)\b`,
    value: "right",
  },
  {
    pattern: pattern`\b(?:linkshand(?:er|ed|ausfuhrung)?|linkshaender|linkshandig|gauchers?|gaucheres?|zurd[oa]s?|mancin[oi]|vansterhand|vansterfattad|vansterhant|vanster|venstre(?:handet|hendt)?|left[\s-]+shot|shoots\s+left)\b`,
    value: "left",
  },
  { pattern: pattern`[\w"°½)]\s*[,;/|]\s*(?<at>right)\s*(?=[,;/|.)\n]|$)`, value: "right" },
  { pattern: pattern`[\w"°½)]\s*[,;/|]\s*(?<at>left)\s*(?=[,;/|.)\n]|$)`, value: "left" },
];

/** Reads which hand a club is for. A side of a head, a player's own hand and "3 left" say nothing of it. */
export const readHand: FactReader = ({ plain }) =>
  findPhrases(plain, phrases).map((found) => ({ field: "hand" as const, ...found }));
