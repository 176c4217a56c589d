import type { Intent } from "./listing.ts";
import type { Words } from "./words.ts";

/** An intent and the words that say it. */
export interface IntentFound {
  readonly value: Intent;
  readonly start: number;
  readonly end: number;
}

const wanted = [
  /(?<![\p{L}])(?:wanted|wtb|w\.t\.b\.?|want to buy|wants? to buy|wanting to buy|looking to buy|looking to purchase|buying|iso|in search of|on the hunt for|on the look ?out for|hunting for|searching for|in need of|in the market for|i'?m after|am after|i am after|we'?re after|anyone (?:got|have|selling)|any ?(?:one|body) (?:got|have|selling|with)|has anyone|does anyone have|suche|gesucht|ich suche|kaufgesuch|cherche|je cherche|recherche|je recherche|busco|se busca|compro|cerco|gezocht|op zoek naar|sokes|soker|kopes|onskas)(?![\p{L}])/u,
  /(?:^|\n|[.!?:-] ?|(?:all|folks|lads|guys|everyone|everybody|there|hi|hello|hiya|hey|morning|evening|afternoon|day),? )(?:looking for|after an?|after some|need an?|want an?|will pay|i need an?|i want an?)(?![\p{L}])/u,
  /(?<![\p{L}])(?:i'?m|i am|we are|we're|still|am) (?:looking for|wanting)(?![\p{L}])/u,
] as const;

/** Words with "wanted" that want nothing. */
const notWanted =
  /(?:not|no longer|un)[ -]?wanted|(?:never|not) wanted|wanted for nothing|wanted (?:me|something|to (?:sell|try|like|love|upgrade|change|keep))|offers? wanted|swaps? wanted|(?:i|we|he|she|always|just) wanted|time ?wasters? (?:not )?wanted|looking for (?:a )?(?:new home|quick sale|offers|a sale|(?:around|about|in the region of|circa|approx|roughly|over)? ?(?:[£€$] ?\d|\d+ ?(?:quid|euros?|pounds?|£|€|bucks|dollars|usd|gbp|eur|aud|ono|obo|for |or |[.,!]|$)))/gu;

const swapOffered =
  /(?<![\p{L}])(?:swaps? for|swap my|to swap|for swap|swap only|swaps? only|swap (?:or|\/)|(?:will|would|want to|wanting to|looking to|like to|happy to|can|could) (?:swap|trade|exchange)|straight swap|swapping|swap|trade for|trade my|trade:|trade only|trades? only|trading|wtt|ruilen|ruil mijn|bytes|byter|want to trade|for trade|part[ -]?ex(?:change)?|p\/?x|px|exchange for|in exchange|tausche|zum tausch|tausch gegen|tausch|a echanger|echange|echanger contre|cambio|intercambio|se cambia)(?![\p{L}])/u;

/** A swap spoken of only to be refused or besides a sale. */
const swapAside =
  /(?:no|not? interested in|don'?t want(?: any)?|without|keine?n?|kein|pas d'?|sin|no hago|not looking for(?: any)?) (?:swaps?|trades?|part[ -]?ex(?:change)?|px|p\/x|exchanges?|tausch|echanges?|cambios?)(?: or (?:swaps?|trades?|px|offers))?|(?:swaps?|trades?|part[ -]?ex(?:change)?|p\/x|px)[ ,]*(?:also |may be |might be |will be |is |are )*(?:not|considered|possible|welcome|ok|okay)|no (?:offers|returns|timewasters) or (?:swaps|trades)|tour trade|trade (?:in|price|show|only price)|traded (?:up|in)|no p\/?x|swapped (?:out|the|it|my|to|for)|(?:was|been|got|already) swapped|(?<![\p{L}])(?:might|may|also|or|poss(?:ible|ibly)?|maybe|might|consider|considering|open to) (?:also )?(?:consider |take |be )?(?:an? |some |any )?(?:swaps?|trades?|part[ -]?ex(?:change)?|px|p\/x|exchanges?)(?! for)/gu;

const sells =
  /(?<![\p{L}])(?:for sale|fs|f\/s|selling|sell|sale|wts|verkaufe|zu verkaufen|verkauf|vends|je vends|a vendre|vendo|se vende|en venta|te koop|selger|aangeboden|saljes|saljer|biete|sold as|asking|clear ?out|clearance|price|no swaps)(?![\p{L}])|[£€$]/u;

const blank = (plain: string, pattern: RegExp) => plain.replace(pattern, (words) => " ".repeat(words.length));

function firstOf(plain: string, patterns: readonly RegExp[]): { start: number; end: number } | null {
  const matches = patterns.flatMap((pattern) => {
    const match = pattern.exec(plain);
    return match ? [{ start: match.index, end: match.index + match[0].length }] : [];
  });
  return matches.sort((one, other) => one.start - other.start)[0] ?? null;
}

/**
 * What the writer is after, where the words say it in so many words; a plain description of a thing says nothing here.
 * `pricedAt` is where the first price stands: a swap spoken of behind it is only another way to pay.
 */
export function readIntent({ plain }: Words, pricedAt: number | null = null): IntentFound | null {
  const wants = firstOf(blank(plain, notWanted), wanted);
  const swaps = firstOf(blank(plain, swapAside), [swapOffered]);
  const sell = firstOf(plain, [sells]);
  // "For sale … also looking for a 3 wood": what comes first is the main thing.
  const saleWord = firstOf(plain, [
    /(?<![\p{L}])(?:for sale|selling|wts|verkaufe|zu verkaufen|vends|vendo|se vende)(?![\p{L}])/u,
  ]);
  if (wants && !(saleWord && saleWord.start < wants.start) && !(swaps && swaps.start < wants.start))
    return { value: "wanted", ...wants };
  const sale = Math.min(saleWord?.start ?? plain.length, pricedAt ?? plain.length);
  if (swaps && swaps.start < sale) return { value: "swap", ...swaps };
  return sell ? { value: "sell", ...sell } : null;
}
