import { followDenial } from "./denial.ts";
import type { FactReader } from "./mention.ts";
import { findPhrases, type Phrase, pattern } from "./phrases.ts";
import { withTypos } from "./typos.ts";

const cover = `(?:head\\s*-?\\s*${withTypos("covers", ["cove"])}?|head\\s*-?\\s*${withTypos("cover", ["cove"])}s?|${withTypos("headcover")}s?|hedcovers?|hcover|h\\s?/\\s?c|h\\.c\\.|hc|haube|schlagerhaube|housses?|capuchon|couvre[\\s-](?:club|tete)s?|fundas?|cuffia|hoes(?:je)?|copertura|overtrekk|koelleskjuler|kolleskjuler)`;
const wrench = `(?:torque\\s+(?:wrench|key|tool|spanner)|${withTypos("wrench", ["wench"])}(?:es)?|${withTypos("spanner", ["spanned"])}s?|(?:allen|adjust(?:ment|ing|er)?|adapter|adaptor|loft|hex)\\s+(?:key|tool)|tool|schlussel|drehmomentschlussel|nokkel|nyckel|momentnyckel|skruvnyckel|sleutel|nogle|cle|llave|werkzeug)`;
const plainCover = "(?:club\\s+)?covers?";
const bringing =
  "(?:with|w/|c/w|inc|incl|includes|including|included|plus|and|&|\\+|original|matching|no|without|minus|w/o|missing|has|got|its|their|lost|both|spare|the|or|nor)";

const phrases: readonly Phrase<"cover" | "wrench">[] = [
  {
    pattern: pattern`\b(?:h\s?/\s?c|hc)\s*(?:of\s+|is\s+|:\s*)?\d|\b(?:off|playing\s+off|play\s+off)\s+(?:a\s+)?\d{1,2}\s*(?:h\s?/\s?c|hc)\b`,
    value: null,
  },
  {
    pattern: pattern`\b(?:to|will|would|can|should|must|not)\s+covers?\b|\bcovers?\s+(?:the\s+|my\s+|your\s+)?(?:post|p&p|postage|shipping|cost|costs|fees|it|all|most|everything|half)\b|\bcover\s+(?:photo|letter|price)\b`,
    value: null,
  },
  {
    pattern: pattern`\btools?\s+(?:box|bag|for\s+the\s+job|shed|kit)\b|\b(?:divot|pitch|great|useful|handy|power|regripping|good)\s+tools?\b|\bkey\s+(?:ring|fob|features?|to)\b|\b(?:head\s*-?\s*cover|headcover|wrench|tool)s?\s+(?:is\s+|are\s+)?(?:(?:sold\s+)?separate(?:ly)?|available|extra|can\s+be)\b`,
    value: null,
  },
  { pattern: pattern`(?<![\w']|[^w]/)${cover}(?![\w'])`, value: "cover" },
  { pattern: pattern`(?<![\w']|[^w]/)${wrench}(?![\w'])`, value: "wrench" },
  {
    pattern: pattern`(?<![\w'])(?:with|w/|inc|incl|including|plus|and|&|\+|no|without|the|its|or)\s*(?:the\s+|its\s+|original\s+)?(?<at>key)\b(?!\s+(?:ring|fob|feature|to|is))`,
    value: "wrench",
  },
  {
    pattern: pattern`(?<![\w'])${bringing}\s*(?:the\s+|its\s+|an?\s+|any\s+|original\s+|matching\s+|driver\s+|wood\s+)?(?<at>${plainCover})\b`,
    value: "cover",
  },
  {
    pattern: pattern`(?<at>\b${plainCover})\s*(?:[:=-]\s*(?:yes|no|y|n|none)\b|(?:is\s+|not\s+)*(?:included|incl|missing|supplied|there)\b|(?:and|&|\+)\s+(?:tool|wrench|key|spanner)\b|,?\s+(?:but\s+)?no\s)`,
    value: "cover",
  },
  {
    pattern: pattern`\b(?:driver|wood|fairway|hybrid|rescue|putter|blade|mallet|knitted|leather)\s+(?<at>covers?)\b`,
    value: "cover",
  },
  {
    pattern: pattern`(?<=[,.;|(\n]\s*)(?<at>covers?)(?=\s*(?:[,.;|)\n]|$|yes\b|no\b|for\s+both))`,
    value: "cover",
  },
];

const absentAfter =
  /^\s*(?:[:=-]\s*(?:no|n|none|missing|nein|non)\b|(?:no|none)(?=\s*(?:[,.;)\n]|$))|\(?\s*(?:(?:is|are|has\s+been|was|also|both)\s+)?(?:not|missing|lost|gone|isn't|no\s+longer|long\s+gone|went\s+missing|fehlt|nah|nope|non\s+(?:inclus|fourni|compris)e?|astray|excluded)\b|'s\s+(?:missing|gone))/;
const presentAfter =
  /^\s*(?:[:=-]\s*(?:yes|y|ja|oui|si)\b|(?:(?:is|are|also)\s+)?(?:included|incl|supplied|there|comes|inclus|dabei|thrown)\b)/;

/** Reads whether a head cover or a wrench comes with a thing: `false` only where the words say that it does not. */
export const readExtras: FactReader = ({ plain }) => {
  const found = findPhrases(plain, phrases);
  if (found.length === 0) return [];
  const { isDenied, deny } = followDenial(plain);
  return found.map(({ value: field, start, end }) => {
    const after = plain.slice(end, end + 40);
    const joinedByComma = /,\s*$/.test(plain.slice(Math.max(0, start - 3), start));
    const denied = isDenied(start) && !(joinedByComma && presentAfter.test(after));
    const absent = denied || absentAfter.test(after);
    if (denied) deny(end);
    return { field, value: !absent, start, end };
  });
};
