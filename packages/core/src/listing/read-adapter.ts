import { type Denial, followDenial } from "./denial.ts";
import type { ListingItem } from "./listing.ts";
import type { FactReader } from "./mention.ts";
import { findPhrases, type Phrase, pattern } from "./phrases.ts";
import { withTypos } from "./typos.ts";

type Said = NonNullable<ListingItem["adapter"]> | "only-if-denied";

const noun = `(?:(?:hosel|shaft|tip|loft)\\s+)?(?:${withTypos("adapter", ["adapted"])}s?|${withTypos("adaptor")}s?|adapt|${withTypos("sleeve", ["sleeved"])}s?|adaptateurs?|adaptador(?:es)?|adattatore|hulse)`;
const naming = "(?:[\\w.'\"-]{1,20}\\s+){0,4}?";
const bringing =
  "(?:w/(?!o\\b)|\\+|inc\\.|incl\\.|inkl\\.|(?:with|c/w|inc|incl|includes|including|included|has|got|plus|mit|inkl|avec|con|med|met|complete\\s+with|comes\\s+with|fitted\\s+with|attached\\s+to)(?![\\w/]))";
const onIt =
  "(?:(?:is|are|already|still|currently)\\s+){0,2}(?:fitted|on\\b(?!\\s+(?:request|offer|sale|order))|attached|installed|included|incl|comes?\\s+with(?!\\s+(?:no|out))|in\\s+place|glued|bonded|epoxied|mounted|montiert|monte|montado|inclus|inklusive|:\\s*yes|yes\\b)";
const off =
  "(?:(?:is|are|has|have|been|was|already)\\s+){0,3}(?:removed|pulled|off\\b|not\\b|missing|sold|gone|taken\\s+off|entfernt|no\\s+longer|:\\s*(?:no|none))";
const wanting =
  "(?:needs?|needing|need|requires?|require|want(?:s|ed|ing)?|wtb|looking\\s+for|after|choice\\s+of|(?<!(?:without|no|have|with)\\s+)any|fits?\\s+(?:all|most|any)|takes?|accepts?|for|suits?|to\\s+suit|can\\s+(?:fit|supply|add|put)|will\\s+(?:need|fit))";

const phrases: readonly Phrase<Said>[] = [
  {
    pattern: pattern`\bsleeves?\s+of\b|\b(?:long|short)[\s-]+sleeved?\b|\bball\s+sleeves?\b|\bgrip\s+sleeves?\b`,
    value: null,
  },
  { pattern: pattern`\bwith(?:\s+or\s+|\s*/\s*)without\s+(?:an?\s+|the\s+)?${naming}${noun}\b`, value: null },
  {
    pattern: pattern`\b${wanting}\s+(?:an?\s+|the\s+|new\s+|different\s+|own\s+|choice\s+of\s+)*${naming}${noun}\b(?!\s*${onIt})`,
    value: null,
  },
  {
    pattern: pattern`\b${noun}\s+(?:can\s+be|could\s+be|available|extra|optional|on\s+request|separate(?:ly)?|sold\s+separate(?:ly)?|of\s+(?:your|any)|if\s+(?:needed|required|wanted))`,
    value: null,
  },
  { pattern: pattern`\b${noun}\s*(?:-\s*)?${off}`, value: "none" },
  {
    pattern: pattern`\b(?:adapterless|unadapted|without\s+tip|no\s+tip|w/o\s+tip|tip\s+removed|adapter\s*:\s*(?:no|none|n)|adapter-?free)\b`,
    value: "none",
  },
  { pattern: pattern`\bbare(?:\s+(?:shaft|length)\b|(?=\s*(?:[,.;)\n]|$)))`, value: "none" },
  { pattern: pattern`(?<![\w'])(?:and|&)\s*(?:an?\s+|the\s+|its\s+)?${noun}\b`, value: "fitted" },
  { pattern: pattern`\b${noun}\s*(?:\(?\s*(?:rh|lh)\)?\s*)?(?:-\s*)?${onIt}`, value: "fitted" },
  {
    pattern: pattern`(?<![\w'])${bringing}\s*(?:an?\s+|the\s+|its\s+|both\s+|original\s+)?${naming}${noun}\b`,
    value: "fitted",
  },
  {
    pattern: pattern`\b(?:with|w/)\s+(?:[a-z]\w*\s+\d?\s*)?(?<at>tip)\s+(?:fitted|on|attached)\b|\b(?:tip)\s+(?:fitted|attached)\b`,
    value: "fitted",
  },
  { pattern: pattern`\b${noun}\b`, value: "only-if-denied" },
];

/** Reads whether an adapter is on a shaft, or comes with a head or a club, where the words say so; the mere word says nothing. */
export const readAdapter: FactReader = ({ plain }) => {
  const found = findPhrases(plain, phrases);
  if (found.length === 0) return [];
  const { isDenied } = followDenial(plain);
  return found.flatMap(({ value, start, end }) => {
    const none = value === "none" || isDenied(start) || isDeniedInside(isDenied, plain, start, end);
    if (value === "only-if-denied" && !none) return [];
    return [{ field: "adapter" as const, value: none ? ("none" as const) : ("fitted" as const), start, end }];
  });
};

function isDeniedInside(isDenied: Denial, plain: string, start: number, end: number): boolean {
  const lastWord = plain.lastIndexOf(" ", end - 1) + 1;
  return lastWord > start && isDenied(lastWord);
}
