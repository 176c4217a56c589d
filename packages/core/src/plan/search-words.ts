import type { CatalogueModel } from "../listing/catalogue.ts";
import type { Want } from "../resolve/result.ts";

/** What to type where listings are searched: any of these phrases, and words that tell a listing is not it. */
export interface SearchWords {
  readonly any: readonly string[];
  readonly without: readonly string[];
}

const mostPhrases = 12;

/**
 * Search phrases for a want as sellers write them, from its interface facts and the names by which the catalogue knows what has
 * them: first the family, then the models that take it, then the sizes.
 */
export function searchWords(want: Want, catalogue: readonly CatalogueModel[]): SearchWords {
  const family = ["adapter.family", "socket.family", "family"].flatMap((path) => want.needs[path] ?? [])[0];
  const nouns = nounsOf(want);
  const phrases = [
    ...(typeof family === "string" ? ofFamily(family, want, nouns) : []),
    ...(typeof family === "string" ? namesOfFamily(family, want, catalogue) : []).flatMap((name) =>
      nouns.map((noun) => `${name} ${noun}`),
    ),
    ...sizes(want).flatMap((size) => nouns.map((noun) => `${size} ${noun}`)),
  ].map(withoutDoubles);
  const any = [...new Set(phrases.length > 0 ? phrases : nouns)];
  return { any: any.slice(0, mostPhrases), without: withoutWords(want) };
}

/** A shaft is told by the adapter that is on it: "driver shaft with Quillon 2 adapter", and by the family alone. */
function ofFamily(family: string, { kind }: Want, nouns: readonly string[]): string[] {
  const plain = nouns.map((noun) => `${family} ${noun}`);
  return kind === "shaft" ? [...plain, ...nouns.map((noun) => `${noun} with ${family} adapter`)] : plain;
}

/** No word twice in a row, where a model's name ends in what comes next. */
const withoutDoubles = (phrase: string) => phrase.replace(/\b(\w+) \1\b/giu, "$1");

/** A wood's shaft is sold for the club it was in: most are of drivers. */
const shaftNouns: Readonly<Record<string, readonly string[]>> = {
  wood: ["driver shaft", "fairway shaft", "wood shaft"],
};

/** What sellers call it: where a want leaves a choice of types, by each of them. Adapters are called sleeves as often. */
function nounsOf({ kind, needs }: Want): string[] {
  if (kind === "adapter") return ["adapter", "sleeve"];
  const types = kind === "shaft" ? needs["suits"] : kind === "head" ? needs["clubType"] : undefined;
  const named = [types].flat().filter((type) => typeof type === "string");
  if (named.length === 0) return [kind];
  return named.flatMap((type) => (kind === "shaft" && shaftNouns[type]) || [`${type} ${kind}`]);
}

/** Makers and models whose heads take the family: sellers name the club a shaft came out of, seldom the adapter. */
function namesOfFamily(
  family: string,
  { kind, needs }: Want,
  catalogue: readonly CatalogueModel[],
): string[] {
  const types = [needs["clubType"]].flat();
  const models = catalogue.filter(
    ({ adapterFamily, clubType }) =>
      adapterFamily === family && (types[0] === undefined || !clubType || types.includes(clubType)),
  );
  const heads = models.filter((model) => model.kind === "head" || model.kind === "club");
  const own = kind === "head" ? heads : [...models.filter((model) => model.kind === kind), ...heads];
  return own.flatMap(({ maker, model, aliases }) => [`${maker} ${model}`, ...(aliases ?? [])]);
}

/** A diameter as the trade writes it: .335. */
function sizes({ needs }: Want): string[] {
  const fields = ["tip.diameterIn", "bore.diameterIn", "socket.diameterIn", "coreDiameterIn"];
  const wanted = fields.flatMap((field) => needs[field] ?? [])[0];
  const value = typeof wanted === "object" && wanted !== null && "value" in wanted ? wanted.value : wanted;
  return typeof value === "number" ? [value.toFixed(3).replace(/^0/u, "")] : [];
}

/** What goes with a part and is sold alone under the same names. */
const othersAlone = {
  head: ["shaft only", "headcover only", "no head"],
  shaft: ["head only", "headcover only", "no shaft"],
  adapter: ["head only", "no adapter"],
  grip: ["head only", "no grip"],
} as const;

const wrongHand = {
  right: ["left handed", "left hand", "LH"],
  left: ["right handed", "right hand", "RH"],
} as const;

function withoutWords({ kind, needs }: Want): string[] {
  const hand = needs["adapter.hand"] ?? needs["hand"];
  const others = hand === "right" || hand === "left" ? wrongHand[hand] : [];
  return [...othersAlone[kind], ...others, "wanted"];
}
