import { firstMatch } from "./phrases.ts";
import type { Words } from "./words.ts";

/** Whether an offer is invited or refused, and the words that say it. */
export interface NegotiableFound {
  readonly value: boolean;
  readonly start: number;
  readonly end: number;
}

const refuses =
  /(?<![\p{L}])(?:no (?:silly |cheeky |low ?ball |lower )?offers?(?! (?:below|under|less))|no (?:low ?balls?(?:ers?|ing)?|haggling|haggle|bartering|negotiat\p{L}+|chancers|time ?wasters or offers)|(?:not|isn'?t|non)[ -]negotiable|not open to offers|not (?:accepting|taking|looking for|interested in) (?:any )?offers|(?:price|prices|it|is|this|they|that)(?: is|'s| are)? (?:strictly |very |all )?(?:firm|fixed)|(?<=\d )(?:is )?firm|firm (?:price|on (?:the )?price|at)|firm on price|fixed price|price fixed|set price|no less|won'?t (?:take|accept) (?:any )?less|will not (?:take|accept) (?:any )?less|don'?t (?:ask|offer) (?:for )?(?:less|lower)|low ?ball(?:s|ers?)? (?:will be )?ignored|festpreis|fix ?preis|preis fest|(?<=[\d€£$] )(?:ferme|fest|fermo|fijo|vast|fast)|vaste prijs|fast pris|prezzo fisso|fest ?preis|fp(?![\p{L}])|nicht verhandelbar|kein(?:e)? (?:vb|verhandlung\p{L}*|preisverhandlung\p{L}*|preisvorschlage)|prix (?:ferme|fixe)|non negociable|pas (?:de negociation|negociable)|no negociable|precio (?:fijo|cerrado)|no se negocia|sin ofertas|no regateo)(?![\p{L}])/gu;

const invites =
  /(?<![\p{L}])(?:o\.?n\.?o\.?|o\.?b\.?o\.?|o\.?v\.?n\.?o\.?|o\.?i\.?r\.?o\.?|o\.?i\.?e\.?o\.?|o\.?v\.?o\.?|or (?:near(?:est)?|best|very near(?:est)?|near by|a near|close(?:st)?|sensible|reasonable)(?: reasonable)? offers?|(?:a|the|any) near(?:est)? offers?|or (?:near|nearest|v near)|or offers?|(?:open to|will consider|would consider|considering|consider(?:s|ed)?|accepting|accept(?:s|ed)?|taking|take|welcome|entertain|inviting|invited|listen to|look at|any|all|sensible|reasonable|serious|best|make(?: (?:me|us))?(?: an?)?(?: sensible| reasonable| fair| decent)?|send(?: me)?(?: an?)?|give me an|hit me with an?|try me with an?|with an?) (?:any |all |some )?(?:sensible |reasonable |serious |fair |decent |realistic )?offers?|offers? (?:over|above|around|about|in (?:the )?region|from|in excess|invited|welcome|considered|accepted|please|wanted|near|starting|over|close|taken)|offers(?= ?(?:$|\n|[.,!?)])))(?![\p{L}])|(?<![\p{L}])(?:neg|negotiable|nego|price (?:is )?(?:slightly |a bit )?(?:neg(?:otiable)?|flexible)|slightly negotiable|flexible on (?:the )?price|room (?:for|to) (?:negotiat\p{L}+|haggle|movement|move)|(?:may|can|could|will|might|happy to|willing to|open to) (?:haggle|negotiat\p{L}+|do a deal|deal)|willing to deal|haggl\p{L}+|make (?:me|us) an offer|vb|v\.b\.|vhb|v\.h\.b\.|verhandelbar|verhandlungsbasis|verhandlungssache|preisvorschl\p{L}+|(?:a|prix a) debattre|debattable|a discuter|negociables?|faire (?:une )?(?:offre|proposition)s?|faire offre|prix negociable|precio negociable|(?:acepto|escucho|admito|se aceptan) (?:ofertas|propuestas)|ofertas|hablable|a convenir|bieden|bod|eller bud|hogstbjudande|trattabil[ei])(?![\p{L}])/gu;

/** Whether the words invite an offer (true) or refuse one (false); null where they say nothing, or both. */
export function readNegotiable({ plain }: Words): NegotiableFound | null {
  const no = firstMatch(plain, refuses);
  const found = no ?? firstMatch(plain, invites);
  if (!found) return null;
  return { value: no === null, start: found.index, end: found.index + found[0].length };
}
