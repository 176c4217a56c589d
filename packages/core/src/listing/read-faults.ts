import type { Fault } from "../parts/fault.ts";
import { followDenial } from "./denial.ts";
import { type Damage, damagePhrases } from "./fault-phrases.ts";
import type { FactReader, Mention } from "./mention.ts";
import { type Found, findPhrases } from "./phrases.ts";

type Place = "crown" | "head" | "face" | "shaft" | "grip" | "elsewhere";

const placeWords: ReadonlyMap<string, Place> = new Map(
  (
    [
      ["crown", "crown krone couronne corona top topline paint paintwork lacquer"],
      [
        "head",
        "head heads clubhead sole soleplate toe heel skirt body back cavity rim edge leading schlagerkopf kopf tete cabeza sohle semelle suela base",
      ],
      ["face", "face faces grooves groove schlagflache cara"],
      ["shaft", "shaft shafts schaft schafte manche varilla varillas graphics band label butt tip tips"],
      ["grip", "grip grips"],
      ["elsewhere", "ferrule ferrules cover headcover box medallion badge screw hosel adapter"],
    ] as const
  ).flatMap(([place, words]) => words.split(" ").map((word) => [word, place] as const)),
);
const soleWords = new Set(["sole", "soleplate", "sohle", "semelle", "suela", "base", "back", "cavity"]);

interface Where {
  readonly place: Place;
  readonly word: string;
}

function firstPlace(words: readonly string[]): Where | null {
  const word = words.find((candidate) => placeWords.has(candidate));
  const place = word === undefined ? undefined : placeWords.get(word);
  return word === undefined || place === undefined ? null : { place, word };
}

const stop = /[.;!?\n|•]|\bbut\b|,\s*(?:no|some|small|slight|one|a)\b/;
const prepositions =
  /^\s*(?:(?:only|just|visible|mostly|mainly|marks?|there)\s+)?(?:on|to|in|at|of|near|around|across|along|down|under|above|below|off|from|by|over|auf|an|am|im|in|der|sur|en|sulla?|pa|op|towards)\b/;

/** "Dented shaft", "scuffed crown": the part right behind the word. */
const partBehind = /^\s(?:up\s)?(?:the\s|graphite\s|steel\s)?([a-z]+)\b/;

/** Where the words put a damage: "on the crown" after it, or "crown has", "shaft" before it. */
function whereIs(plain: string, { start, end }: Found<Damage>): Where | null {
  const after = plain.slice(end, end + 60).split(stop, 1)[0] ?? "";
  const behind = /ed$/.test(plain.slice(start, end)) ? partBehind.exec(after)?.[1] : undefined;
  if (behind !== undefined && placeWords.has(behind)) return firstPlace([behind]);
  if (prepositions.test(after)) {
    const found = firstPlace(after.split(/[^a-z]+/).slice(0, 9));
    if (found) return nearShaft(after, found);
  }
  const before =
    plain
      .slice(Math.max(0, start - 40), start)
      .split(/[.;!?\n|•,:]/)
      .at(-1) ?? "";
  return (
    firstPlace(
      before
        .split(/[^a-z]+/)
        .filter((word) => word !== "")
        .slice(-5)
        .reverse(),
    ) ?? listed(after)
  );
}

/** "Paint worn near the grip" is on the shaft: nothing else is near a grip. */
function nearShaft(after: string, found: Where): Where {
  if (
    /^\s*(?:near|by|under|below|above|towards|at\s+the)\b/.test(after) &&
    ["grip", "elsewhere"].includes(found.place)
  )
    return { place: "shaft", word: found.word };
  return /\bshaft\b/.test(after) && found.word !== "shaft" && found.place === "crown"
    ? { place: "shaft", word: "shaft" }
    : found;
}

/** "scratches or chips on the crown": the place stands after the last of a list. */
function listed(after: string): Where | null {
  const list =
    /^(?:\s*(?:,|\/|&|or|nor|and)\s*(?:\w+\s*){1,2}){1,3}\s(?:on|to|in|of)\s+(?:the\s+)?(\w+)/.exec(
      after.slice(0, 50),
    );
  return list ? firstPlace([list[1] ?? ""]) : null;
}

const scratched = new Set<Damage>(["scratch", "chip"]);

/** The fault that a damage is at its place; `null` where the words name a mark that is no fault. */
function faultOf(damage: Damage, where: Where | null): Fault | null {
  const place = where?.place ?? null;
  switch (damage) {
    case "dent":
      return place === "shaft"
        ? "dent-shaft"
        : place === "grip" || place === "elsewhere"
          ? null
          : "dent-head";
    case "scratch":
    case "chip":
    case "scuff":
    case "mark":
      return surfaceFault(damage, where);
    case "wear":
      return place === "face"
        ? "face-wear"
        : place === "shaft"
          ? "paint-wear-shaft"
          : place === "grip"
            ? "grip-worn"
            : null;
    case "paint-wear":
      return place === null || place === "shaft"
        ? "paint-wear-shaft"
        : place === "crown"
          ? "crown-scratch"
          : null;
    case "bag-wear":
      return place === "shaft" ? "paint-wear-shaft" : null;
    case "split":
      return place === "grip" ? "grip-worn" : place === "elsewhere" ? null : place === null ? null : "crack";
    default:
      return damage;
  }
}

function surfaceFault(damage: Damage, where: Where | null): Fault | null {
  if (where?.place === "shaft") return damage === "mark" ? null : "paint-wear-shaft";
  if (where?.place === "crown") return "crown-scratch";
  if (where === null || (where.place === "head" && !soleWords.has(where.word)))
    return scratched.has(damage) ? "crown-scratch" : null;
  return null;
}

const saidNone =
  /^\s*(?:[:=?-]?\s*(?:none|nil|nein|non|nee|nej|keine?|keiner|geen|ingen|aucune?|ninguna?|[:=?-]\s*(?:no|0|zero|n\/a))(?=\s*(?:$|[.,;!|\n)]))|-?\s?free\b(?!\s+(?:post|p&p|delivery|shipping))|\bnone\b)/;
const deniedInside = /\b(?:not|isn't|isnt|aren't|arent|never|hasn't)\b(?! straight)/;
const assertedAfter = /^\s*(?:on|near|at|to|in|visible|an|am|im|auf|unter|sur|en|pa|op)\b/;
const moreOfList = /^[\s\w]{0,30}(?:,[\s\w]{0,30}){0,3}\b(?:or|nor)\b/;

/** "no dents, scratch on the sole": a thing with its own place after a mere comma states itself. */
function statesItself(plain: string, { start, end }: Found<unknown>): boolean {
  const after = plain.slice(end, end + 60);
  return (
    /,\s*$/.test(plain.slice(Math.max(0, start - 4), start)) &&
    assertedAfter.test(after) &&
    !moreOfList.test(after)
  );
}

/** "no rust, grip worn": a thing with what it is after a comma is a statement of its own. */
function isStatement(plain: string, { start, end }: Found<unknown>): boolean {
  return (
    /[,;] ?$/.test(plain.slice(Math.max(0, start - 3), start)) &&
    /^(?:grips?|paint(?:work)?|face|grooves?|shaft|adapter|screw|sleeve)\b.*\b(?:worn|perished|slippy|shiny|smooth|needs?|gone|done|flaking|missing|rubbed|is|are|has|chewed|stripped|bent)\b/.test(
      plain.slice(start, end),
    ) &&
    !/^[^.;\n]{0,20}\b(?:or|nor)\b/.test(plain.slice(end, end + 26))
  );
}

/** What marks are where they are a shaft's and no place is said. */
const faultOfShaft: ReadonlyMap<Damage, Fault> = new Map<Damage, Fault>([
  ["dent", "dent-shaft"],
  ["scratch", "paint-wear-shaft"],
  ["scuff", "paint-wear-shaft"],
  ["chip", "paint-wear-shaft"],
  ["bag-wear", "paint-wear-shaft"],
  ["wear", "paint-wear-shaft"],
]);

/** Reads faults that the words assert or deny; "usual marks" are neither. */
export const readFaults: FactReader = ({ plain }) => {
  const found = findPhrases(plain, damagePhrases);
  if (found.length === 0) return [];
  const { isDenied, deny } = followDenial(plain);
  return found.flatMap((damage): Mention[] => {
    const { start, end } = damage;
    const denied =
      saidNone.test(plain.slice(end, end + 20)) ||
      deniedInside.test(plain.slice(start, end)) ||
      (isDenied(start) && !statesItself(plain, damage) && !isStatement(plain, damage));
    if (denied) deny(end);
    const where = whereIs(plain, damage);
    const fault = faultOf(damage.value, where);
    const onShaft = where === null ? faultOfShaft.get(damage.value) : undefined;
    if (fault !== null)
      return [{ field: "fault", value: fault, denied, start, end, ...(onShaft ? { onShaft } : {}) }];
    return onShaft ? [{ field: "fault", value: onShaft, denied, start, end, onShaft, shaftOnly: true }] : [];
  });
};
