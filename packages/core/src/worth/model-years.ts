import type { Subject } from "./evidence.ts";

/** Two things of one model whose years lie further apart than this are two models, or two ages. From memory: a model's run in the shops. */
export const yearsApartMax = 2;

/** What the noted prices say together about the years of models. */
export interface ModelYears {
  /** The year of a thing, or of its model; undefined where nobody has said it of the model. */
  readonly yearOf: (key: string | undefined, thing: Subject) => number | undefined;
  /** The name of its model; two ages of one name are two. */
  readonly modelOf: (key: string, thing: Subject) => string;
}

/** Newest stated year of each model. A model that is known without any year has none: then a stated one tells nothing apart. */
export function modelYears(things: readonly { readonly key: string; readonly thing: Subject }[]): ModelYears {
  const newest = new Map<string, number | undefined>();
  for (const { key, thing } of things) {
    const before = newest.get(key);
    newest.set(key, before === undefined ? thing.year : Math.max(before, thing.year ?? before));
  }
  const isOtherAge = (key: string, { year }: Subject) => {
    const known = newest.get(key);
    return known !== undefined && year !== undefined && Math.abs(known - year) > yearsApartMax;
  };
  return {
    yearOf: (key, thing) => {
      if (key === undefined || !newest.has(key)) return thing.year;
      return isOtherAge(key, thing) ? thing.year : newest.get(key);
    },
    modelOf: (key, thing) => (isOtherAge(key, thing) ? `${key} of ${thing.year}` : key),
  };
}
