import type { CatalogueModel } from "../listing/catalogue.ts";
import type { Want } from "../resolve/result.ts";

/** What to type where listings are searched: any of these phrases, and words that tell a listing is not it. */
export interface SearchWords {
  readonly any: readonly string[];
  readonly without: readonly string[];
}

const mostPhrases = 12;

/** Search phrases for a want, from its interface facts and the names by which the catalogue knows what has them. */
export function searchWords(want: Want, catalogue: readonly CatalogueModel[]): SearchWords {
  const family = ["adapter.family", "socket.family", "family"].flatMap((path) => want.needs[path] ?? [])[0];
  const nouns = nounsOf(want);
  const named = typeof family === "string" ? namesOfFamily(family, want, catalogue) : [];
  const phrases = [
    ...(typeof family === "string"
      ? nouns.flatMap((noun) => [`${family} ${noun}`, `${family} adapter ${noun}`])
      : []),
    ...named.flatMap((name) => nouns.map((noun) => `${name} ${noun}`)),
    ...sizes(want).flatMap((size) => nouns.map((noun) => `${size} ${noun}`)),
  ].map((phrase) => phrase.replace(/\b(\w+) \1\b/giu, "$1"));
  const any = [...new Set(phrases.length > 0 ? phrases : nouns)];
  return { any: any.slice(0, mostPhrases), without: withoutWords(want) };
}

/** What sellers call it: where a want leaves a choice of types, by each of them. */
function nounsOf({ kind, needs }: Want): string[] {
  const types = kind === "shaft" ? needs["suits"] : kind === "head" ? needs["clubType"] : undefined;
  const named = [types].flat().filter((type) => typeof type === "string");
  return named.length > 0 ? named.map((type) => `${type} ${kind}`) : [kind];
}

/** Makers and models whose heads take the family: sellers name the club a shaft came out of, seldom the adapter. */
function namesOfFamily(family: string, { kind }: Want, catalogue: readonly CatalogueModel[]): string[] {
  const models = catalogue.filter(({ adapterFamily }) => adapterFamily === family);
  const heads = models.filter((model) => model.kind === "head" || model.kind === "club");
  const own = kind === "head" ? heads : [...models.filter((model) => model.kind === kind), ...heads];
  return own.flatMap(({ maker, model, aliases }) => [`${maker} ${model}`, ...(aliases ?? [])]);
}

/** A diameter as the trade writes it: .335. */
function sizes({ needs }: Want): string[] {
  const wanted = needs["tip.diameterIn"] ?? needs["bore.diameterIn"] ?? needs["socket.diameterIn"];
  const value = typeof wanted === "object" && wanted !== null && "value" in wanted ? wanted.value : wanted;
  return typeof value === "number" ? [value.toFixed(3).replace(/^0/u, "")] : [];
}

function withoutWords({ kind, needs }: Want): string[] {
  const hand = needs["adapter.hand"] ?? needs["hand"];
  const others = {
    head: ["shaft only", "cover only"],
    shaft: ["head only", "cover only"],
    adapter: ["head only", "cover only"],
    grip: ["head only"],
  }[kind];
  const wrongHand = hand === "right" ? ["left handed", "LH"] : hand === "left" ? ["right handed", "RH"] : [];
  return [...others, ...wrongHand, "wanted"];
}
