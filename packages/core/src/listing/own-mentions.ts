import type { ItemDraft } from "./item-draft.ts";
import type { ItemsRead } from "./items-state.ts";
import type { Mention } from "./mention.ts";

/** The type and the number of a club that its own noun says count before any others in the words. */
export function ownMentions(
  { type, typeAt, number, numberSaid, loft, quantity, plural }: ItemDraft,
  mentions: readonly Mention[],
  listed: boolean,
): Mention[] {
  const own: Mention[] = [];
  if (type && typeAt) own.push({ field: "clubType", value: type, start: typeAt.start, end: typeAt.end });
  if (number) own.push({ field: "clubNumber", value: number.value, start: number.start, end: number.end });
  if (loft) own.push({ field: "loftDeg", value: loft.value, start: loft.start, end: loft.end });
  const inNoun = mentions.find(
    ({ field, start }) => field === "clubNumber" && typeAt && start >= typeAt.start && start < typeAt.end,
  );
  if (inNoun && !number && !quantity?.insideNoun) own.push(inNoun);
  // "5 wood and 7 wood heads": a number before a plural says a club's number where it is not the first thing named.
  const ofNoun =
    numberSaid !== null &&
    type !== "driver" &&
    type !== "putter" &&
    typeAt &&
    !number &&
    !inNoun &&
    !quantity?.insideNoun &&
    !mentions.some(({ field }) => field === "clubNumber");
  if (ofNoun && (!plural || listed || quantity))
    own.push({ field: "clubNumber", value: numberSaid, start: typeAt.start, end: typeAt.end });
  const numberless = type === "driver" || type === "putter";
  const others = mentions.filter(
    ({ field }) =>
      !(field === "clubNumber" && (number || inNoun)) &&
      !(field === "clubType" && type) &&
      !(field === "loftDeg" && loft) &&
      !(field === "clubNumber" && numberless),
  );
  return [...own, ...others];
}

/** What a thing fits says its type where its own noun does not: "shaft for a driver". */
export function typeOfFit(draft: ItemDraft, { absorbed }: ItemsRead): Mention[] {
  if (draft.type || (draft.kind !== "shaft" && draft.kind !== "cover")) return [];
  const fit = absorbed.find(({ by, type }) => by === draft && type !== null);
  return fit?.type ? [{ field: "clubType", value: fit.type, start: fit.start, end: fit.end }] : [];
}

/** Facts and, for fields that none of them gives, those that are less sure. */
export const withFallbacks = (sure: readonly Mention[], weaker: readonly Mention[]): Mention[] => [
  ...sure,
  ...weaker.filter(({ field }) => !sure.some((other) => other.field === field)),
];
