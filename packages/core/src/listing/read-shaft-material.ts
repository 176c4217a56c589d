import type { ListingItem } from "./listing.ts";
import type { FactReader } from "./mention.ts";
import { findPhrases, type Phrase, pattern } from "./phrases.ts";
import { withTypos } from "./typos.ts";

type Material = NonNullable<ListingItem["shaftMaterial"]>;

const notShaft =
  "(?:crowns?|soles?|faces?|heads?|body|bodies|composite|footprint|cover|inserts?|club\\s*heads?|cup|wool|brush|spikes?|grey|gray|colou?r|finish|blue|ring|hosel|weights?|toe|plate|back|bodied|faced|headed)";
const fibre = "(?:\\s*-?\\s*fib(?:re|er)s?)?";

const phrases: readonly Phrase<Material>[] = [
  { pattern: pattern`\b(?:multi|mixed)[\s-]*materials?\b`, value: "multi" },
  { pattern: pattern`\b(?:not|no|non)\s+(?:steel|graphite|carbon)\b`, value: null },
  { pattern: pattern`\bsteel\s*-?\s*fib(?:re|er)\b`, value: null },
  {
    pattern: pattern`\bcarbon\s+steel\b(?!\s+shaft)|\b(?:stainless|forged|cast|mild|soft|maraging|milled|edelstahl|tungsten)\s+steel\b(?!\s+shaft)`,
    value: null,
  },
  { pattern: pattern`\b(?:steel|carbon|graphite)${fibre}[\s-]+${notShaft}\b`, value: null },
  {
    pattern: pattern`\b(?:${withTypos("graphite", ["graphics"])}|grafitt?[oe]?|grafiet|grafito|graph|grph)(?:\s*-?\s*(?:schaft|skaft))?s?\b`,
    value: "graphite",
  },
  {
    pattern: pattern`\b(?:carbon|carbono|carbone|karbon|kohlefaser)(?:schaft)?${fibre}\b`,
    value: "graphite",
  },
  {
    pattern: pattern`\b(?:stainless\s+)?(?:steels?|steal(?=\s+shaft)|stel(?=\s+shaft)|steelshafts?|stahl|stahlschaft|stalen|stalskaft|staalskaft|stalskaft|stal|acier|acero|acciaio|staal)\b`,
    value: "steel",
  },
];

/** Reads what a shaft is made of, where the words say so; the steel or carbon of a head says nothing of it. */
export const readShaftMaterial: FactReader = ({ plain }) =>
  findPhrases(plain, phrases).map((found) => ({ field: "shaftMaterial" as const, ...found }));
