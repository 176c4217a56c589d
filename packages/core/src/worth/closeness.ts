import type { Subject } from "./evidence.ts";
import { yearsApartMax } from "./model-years.ts";
import type { EvidenceWeight } from "./resale.ts";

export type Closeness = EvidenceWeight["closeness"];

const plain = (words: string) => words.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "");

/** Both known and not the same. What is not known differs from nothing. */
function differ<T>(one: T | undefined, other: T | undefined): boolean {
  return one !== undefined && other !== undefined && one !== other;
}

function yearsAgree(one: Subject, other: Subject): boolean | undefined {
  if (one.year === undefined || other.year === undefined) return undefined;
  return Math.abs(one.year - other.year) <= yearsApartMax;
}

/** Of a club's number: a set has the first and the last of its clubs in it. */
export const isSet = (clubNumber: string) => clubNumber.includes("-");

/** A set costs many times what one club does, so its price says nothing about one. */
function oneIsSet(one: Subject, other: Subject): boolean {
  if (one.clubNumber === undefined || other.clubNumber === undefined) return false;
  return isSet(one.clubNumber) !== isSet(other.clubNumber);
}

const number = (subject: Subject) => subject.clubNumber?.trim().toUpperCase();

/** On a shaft, drivers and fairway woods take the same ones. */
export function typeOf(subject: Subject): Subject["clubType"] {
  return subject.kind === "shaft" && subject.clubType === "fairway" ? "driver" : subject.clubType;
}

/** Things whose prices have to do with each other: heads with the clubs they make, sets apart. */
export function marketOf({ kind, clubNumber }: Subject): string {
  if (kind !== "head" && kind !== "club") return kind;
  return clubNumber !== undefined && isSet(clubNumber) ? "set" : "club";
}

/** Maker and model in plain letters; undefined where the model is not known. */
export function modelWords(subject: Subject): string | undefined {
  return subject.model === undefined ? undefined : `${plain(subject.maker ?? "")} ${plain(subject.model)}`;
}

function isSameModel(one: Subject, other: Subject): boolean {
  if (yearsAgree(one, other) === false) return false;
  if (one.modelId !== undefined && other.modelId !== undefined) return one.modelId === other.modelId;
  const words = modelWords(one);
  return words !== undefined && words === modelWords(other);
}

/** Whether a different market pays for it: the other hand, an adapter on the tip or none, an adapter of another family. */
function isOtherMarket(one: Subject, other: Subject): boolean {
  const adapterMatters = one.kind === "adapter" || one.kind === "shaft" || one.kind === "wrench";
  return (
    differ(one.hand, other.hand) ||
    differ(one.adapter, other.adapter) ||
    (adapterMatters && differ(one.adapterFamily, other.adapterFamily))
  );
}

/**
 * How close one thing is to another, in the words of a resale estimate; null where the price of the one says nothing about the
 * other. A fact that either does not have tells nothing apart.
 */
export function closenessOf(subject: Subject, other: Subject): Closeness | null {
  if (subject.kind !== other.kind || differ(typeOf(subject), typeOf(other)) || oneIsSet(subject, other))
    return null;
  const sameModel = isSameModel(subject, other);
  if (isOtherMarket(subject, other))
    return sameModel ? "same-class" : differ(subject.hand, other.hand) ? null : "same-class";
  if (sameModel && differ(number(subject), number(other))) return "same-class-and-age";
  if (sameModel) return isSameCondition(subject, other) ? "same-model-and-condition" : "same-model";
  return yearsAgree(subject, other) ? "same-class-and-age" : "same-class";
}

function isSameCondition(one: Subject, other: Subject): boolean {
  return one.condition !== undefined && one.condition === other.condition;
}
