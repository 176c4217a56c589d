import type { Fault } from "../parts/fault.ts";
import { type Phrase, pattern } from "./phrases.ts";
import { withTypos } from "./typos.ts";

/** What words name: a fault, or marks and dents whose place decides which fault they are. */
export type Damage =
  | Fault
  | "dent"
  | "scratch"
  | "scuff"
  | "chip"
  | "mark"
  | "wear"
  | "bag-wear"
  | "paint-wear"
  | "split";

const crack =
  "(?:hairlines?(?!\\s+(?:cracks?|cracking|fractures?|scratch\\w*|scuffs?|marks?|fissures?|splits?|dents?|lines?|creases?))|(?:haar)?risse?|(?:haar)?scheur(?:tje)?s?|(?:har)?sprickor|sprekk(?:er)?|revner?|cracks?|cracked|crackd|cracs|craks?|haarrisse?|fractures?|fractured|riss|risse|gerissen|gebrochen|fissures?|fissuree?|felee?|grietas?|agrietad[oa]|crepe|crepa|scheur(?:tje)?s?|spricka|sprickor)";
const scratch = `(?:${withTypos("scratch")}(?:es|ed|s|y)?|scrapes?|scraped|kratzern?|verkratzt|rayures?|raye|aranazos?|araazos|rayaduras?|rayones?|graffi?|kras(?:sen|jes?)?|repor|repa|ripe?r|skrammer|ridser?|eraflures?|griffures?|kratzerchen|schrammen?)`;
const dent =
  "(?:dents?|dints?|dinted|dented|dings?|dinged|dinks?|dinked|dinged-up|dellen?|beulen?|eindellungen|bosses?|chocs?|pocs?|impacts?(?!\\s+(?:tape|sound|feel|area|mark))|coups?(?=\\s+sur)|abolladuras?|golpes?|ammaccatur[ae]|deuk(?:je|en)?s?|bucklor|buckla|bulke?r?|buler?|bosse|enfoncements?|bollos?|dellchen)";
const rattle = `(?:${withTypos("rattle", ["battle", "rattan"])}[sd]?|rattling|rattly|klappern?|klappert|rasselt|rasseln|scheppert|cliquetis|sonajeo|rammelt?)`;
const grip = `(?:${withTypos("grip", ["trip", "grin", "grit", "grid"])}s?|griff|griffe)`;
const worn =
  "(?:worn(?:\\s+(?:out|smooth|down))?|perished|slippy|slippery|shiny|smooth|hard|tatty|split|torn|ripped|shot|gone|past\\s+(?:its|their)\\s+best|done|knackered|finished|dead|abgenutzt|abgegriffen|use|usee?s?|gastad[oa]s?|desgastad[oa]s?|glazed|ropey|sticky|tacky\\s+no\\s+more|poor|bad|due\\s+(?:a\\s+)?chang(?:e|ing)|ready\\s+for\\s+(?:replacing|replacement|changing)|versleten|sliten)";
const replacing =
  "(?:replac(?:ing|ement|ed)|chang(?:ing|ed)|renewing|renewed|a\\s+change|redoing|new\\s+one|doing|a\\s+new\\s+one|swapping)";
const screw =
  "(?:(?:(?:adapter|adaptor|sleeve|hosel)\\s+)?(?:ring|collar|nut)|schraube|vis|skruv|schroef|screw(?:\\s+head)?|bolt(?:\\s+head)?|thread|threads|adapter|adaptor|sleeve)";
const ruined =
  "(?:stripped|chewed(?:\\s+up)?|ausgenudelt|vermurkst|foiree?|dolgedraaid|rounded(?:\\s+off)?|cross[\\s-]?threaded|mangled|damaged|bent|cracked|burred|gouged|split)";
const slightly =
  "(?:\\s+(?:is|are|has|have|been|got|a|bit|little|slightly|badly|quite|very|looks?|look|starting\\s+to\\s+get|getting|pretty|fairly|well|completely|totally|all|now|rather|somewhat|not|isn't|isnt|aren't|arent|never|hasn't)){0,4}";

/** Words that sound like a fault and are none. */
const traps: readonly Phrase<Damage>[] = [
  {
    pattern: pattern`\bcracking\b|\bcrackers?\b|\bcrack\s+(?:on(?!\s+(?:the|its?|crown|face|hosel|toe|heel|sole|shaft|top|head|one|back))|of\s+dawn|at(?!\s+the))\b|\b(?:great|good|nice|decent|fair|excellent|top|super|perfect|mint|grand|lovely|brilliant|ok|okay|bad|in|poor|reasonable|fantastic)\s+nick\b|\bfrom\s+scratch\b|\bscratch\s+(?:golfer|player|handicap|card)\b|\bup\s+to\s+scratch\b|\boff\s+scratch\b|\bscratch\s*-?\s*resistant\b`,
    value: null,
  },
  {
    pattern: pattern`\bchip(?:s|ped|ping|per)?\s+(?:shots?|shotting|and|in\s+(?:from|off)|it)\b|\bchip\s*&|\bchippers?\b|\bchipping\b|\bbargaining\s+chip\b`,
    value: null,
  },
  {
    pattern: pattern`\brusty\s+(?:golfer|swing|player|game|old\s+golfer)\b|\b(?:i'?m|am|bit\s+of\s+a|my\s+\w+\s+is|swing\s+is|game\s+is|getting)\s+(?:a\s+)?(?:bit\s+|little\s+)?rusty\b`,
    value: null,
  },
  {
    pattern: pattern`\b(?:damaged?|damages|broken|lost|dented)\s+(?:in|during)\s+(?:transit|the\s+post|post|shipping|delivery)\b|\bbroken\s+(?:in|my|his|a\s+sweat)\b|\b(?:box|packaging|wrapper|cellophane)\s+(?:is\s+|was\s+|slightly\s+|a\s+bit\s+)*(?:damaged|dented|torn|scuffed|marked)\b|\bdamaged\s+(?:box|packaging)\b|\bdent\s+in\s+(?:the|my|your)\s+(?:wallet|bank|budget)\b`,
    value: null,
  },
  {
    pattern: pattern`\b(?:cracks?|cracked|damaged?|split|scuffed|scuffs?|chips?|chipped|marks?|tears?)\s+(?:on\s+(?:the\s+)?|in\s+(?:the\s+)?)?(?:ferrules?|headcover|head\s*cover|cover|medallion|badge)\b|\bferrules?${slightly}\s+(?:cracked|loose|split|damaged|chipped|scuffed|worn)\b`,
    value: null,
  },
  // "No damage other than one scratch": nothing else is denied by name.
  {
    pattern: pattern`\b(?:damage|marks?|faults?|wear|issues?|defects?)\s+(?:at\s+all\s+)?(?:other\s+than|except|but\s+for|bar)\b`,
    value: null,
  },
  {
    pattern: pattern`\b(?:flat|bent|lie)\s+\d(?:[.,]\d)?\s*(?:°|deg)|\b(?:bent|flat)\s+(?:lie|to\s+\d)\b|\bbent\s+(?:strong|weak|flat|upright)\b`,
    value: null,
  },
  {
    pattern: pattern`\b(?:check(?:ing)?\s+for|in\s+case\s+of|risk\s+of|prone\s+to|could\s+be|might\s+be|may\s+be|not\s+sure\s+(?:if|whether)|don't\s+know\s+if|dont\s+know\s+if|no\s+idea\s+if|see\s+if|if)\s+(?:it\s+|it's\s+|its\s+|there\s+(?:is|are)\s+|any\s+|a\s+|the\s+|head\s+|shaft\s+|is\s+|has\s+)*(?:${crack}|${rattle}|${dent}|bent|damaged|sky\s*-?\s*marks?)`,
    value: null,
  },
  {
    pattern: pattern`\b(?:major|serious|significant|big|heavy|deep)\s+(?:\w+\s+)?(?<at>${scratch}|${dent}|marks?|damage)(?<=\bno\s+(?:major|serious|significant|big|heavy|deep)\s+(?:\w+\s+)?\w+)`,
    value: null,
  },
  {
    pattern: pattern`\b(?:normal|usual|expected|fair|general|typical|standard)\s+(?:\w+\s+)?(?:and\s+\w+\s+)?(?<at>wear|marks?|scuffs?|scratches|chatter|bag\s+(?:wear|chatter|marks?)|face\s+wear)\b`,
    value: null,
  },
];

const faults: readonly Phrase<Damage>[] = [
  {
    pattern: pattern`\b(?:himmels|sky)\s?-?(?:spuren|spur)\b|\bsky\s*-?\s*(?:ball\s+)?(?:marks?|marked|marking|markings|mks?|scratch(?:es)?|scuffs?|scrapes?|chips?|marken)\b|\bskys?mrks?\b|\b(?:been\s+)?sk(?:ied|yed)\b|\bpop\s*-?\s*ups?\s*-?\s*(?:marks?|scratch(?:es)?|scuffs?)\b|\bidiot\s+marks?\b|\bsky-?balled\b`,
    value: "sky-mark",
  },
  {
    pattern: pattern`\b(?:something|bits?|piece|weight|part|glue|epoxy|blob)\s+(?:is\s+|of\s+\w+\s+)?(?:loose|rolling\s+(?:around|about)|moving|rattling)\s*(?:around|about)?\s+(?:inside|in\s+(?:the\s+)?head|within)\b|\bloose\s+(?:bit|piece|glue|epoxy|weight|something)\s+(?:of\s+\w+\s+)?(?:inside|in\s+(?:the\s+)?head)\b|\b${rattle}\b`,
    value: "rattle",
  },
  {
    pattern: pattern`\bcaved(?:[\s-]+in)?(?:\s+face)?\b|\bface${slightly}\s+(?:caved(?:\s+in)?|flat|flattened|sunken|collapsed|gone\s+flat)\b|\b(?:flat|flattened|sunken|collapsed|concave)\s+face\b|\bcave[\s-]in\b|\bflat\s+spots?\s+(?:on|in)\s+(?:the\s+)?face\b|\beingedruckt\b`,
    value: "caved-face",
  },
  {
    pattern: pattern`\b(?:exposed|loose|visible|broken|frayed|fraying)\s+(?:carbon\s+|graphite\s+)?fib(?:re|er)s?\b|\bfib(?:re|er)s?${slightly}\s+(?:exposed|showing|visible|frayed|fraying|coming\s+through|broken)\b|\bsplinter(?:s|ed|ing)?\b|\bshaft${slightly}\s+(?:frayed|fraying)\b|\bdelaminat(?:ed|ing|ion)\b`,
    value: "exposed-fibre",
  },
  {
    pattern: pattern`\b(?:creas(?:e|es|ed)|kink(?:s|ed)?|knick(?:s)?|crimp(?:ed)?)\b`,
    value: "crease-shaft",
  },
  {
    pattern: pattern`\b(?:bent|crooked|warped|krummer|verbogener|tordue?|doblada?)\s+(?:steel\s+|graphite\s+)?(?:shaft|schaft|manche|varilla)\b|\b(?:shaft|schaft|manche|varilla)${slightly}\s+(?:bent|warped|crooked|verbogen|krumm|tordu|doblada)\b|\bbend\s+in\s+(?:the\s+)?shaft\b|\bshaft\s+(?:isn't|not|isnt)\s+straight\b|\b(?:slightly|one|two|three|both|all|is|are|badly)\s+(?:is\s+|are\s+)?bent\b|\bbends?\b(?!\s+(?:point|profile|it|the|them|to))|\bverbogen\b|\b(?:not|isn't|isnt|never|got|is|are|was)\s+bent\b|\bbent(?=\s+(?:a\s+(?:bit|little|touch)|slightly|near|just|below|under|above|in\s+the|at\s+the|about)\b|\s*(?:[,.;)\n]|$))|\b(?:krom|skev|bojd|bojet|courbee?|storto)\b`,
    value: "bent-shaft",
  },
  {
    pattern: pattern`\b(?:rust|rusty|rusted|rusting|rustspots?|rost|verrostet|rostflecken|rostig|rouille|rouillee?|oxido|oxidad[oa]|ruggine|roest|roestig|roestplek(?:ken|jes)?|rostig[ae]?|rostflackar|flugrost|herrumbre|pitting|pitted|corrosion|corroded)(?:\s+(?:spots?|marks?|specks?))?\b`,
    value: "rust",
  },
  {
    pattern: pattern`\b(?:worn|perished|slippy|slippery|shiny|tatty|torn|split|ripped|old\s+worn|shot|knackered|poor|badly\s+worn|abgenutzter|abgenutzte|glazed)\s+(?:old\s+|rubber\s+|cord\s+)?${grip}\b`,
    value: "grip-worn",
  },
  { pattern: pattern`\b${grip}${slightly}\s+${worn}\b`, value: "grip-worn" },
  {
    pattern: pattern`\b${grip}\s+(?:\w+\s+)?(?:wear|worn|needs?\s+(?:to\s+be\s+)?(?:a\s+)?${replacing}|need\s+${replacing}|could\s+do\s+with\s+(?:a\s+)?${replacing}|wants?\s+${replacing}|will\s+need\s+(?:a\s+)?${replacing}|should\s+be\s+${replacing}|has\s+seen\s+better)\b|\bwear\s+(?:on|to|in)\s+(?:the\s+)?${grip}\b`,
    value: "grip-worn",
  },
  {
    pattern: pattern`\b(?:needs?|need|could\s+do\s+with|wants?|requires?|will\s+need|would\s+benefit\s+from|due|could\s+use)\s+(?:a\s+|an\s+|some\s+|fresh\s+|new\s+|re-?){0,3}(?:${grip}|gripping|gripped|regrip(?:ping|ped)?)\b|\bneuer\s+griff\s+(?:notig|erforderlich|noetig)\b|\bgrip\s+a\s+changer\b`,
    value: "grip-worn",
  },
  {
    pattern: pattern`\b${screw}${slightly}\s+${ruined}\b|\b${ruined}\s+(?:grub\s+)?${screw}\b|\b(?:damage|crack|wear|marks?)\s+(?:on|to|in)\s+(?:the\s+)?(?:adapter|adaptor|sleeve|screw|threads?)\b`,
    value: "adapter-damaged",
  },
  {
    pattern: pattern`\b(?:stripped|chewed(?:\s+up)?|cross[\s-]?threaded|rounded\s+off)\b(?!\s+(?:down|back|out|of|from|the|it|all))`,
    value: "adapter-damaged",
  },
  {
    pattern: pattern`\b(?:groove|grooves|face)\s*(?:-\s*)?(?:wear|worn)\b(?!\s+(?:pattern|mark))|\b(?:worn|worn-out|smooth)\s+(?:face|grooves?)\b|\b(?:face|grooves?)${slightly}\s+(?:worn|smooth|shiny|shows?\s+wear|worn\s+out|gone)\b|\bface\s+shows?\s+(?:some\s+|light\s+|a\s+bit\s+of\s+)?wear\b|\brillen\s+abgenutzt\b`,
    value: "face-wear",
  },
  {
    pattern: pattern`\bpaint\s*(?:-\s*)?(?:work\s+)?chip(?:s|ped|ping)?\b|\bchip(?:s|ped)?\s+(?:in|on|to|of|out\s+of)\s+(?:the\s+)?(?:paint|paintwork|lacquer)\b|\black(?:ab)?platzern?\b|\beclats?\s+de\s+peinture\b`,
    value: "chip",
  },
  {
    pattern: pattern`\bshaft\s+(?:\w+\s+)?(?:scuffs?|scuffed|wear|worn|chatter|scratches|scratched|scratch|rub|paint\s+(?:wear|worn|loss))\b`,
    value: "paint-wear-shaft",
  },
  {
    pattern: pattern`\bpaint(?:work)?\s+(?:is\s+|has\s+|a\s+bit\s+|slightly\s+)*(?:worn|wear|loss|rubbed|missing|flaking|coming|gone|lifting|wearing|rub)(?:\s+(?:off|away))?\b|\b(?:worn|flaking|rubbed|missing)\s+paint(?:work)?\b`,
    value: "paint-wear",
  },
  {
    pattern: pattern`\b(?:lackspuren|lackschaden|lackabrieb|abgeriebener\s+lack|peinture\s+(?:usee|abimee|ecaillee)|(?:leger\s+)?frottements?(?:\s+sur\s+la\s+peinture)?|verf\s+(?:is\s+)?(?:af|versleten)|lakskader?|slitage\s+pa\s+(?:lacken|farg(?:en)?)|wear\s+(?:at|on|to)\s+the\s+paint)\b`,
    value: "paint-wear",
  },
  { pattern: pattern`\bbag\s*-?\s*(?:chatter|wear|rub|rash|marks?|scuffs?|scratches)\b`, value: "bag-wear" },
  { pattern: pattern`\b(?:hair\s*-?\s*line\s+)?${crack}\b`, value: "crack" },
  { pattern: pattern`\b${dent}\b`, value: "dent" },
  { pattern: pattern`\b${scratch}\b`, value: "scratch" },
  { pattern: pattern`\b(?:scuffs?|scuffed|scuffing|scuff\s+marks?)\b`, value: "scuff" },
  { pattern: pattern`\b(?:chips?|chipped|nicks?|nicked)\b`, value: "chip" },
  { pattern: pattern`\bmarks?\b|\bmarked\b|\bblemish(?:es)?\b`, value: "mark" },
  {
    pattern: pattern`\b(?:splits?|splitting)\b(?!\s+(?:the|them|up|if|or|from|set|lot|postage|costs?|into))`,
    value: "split",
  },
  {
    pattern: pattern`\bspares\s*(?:or|/|and|&|\+)?\s*(?:for\s+)?(?:repairs?|parts)\b|\bspares?\s*(?:or|/)\s*repairs?\b|\bfor\s+(?:spares|parts(?:\s+only)?)\b|\bbastler\b|\bpour\s+pieces\b`,
    value: "other",
  },
  {
    pattern: pattern`\bwater[\s-]+damaged?\b|\b(?:damaged?|damages|broken|snapped|faulty|defects?|defective|defekt|beschadigt|beschadigungen|schaden|endommagee?|abimee?|casse|cassee|danad[oa]|danos|rot[oa]|kaputt|danneggiat[oa]|danni|beschadigd|skadad|skador)\b`,
    value: "other",
  },
  {
    pattern: pattern`\b(?<!bag\s{1,5}|grip\s{1,5}|normal\s{1,5})wear\b(?!\s+(?:and|it|them|pattern|a\b))`,
    value: "wear",
  },
];

/** Everything that is said of damage, traps first. */
export const damagePhrases: readonly Phrase<Damage>[] = [...traps, ...faults];
