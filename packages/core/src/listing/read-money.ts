import type { Money } from "../parts/part.ts";
import { type Amount, minorOf, readAmounts } from "./read-amounts.ts";
import type { Words } from "./words.ts";

/** What a sum of money in the words is for. */
export type MoneyRole =
  /** For the listing, or for the thing it stands beside. */
  | "asking"
  /** For one of several. */
  | "each"
  /** For all together. */
  | "together"
  | "postage"
  /** What it cost new, cost before, was worth, could be swapped with, …: not what is asked. */
  | "other";

/** A sum of money with what it is for. `money` is null where a price has no currency anywhere in the words. */
export interface MoneyFound {
  /** Whether the words say that this is the price now, after another. */
  readonly now?: boolean;
  /** Whether it is the price of one, should all together be split up. */
  readonly split?: boolean;
  readonly role: MoneyRole;
  readonly units: number;
  readonly money: Money | null;
  readonly start: number;
  readonly end: number;
  /** Why a reader would not be sure, if so. */
  readonly doubt?: string;
}

type RoleCue = readonly [role: MoneyRole, pattern: RegExp];

const postageWord =
  "(?:p ?(?:&|and|n|\\+) ?p|p\\/p|pp|post(?:age|ing|al)?(?: ?(?:&|and) ?pack(?:ing|aging))?|packing|shipping|ship|delivery|deliver|courier|carriage|recorded|tracked|signed for|special delivery|freight|versand(?:kosten)?|porto|envio|gastos(?: de envio)?|portes|frais de port|fdp|port|livraison|expedition|portokosten|frakt|s ?[/&] ?h|s\\+h|envois?|verzendkosten|verzending|verzenden|spedizione|sending)";

/** Words straight before a sum, nearest the sum; looked at in order. */
const cuesBefore: readonly RoleCue[] = [
  [
    "other",
    /(?:rrp|r\.r\.p\.?|msrp|srp|uvp|pvp|list(?:s|ed)?(?: price)?|retail(?:s|ed|ing)?(?: price)?(?: (?:at|for))?|new price|neupreis|np|prix neuf|precio nuevo|(?:cost|costs|costing)(?: (?:me|us|him|her|my \p{L}+|over|about|around|nearly|almost|new|originally|well over))*|paid(?: (?:over|about|around|nearly|almost|nearly))*|payed|(?:bought|purchased|got|picked up)(?: (?:it|them|new|this|back|in|last|from|year|the|\p{L}*shop|store|pro|(?:19|20)\d\d|\p{L}+ (?=(?:19|20)\d\d)))* (?:for|at)|offers? (?:around|about|circa|in the region of)|worth(?: (?:over|about|around|at least|easily))*|valued at|value|(?:sells?|selling|sold|retails?|going|goes|go|went|are|is|were|was) (?:new )?(?:for|at)(?: (?:over|about|around))? new|normally|(?<!\()usually|originally|(?:sell|sells|selling|go|goes|going) (?:elsewhere|new|online|in (?:the )?shops?|on [\p{L} ]{2,14}) (?:for|at)|instead of|rather than|(?:new|shop|original|full) (?:price|cost|for|at)|brand new|stood me at|neu(?:wert)?|statt|au lieu de|antes|save|saving|discount(?: of)?|deposit(?: of)?|spent(?: (?:over|about))?|refund(?:ed)?|insured (?:for|to)|up to|budget(?: (?:of|is|around|about))?|max(?:imum)?(?: (?:of|budget))?|no more than|refused|turned down|offered(?: me)?|was offered|rejected|not worth|fee of|fees?|knock|minus|less|plus cash|cash adjustment) ?[:=]? ?(?:of |about |around |over |nearly |approx\.? |circa |c\.? ?|~ ?|was )?(?:the |an? |new )?$/u,
  ],
  [
    "other",
    /(?:was|were|then|asked|from|van|von|that'?s|makes|comes to|before|previously|originally|vorher|avant|initially|started at|reduced from|down from|dropped from) ?:? ?$/u,
  ],
  [
    "postage",
    new RegExp(
      `(?<![\\p{L}])${postageWord}(?: \\(?(?:is|will be|would be|costs?|kost(?:en)?|coute|cuesta|usually|normally|typically|roughly|even|at|for|of|to (?:uk|ireland|you|mainland|eu)|uk|anywhere|mainland|within the uk|only|approx|about|around|extra|an extra|add|mit|fur|possible|moglich|posible|je|each|per item|pro stuck|\\(\\w+\\))){0,3} ?[:=@+-]? ?(?:of |about |an? |extra )?$`,
      "u",
    ),
  ],
  [
    "postage",
    /(?<![\p{L}])(?:(?:can|could|will|would|happy to|i'?ll|able to) (?:post|ship|send|deliver|mail|courier)(?: (?:it|them|this|anywhere|to \p{L}+|in \p{L}+|within \p{L}+|uk|within the uk))* (?:for|at|@)(?: an?)?(?: (?:extra|additional|about|around))?|(?:post|ship|send)(?:ed)? (?:it |them )?for|sent (?:\p{L}+ )?for|add) ?$/u,
  ],
  [
    "together",
    /(?<![\p{L}])(?:both(?: (?:for|of them|clubs?|heads?|shafts?))*|the (?:pair|lot|set|two|three|four|bundle)|all(?: (?:for|together|in|of them|three|four|five|two|\d+))*|total|in total|everything|job ?lot|bundle|together|as a (?:lot|pair|set|bundle)|zusammen|alles(?: zusammen)?|gesamt|komplett|le tout|les deux|el lote|los dos|todo(?: junto)?|in all|altogether|set) ?(?:is |for |at |price )?[:=@-]? ?(?:for )?$/u,
  ],
  [
    "each",
    /(?<![\p{L}])(?:each|every one|individually|separately|singly|je|jeweils|pro stuck|einzeln|chacun|chaque|la piece|cada uno?|per (?:head|club|shaft|piece|item|grip|one)|a ?piece|apiece) ?(?:for |at |is )?[:=@-]? ?$/u,
  ],
];

/** Words straight after a sum; looked at in order, before those that stand before it. */
const cuesAfter: readonly RoleCue[] = [
  [
    "each",
    /^ ?(?:,-)? ?(?:\/|-)? ?(?:each|ea(?![\p{L}])|e\.a\.|a ?piece|apiece|a pop|per (?:head|club|shaft|piece|item|grip|one|unit|adapter|sleeve|cover|iron|wedge)|every one|p\/?p ea|pro (?:stuck|kopf|schaft)|je(?![\p{L}])|das stuck|die stuck|stuckpreis|(?:la |par )?piece(?![\p{L}])|l'unite|l'un(?![\p{L}])|chacune?|pcs?(?![\p{L}])|cada una?|c\/u|la unidad|por unidad|one each|individually|separately|for (?:one|each)|a head(?![\p{L}])|a (?:shaft|club|grip)(?![\p{L}]))/u,
  ],
  ["together", /^ ?(?:takes (?:it all|the lot|everything|them all|all|both)|l'ensemble|en lot)(?![\p{L}])/u],
  [
    "together",
    /^ ?(?:ono |obo |posted |inc(?:l\.?|luding)? (?:p&p|post(?:age)?) )?(?:for |the |fur )*(?:both|lot|pair|set|bundle|(?<=the |all )(?:two|three|four|five|six|seven|eight|nine|ten)|all(?! over| told| in(?! all))|everything|job ?lot|job lot|together|total|in total|altogether|all in(?! all)|zusammen|alle|alles|komplett|beide|gesamt|le tout|les deux|la paire|le lot|el lote|los dos|todo|ambos|the 2|the 3|all \d)(?![\p{L}])/u,
  ],
  [
    "postage",
    new RegExp(
      `^ ?(?:for |extra |to |fur |de |pour |more (?:for|to) |if |or so |on top )*(?:the |uk |mainland |tracked |signed |insured |standard |recorded |flat )*(?:${postageWord}|posting|to be posted|cover (?:postage|p&p|shipping))(?! ?[:=@-]? ?[£€$]? ?\\d)(?! ?(?:de envio )?(?:is |are )?(?:inc|inkl|mogl|gegen|auch|nach|oder|compris|free|gratis|paid|on top|extra|ok|or|at cost|possible|not|all in|frei|offert|en sus|en plus|zzgl|non |nicht|at |a la charge|a charge|tb[cad]|by |depends|available|only|aparte|to be|poss|a cargo))(?![\\p{L}])`,
      "u",
    ),
  ],
  [
    "other",
    /^ ?(?:\+)? ?(?:rrp|retail(?! ?therapy)|msrp|uvp|pvp|new(?! ?(?:grip|price|\p{L}*low))|brand new|when new|from new|neuf|nueva?|neupreis|np|list price|off(?! ?(?:ers))|discount|deposit|less|cheaper|cash (?:my|your|either|both) way|my way|your way|either way|in the shops?|in shops?|online|originally|for a new one|elsewhere|fees?|new price|worth|voucher|to (?:re)?grip|reshaft|for (?:a |the )?(?:new )?(?:grip|regrip|reshaft|set of)|grip(?![\p{L}])|reduction|budget|max(?:imum)?(?![\p{L}])|tops?(?![\p{L}])|neu(?![\p{L}])|on it|spent)(?![\p{L}])/u,
  ],
];

/** Words by which a bare number is a price. */
const priceBefore =
  /(?<![\p{L}])(?:asking(?: price)?|price(?:d)?(?: (?:at|is|for|now|to))*|now(?: only| just| down to)?|want(?:ing)?|looking for|sell(?:ing)?(?: (?:it|them|both|all))* (?:for|at)|for sale (?:at|for)|yours for|take|o(?:ffers?)?\.?(?: (?:over|above|from|around|in the region of))|oiro|oieo|fp|vb|vhb|preis|festpreis|prix|precio|pido|por|fur|reduced to|down to|dropped to|now at|pay(?:ment)?|bids? (?:from|start(?:ing|s)? at)|starting (?:bid|price|at)|start(?:s|ing)? (?:at|from)|cash|bargain at|steal at) ?[:=@-]? ?$/u;
const priceAfter =
  /^(?:,-)? ?(?:ono|o\.n\.o|obo|o\.b\.o|vb|vhb|fp|festpreis|each|ea|apiece|posted|shipped|delivered|collected|cash|the (?:lot|pair|set|two|three|four|five|six|job lot)|for (?:both|the lot|all|the pair|the set|everything|the two|the three|the four|the five|two|three)|both|or (?:near|best|nearest) offer|inc(?:l|luding|ludes)?\.? (?:p&p|post|delivery|shipping)|plus (?:p&p|post|shipping|delivery)|\+ ?(?:p&p|post|shipping|delivery|ship)|\+ ?[£€$]?\d{1,3}(?:[.,]\d\d)? ?(?:p&p|post|shipping|delivery|postage)|firm|neg(?:otiable)?(?![\p{L}])|on the nose|takes it|gets it|secures|a debattre|negociables?|fixe|cada un|c\/u|pro stuck|zzgl|inkl|je(?![\p{L}]))(?![\p{L}])/u;
/** What shows that a bare number is no price. */
const unitAfter =
  /^ ?(?:°|deg|grad|g(?![\p{L}])|gr(?![\p{L}])|gm|gram|in(?![\p{L}])|inch|"|'|cm|mm|kg|km|cc|cpm|%|iron|wood|w(?![\p{L}])|h(?![\p{L}])|i(?![\p{L}])|hybrid|yds?|yards?|years?|yrs?|months?|weeks?|days?|hours?|rounds?|holes?|times|mins?|minutes?|miles|driver|heads?|shafts?|grips?|clubs?|adapters?|sleeves?|left|available|of|x(?![\p{L}])|handicap|model|jahre?|ans)/u;

/** Crowns of no said country: a price, and of no said currency. */
const crowns = /^(?:,-)? ?(?:kr\.?|kroner|kruna|crowns?)(?![\p{L}])/u;

/** "8 for post", "+ 6 p&p". */
const postedBare =
  /^ ?(?:(?:for|to|extra for) )?(?:post|postage|shipping|p&p|delivery|ship|s\/h)(?: ?(?:$|[.,;)\n])| it)/u;

const reach = 48;

const sameSentence = (words: string) =>
  words.slice(Math.max(words.lastIndexOf("\n"), words.lastIndexOf(". "), words.lastIndexOf("; ")) + 1);

const roleBy = (cues: readonly RoleCue[], words: string): MoneyRole | null =>
  cues.find(([, pattern]) => pattern.test(words))?.[0] ?? null;

const nowBefore =
  /(?<![\p{L}])(?:now(?: only| just| down to| at)?|reduced to|down to|dropped to|jetzt|nu|maintenant|ahora) ?[:=]? ?$/u;

/** Words by which the price of each is that of one sold apart from the rest. */
const splitBefore =
  /(?<![\p{L}])(?:split(?:ting)?|separate(?:ly)?|individually|singly|on (?:its|their) own)(?![\p{L}])[^.\n]*$/u;

const looksLikeYear = (units: number) => Number.isInteger(units) && units >= 1950 && units <= 2099;

interface Placed {
  readonly amount: Amount;
  readonly before: string;
  readonly after: string;
}

function place(plain: string, amounts: readonly Amount[], at: number): Placed {
  const amount = amounts[at] as Amount;
  const earlier = amounts[at - 1]?.currency ? (amounts[at - 1] as Amount).end : 0;
  const before = plain.slice(Math.max(0, amount.start - reach, earlier), amount.start);
  const after = plain.slice(amount.end, amount.end + reach);
  return { amount, before: sameSentence(before), after: after.split("\n")[0] ?? "" };
}

/** Whether a number without a currency is spoken of as money. */
function isPrice({ amount, before, after }: Placed): boolean {
  if (amount.currency !== null || amount.slang || crowns.test(after)) return true;
  if (postedBare.test(after) && amount.units < 60) return true;
  const posted =
    roleBy(cuesBefore, before) === "postage" &&
    /^ ?(?:$|[.,;!)]|extra|to |within|uk|tracked|signed)/u.test(after);
  if (posted && amount.units < 100) return true;
  if (unitAfter.test(after) || amount.units < 1 || amount.units > 20_000) return false;
  if (priceAfter.test(after)) return !looksLikeYear(amount.units);
  const said = priceBefore.exec(before);
  if (said === null || looksLikeYear(amount.units)) return false;
  // "only 5 left" and "now 3 years old" are no prices: vague words need something after the number that ends the thought.
  return (
    !/(?:only|just|now|for|take|want|por|fur|cash|pay) ?$/u.test(said[0]) ||
    /^ ?(?:$|[.,;!)\n]|or |and |plus |\+|ono|obo|but )/u.test(after)
  );
}

const besidesBefore =
  /(?<![\p{L}])(?:adapt[eo]r|sleeve|cover|headcover|wrench|tool|grip|shaft)s? (?:is |are |also )*(?:available|optional|can be (?:added|fitted|supplied|had)|could be (?:added|fitted))(?: separately| as well| too)?(?: for| at|:)? ?(?:an? )?(?<more>(?:extra|additional|another|further) )?$/u;

/** "Adapter available for €15 extra": the price of what could be had besides. */
function isBesides({ before, after }: Placed): boolean {
  const said = besidesBefore.exec(before);
  return (
    said !== null &&
    (said.groups?.["more"] !== undefined || /^ ?(?:extra|more|on top)(?![\p{L}])/u.test(after))
  );
}

/** What a sum is for: the words after it decide first, then those before. */
function roleOf(placed: Placed): MoneyRole {
  const { before, after } = placed;
  if (isBesides(placed)) return "other";
  const late = roleBy(cuesAfter, after);
  const early = roleBy(cuesBefore, before);
  if (late === "each" || late === "together") return early === "postage" ? "postage" : late;
  if (early === "other" && late !== "postage") return "other";
  return late ?? early ?? "asking";
}

const fetched =
  /^ ?(?:if |when )?(?:collect(?:ed|ion)?|picked[ -]up|pick[ -]?up|to collect|cash on collection|abgeholt|bei abholung|opgehaald|en main propre|sur place|en mano)(?![\p{L}])/u;
const sent =
  /^ ?(?:if )?(?:posted|shipped|delivered|sent|inc(?:l\.?|luding)? (?:p&p|post(?:age)?|shipping)|versendet|mit versand|inkl\.? versand|verzonden|envoyee?|port compris|enviado)(?![\p{L}])/u;

/** "€40 collected or €46 posted": the first is the price, and what is between them the postage. */
function sentForMore(found: readonly MoneyFound[], plain: string): MoneyFound[] {
  const near = (pattern: RegExp) =>
    found.find(
      ({ end, role, money }) => role !== "other" && money && pattern.test(plain.slice(end, end + 24)),
    );
  const home = near(fetched);
  const away = near(sent);
  if (!home?.money || !away?.money || home.money.currency !== away.money.currency) return [...found];
  const amountMinor = away.money.amountMinor - home.money.amountMinor;
  if (amountMinor <= 0 || home.role === "postage") return [...found];
  const money = { ...away.money, amountMinor };
  return found.map((one) => (one === away ? { ...one, role: "postage", money } : one));
}

/** Every sum of money in the words with what it is for. A bare price takes the currency of the others. */
export function readMoney(words: Words): MoneyFound[] {
  const amounts = readAmounts(words);
  const placed = amounts.map((_, at) => place(words.plain, amounts, at)).filter(isPrice);
  const currencies = new Set(placed.flatMap(({ amount }) => amount.currency ?? []));
  // "A$90 … or $15 post": a bare dollar is the dollar named in full.
  const dollar = ["AUD", "CAD", "NZD"].find((one) => currencies.has(one));
  if (dollar !== undefined) currencies.delete("USD");
  const shared = currencies.size === 1 ? ([...currencies][0] as string) : null;
  const found = placed.map((one): MoneyFound => {
    const { units, start, end } = one.amount;
    const said = one.amount.currency ?? shared;
    const currency = said === "USD" && dollar !== undefined ? dollar : said;
    const money = currency === null ? null : { amountMinor: minorOf(units, currency), currency };
    const doubt = currency === null ? "A price is given, but not in which currency." : undefined;
    return {
      ...(nowBefore.test(one.before) ? { now: true } : {}),
      ...(splitBefore.test(one.before) ? { split: true } : {}),
      role: roleOf(one),
      units,
      money,
      start,
      end,
      ...(doubt === undefined ? {} : { doubt }),
    };
  });
  return sentForMore(found, words.plain);
}
