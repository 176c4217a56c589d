import type { NameFound } from "./find-model.ts";
import { isHeadLike } from "./item-draft.ts";
import type { NounPhrase } from "./item-nouns.ts";

/** How far a maker's name speaks for a name after or before it. */
const makerReach = 40;
/** How far a noun does, with no other sentence between. */
const nounReach = 24;

const apart = (one: { start: number; end: number }, other: { start: number; end: number }) =>
  Math.max(other.start - one.end, one.start - other.end, 0);

function nounSpeaks(plain: string, name: NameFound, phrase: NounPhrase): boolean {
  if (apart(name, phrase) > nounReach) return false;
  const between = plain.slice(Math.min(name.end, phrase.end), Math.max(name.start, phrase.start));
  if (/[.,;:\n!?]/u.test(between) || between.trim().split(/\s+/u).length > 2) return false;
  return name.models.some(
    ({ kind, clubType }) =>
      (isHeadLike(kind) ? isHeadLike(phrase.kind) || phrase.kind === "cover" : kind === phrase.kind) &&
      (!clubType || !phrase.type || clubType === phrase.type),
  );
}

/** Whether a name that could be an everyday word is meant as a name: its maker or its kind of thing stands by it. */
export function isSpokenFor(
  plain: string,
  name: NameFound,
  names: readonly NameFound[],
  phrases: readonly NounPhrase[],
): boolean {
  if (!name.ordinary || name.maker !== null || name.models.length === 0) return true;
  // "Copper coloured wedge" is of a colour, not of a model.
  if (
    /^ ?-?(?:colou?r(?:ed)?|finish|plated|tinted|look|tone)(?![\p{L}])/u.test(
      plain.slice(name.end, name.end + 12),
    )
  )
    return false;
  const makers = new Set(name.models.map(({ maker }) => maker));
  const byMaker = names.some(
    (other) => other.maker !== null && makers.has(other.maker) && apart(name, other) <= makerReach,
  );
  const before = plain.slice(0, name.start).split("\n").at(-1) ?? "";
  const after = plain.slice(name.end).split("\n")[0] ?? "";
  // A line that is nothing but the name.
  if (plain.includes("\n") && before.trim() === "" && after.trim() === "") return true;
  return byMaker || phrases.some((phrase) => nounSpeaks(plain, name, phrase));
}
