import type { Stretch } from "./clauses.ts";
import type { Intent } from "./listing.ts";

/** To the end of the sentence, or of a few words. */
const sentence = "(?:[^\\n.!?;:]|[.](?=\\d)){0,90}";

/** What is said of things that are not offered: what is asked for in return, what the seller has now. */
const always: readonly RegExp[] = [
  new RegExp(
    `(?<![\\p{L}])(?:(?:or|will|would|might|may|could|can|possible|poss) (?:\\p{L}+ )?)?(?:swaps?|trade|trades|exchange|part[ -]?ex|p\\/x|px|tausch|tausche|echange|cambio) (?:it |them |this |either |only )*(?:for|with|gegen|contre|por|against)(?! sale)(?![\\p{L}])${sentence}`,
    "gu",
  ),
  new RegExp(
    `(?<![\\p{L}])(?:in return|in exchange|(?:i'?m |also |now |am |currently )+(?:looking for|after)(?! (?:£|€|\\$|\\d+ ?(?:quid|euro|pound)))|upgrad(?:ed|ing) to|switch(?:ed|ing) to|mov(?:ed|ing) (?:on |over )?to|gone (?:back )?to|going (?:back )?to|changed to|back to using|treated myself to|now (?:use|using|play|playing|gaming|have))(?![\\p{L}])${sentence}`,
    "gu",
  ),
  /(?<![\p{L}])(?:replaced (?:it |them |this )?(?:with|by)|(?:bought|got|ordered|won) (?:me |myself |him |her )?(?:an? |some |the )?(?:new|newer|another|different|latest)|got fitted for|been fitted for)(?![\p{L}])[^\n.!?;,]{0,50}/gu,
  /(?<![\p{L}])(?:see my other|check (?:out )?my other|look at my other|my other (?:items|ads|listings|clubs)|other (?:items|clubs|heads|shafts|bits) (?:listed|for sale|available)|compatible with|same as|similar to|better than|equivalent to|not the)(?![\p{L}])[^\n.!?;,]{0,60}/gu,
];

/** In an ad for a swap: the sentence that says what is wanted. */
const inSwap: readonly RegExp[] = [
  new RegExp(`(?<=[.!?;\\n] ?)(?:i )?(?:looking for|want(?:ed)?|after|need) ${sentence}`, "gu"),
  new RegExp(
    `(?<![\\p{L}])(?:looking for|after|against|in return for|want(?:ing|ed)?|would like|wants|for|need(?:ing)?|seeking|suche|gegen|cherche|contre|busco|por) (?:an? |any |some |the |ein(?:e|en)? |une? |something )+${sentence}`,
    "gu",
  ),
  // "Trade: … for an Ombrel": what comes behind is wanted.
  new RegExp(
    `(?<=(?:swap|trade|trading|swapping|exchange|wtt|px|part[ -]?ex|tausche|echange|cambio)[^\\n;]{12,160}) (?:for|gegen|contre|por) (?!sale|collection|delivery|each|the pair|both|£|€|\\$|\\d+ ?(?:quid|euro|pound|£|€))${sentence}`,
    "gu",
  ),
];

/** The stretches of the words that speak of things which are not in the listing. */
export function foreignStretches(plain: string, intent: Intent | null): Stretch[] {
  const patterns = [...always, ...(intent === "swap" ? inSwap : [])];
  return patterns.flatMap((pattern) =>
    Array.from(plain.matchAll(pattern), ({ 0: words, index }) => ({
      start: index,
      end: index + words.length,
    })),
  );
}
