import type { Postage } from "./listing.ts";
import { firstMatch } from "./phrases.ts";
import type { MoneyFound } from "./read-money.ts";
import type { Words } from "./words.ts";

/** How or for how much the listing is sent, and the words that say it. */
export interface PostageFound {
  readonly value: Postage;
  readonly start: number;
  readonly end: number;
}

const post =
  "(?:p ?(?:&|and|n|\\+) ?p|p\\/p|pp|post(?:age|ing|al)?(?: ?(?:&|and|\\+|\\/) ?(?:packing|packaging|p|insurance))?|shipping|delivery|delivering|courier|carriage|freight|mailing|versand(?:kosten)?|porto|envio|gastos de envio|portes|frais de port|fdp|port|envois?|livraison|expedition|frakt|s ?[/&] ?h|verzendkosten|verzending|verzenden|spedizione)";
const where =
  "(?: (?:in|to|within|for|anywhere|across|on)?(?: ?the)? ?(?:uk|u\\.k\\.|gb|us|usa|conus|ireland|roi|eu|europe|mainland|mainland uk|australia|aus|oz|germany|country|nationwide))?";
const mark = " ?(?:is |are |=|:|-)? ?";

const included = new RegExp(
  `(?<![\\p{L}])(?:free (?:\\p{L}+ ){0,2}${post}|${post}${where}${mark}(?:is |all |fully |already )?(?:inc|incl|inkl|included|including|free|paid|on me|gratis|kostenlos|inklusive|offerte?s?|inclus(?:e|es)?|gratuite?s?|compris(?:e|es)?|incluidos?|gratis|covered|frei|inbegrepen|inbegriffen|inkludert|ingar|inclus|incluso|compresa|comprises?)(?:\\.|(?![\\p{L}]))|(?:inc|incl|includes?|including|inclusive(?: of)?|inkl|inklusive|inklusiv|mit|avec|con|with)\\.? (?:free |of |uk |all |the |tracked |insured |standard |kostenlosem )*${post}|posted(?! (?:on|up|this|before|by|at|in (?:error|wrong)|for|if|out|from|\\d))|shipped(?! (?:by|from|for|if|at|out|\\d))|delivered(?! (?:by|for|if|at|\\d))|shiped|shippd|deliverd|deliverred|price includes (?:uk )?(?:${post})|(?:will|i'?ll|can|happy to) (?:post|ship|send|deliver)(?: it| them)?(?: anywhere)? (?:for )?free|versandkostenfrei|versandfrei|portofrei|franco de port|port compris|envio (?:gratis|incluido|gratuito)|(?:gastos|portes) (?:de envio )?(?:incluidos?|pagados|gratis)|free p&p|free uk ${post}|free (?:tracked|local|mainland|next day|fast|insured) (?:uk )?${post})(?![\\p{L}])`,
  "gu",
);
const extra = new RegExp(
  `(?<![\\p{L}])(?:(?:\\+|plus|add|excl?|ex|exkl|excluding|exclusive of|zzgl|zuzuglich|zuzgl|plus de|mas|hors|\\+ les|ohne)\\.? ?(?:the |any |cost of |uk |your |buyer |die )*(?:${post}|post|ship)|${post}${where}${mark}(?:will be |would be |charged |all |to be |paid |is |are )*(?:at |by |to |on |an? )*(?:extra|additional|on top|cost(?:s)? extra|not inc(?:l|luded|luding)?|not free|cost|cost price|buyer(?:'?s|s')? (?:expense|cost|pays|to pay|account)|(?:the )?buyer|buyer pays|purchaser|(?:at |for )?your (?:own )?(?:cost|expense)|tbc|tba|tbd|to be (?:agreed|arranged|confirmed|added|paid)|you pay|you pay for|at buyers?'? (?:expense|cost)|en sus|en plus|a la charge|a charge|a (?:cargo|cuenta)|aparte|no incluidos?|non compris|non inclus|nicht (?:inklusive|enthalten|inbegriffen)|extra|tragt (?:der )?(?:kaufer|k\\w+)|ubernimmt (?:der )?k\\w+|zu lasten|geht extra|tillkommer|kommer i tillegg|i tillegg|komt erbij|erbij|kommt (?:noch )?(?:dazu|hinzu)|s'ajoutent?|en supplement|se suma|non inclus[ae]|niet inbegrepen|inte inkluderad|ikke inkludert|pays? by buyer|depends|dependent|quoted|on request|at the buyer'?s)|(?:buyer|purchaser|you|kaufer|acheteur|comprador) (?:to )?(?:pays?|covers?|paying|tragt|zahlt|ubernimmt|paie|paga|to cover)(?: for)?(?: the)?(?: cost of)? (?:${post}|post)|(?:can|could|will|would|happy to|able to|i'?ll|may) (?:also )?(?:post|ship|send|deliver|mail|courier)(?: it| them| this| anywhere| out| abroad| within \\w+| to \\w+| if (?:needed|required|you pay|buyer pays)| uk| worldwide)* ?(?:,|-|but)? ?(?:at|for|on|if|with|you|buyer)?(?: the| an?)? ?(?:cost(?! of \\d)|extra(?! \\d)|additional (?:cost|charge)|buyers?'?s? (?:expense|cost)|your (?:expense|cost)|expense|buyer pays|buyer'?s|covers?|pays|pay|charge)|no free ${post}|postage not|not including ${post}|doesn'?t include ${post}|does not include ${post})(?![\\p{L}])`,
  "gu",
);
const collectionOnly =
  /(?<![\p{L}])(?:(?:collection|collected|collect|pick[ -]?up|pickup|local pick ?up|local collection|cash on collection|collection in person|collect in person|buyer (?:to )?collects?|f2f|face to face|local sale) ?(?:only|please only)|only (?:collection|collect|pick[ -]?up|local)|(?:(?<!cash on |or |for |on |oder |bei |und |auch )(?:collection|pick[ -]?up|abholung)|local pick ?up|local pickup|buyer collects|must (?:be collected|collect|pick up)|to be collected|needs collecting|needs to be collected|local sale)(?= ?(?:$|\n|[.,!;)]|from|in|at|-))|must (?:be collected|collect|pick up)|no (?:post(?:age|ing)?|shipping|delivery|posting|p&p)(?! (?:inc|cost|charge|fee))|(?:not|won'?t|will not|cannot|can'?t|can not|don'?t|do not|unable to|sorry no|never) (?:be )?(?:post(?:ing|ed|able)?|ship(?:ping|ped)?|send(?:ing)?|deliver(?:ing|y|ed)?)(?: out)?|a (?:retirer|recuperer|venir chercher) (?:sur place|chez moi)?(?: uniquement| seulement)?|alleen (?:ophalen|afhalen)|(?:ophalen|afhalen) alleen|kun henting|endast (?:upphamtning|hamtning)|maste hamtas|hamtas|solo ritiro|nur (?:abholung|an selbstabholer|selbstabholer|selbstabholung)|nur abholung|selbstabholer|selbstabholung|nur zum abholen|kein(?:en)? versand|abholung nur|a venir chercher|remise en main propre(?: uniquement| seulement)?|main propre (?:uniquement|seulement)|(?:uniquement|seulement) (?:en )?(?:main propre|sur place)|pas d'?envoi|pas de livraison|no (?:hago )?envios?|solo (?:en mano|recogida|trato en mano|en persona)|recogida (?:en mano|en persona)?|solo recogida|entrega en mano)(?![\p{L}])/gu;
/** Sending spoken of as possible: then "collection" is only one of the ways. */
const canPost =
  /(?<![\p{L}])(?:post(?:age|ing)? (?:or|\/|&|and|possible|available|ok|no problem|can be)|(?:or|\/|and|&) ?(?:can |will |could )?(?:post|ship|send|delivery|deliver|shipping|postage|versand|envoi|envio)|(?:can|could|will|would|happy to|i'?ll|able to|may) (?:also )?(?:post|ship|send|deliver|mail)|shipping (?:or|possible|available)|delivery (?:or|possible|available)|versand (?:oder|moglich|auch|und)|abholung oder|collection or|pick ?up or|collect or|envoi possible|livraison possible|envoi ou)(?![\p{L}])/u;

interface Said {
  readonly start: number;
  readonly end: number;
}

const firstOf = (plain: string, pattern: RegExp): Said | null => {
  const match = firstMatch(plain, pattern);
  return match ? { start: match.index, end: match.index + match[0].length } : null;
};

const blanked = (plain: string, pattern: RegExp): string =>
  plain.replace(pattern, (words) => " ".repeat(words.length));

/** How it is sent: an amount wins over a word, "included" over "extra", and collection only where nothing is sent. */
export function readPostage({ plain }: Words, money: readonly MoneyFound[]): PostageFound | null {
  const amount = money.find(({ role, money: sum }) => role === "postage" && sum !== null);
  if (amount?.money) {
    const { start, end } = amount;
    return { value: amount.money.amountMinor === 0 ? "included" : amount.money, start, end };
  }
  const refused = blanked(
    plain,
    /(?<![\p{L}])(?:not|no|never|isn'?t|without) (?:free |incl?\p{L}* )?(?:p&p|post(?:age)?|shipping|delivery|included)(?: (?:inc|incl|included|including|free))?(?![\p{L}])/gu,
  );
  const asked = firstOf(plain, extra);
  const free = firstOf(asked ? blanked(refused, extra) : refused, included);
  if (free) return { value: "included", ...free };
  if (asked) return { value: "extra", ...asked };
  const only = firstOf(plain, collectionOnly);
  if (!only) return null;
  const sure =
    / only|^only|nur |kun |alleen |endast |maste |sur place|solo |uniquement|seulement|^no |n't|not |kein|must|pas d/u.test(
      plain.slice(only.start, only.end),
    );
  return sure || !canPost.test(plain) ? { value: "collection-only", ...only } : null;
}
