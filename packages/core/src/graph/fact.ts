import type { CitedFact } from "../findings/cited-fact.ts";
import { type FieldPath, fields } from "../parts/fields.ts";
import type { Part } from "../parts/part.ts";
import { readingFrom, type WrittenReading } from "../parts/reading.ts";
import { typicalReading } from "../parts/typical.ts";
import type { FactPath, FactValue, Role } from "../rules/rule.ts";
import { type Context, placeOfRole } from "./context.ts";
import { type DerivedFact, derivedFacts } from "./derived-facts.ts";
import { goalFact } from "./goal-fact.ts";
import { type Place, places } from "./shape.ts";

/** A fact path taken apart once, so that reading it costs little. */
export interface CompiledFact {
  readonly name: string;
  readonly role: Role;
  readonly path: string;
  readonly mayBeTypical: boolean;
  readonly derived: DerivedFact | undefined;
  /** Where it stands on a part of each place the role can be. */
  readonly at: Partial<
    Record<Place, { readonly keys: readonly string[]; readonly field: FieldPath | undefined }>
  >;
}

export function compileFact(name: string, factPath: FactPath, mayBeTypical: boolean): CompiledFact {
  const dot = factPath.indexOf(".");
  const role = factPath.slice(0, dot) as Role;
  const path = factPath.slice(dot + 1);
  const at: CompiledFact["at"] = {};
  for (const place of placesOf(role)) {
    const own = ownPath(role, path, place);
    at[place] = { keys: own.split("."), field: own in fields ? (own as FieldPath) : undefined };
  }
  return { name, role, path, mayBeTypical, derived: derivedFacts[factPath], at };
}

/** The places that a role can stand for. */
export function placesOf(role: Role): readonly Place[] {
  if (role === "holder") return ["adapter", "head"];
  return places.filter((place) => place === role);
}

/** A holder's bore is the adapter's own bore, or the head's socket. */
function ownPath(role: Role, path: string, place: Place): string {
  return role === "holder" && place === "head" ? path.replace(/^bore\./, "socket.") : path;
}

/** The value as a rule sees it, whether it is only typical, and nothing when it is not known. */
export function readFact(
  fact: CompiledFact,
  context: Context,
): { value: FactValue; typical: boolean } | undefined {
  if (fact.role === "goal") return known(goalFact(fact.path, context).value);
  if (fact.role === "work") return known(context.workSkill);
  if (fact.derived) {
    const reading = fact.derived.compute(context);
    return reading && { value: reading, typical: reading.source === "typical" };
  }
  const place = placeOfRole(fact.role, context);
  const spot = place && fact.at[place];
  const part = place && context[place];
  const raw = spot && part && rawAt(part, spot.keys);
  if (raw !== undefined)
    return { value: spot?.field ? readingFrom(spot.field, raw as WrittenReading) : raw, typical: false };
  return fact.mayBeTypical ? typicalFact(fact, context, place) : undefined;
}

function known(value: FactValue): { value: FactValue; typical: boolean } | undefined {
  return value === undefined ? undefined : { value, typical: false };
}

function typicalFact(fact: CompiledFact, context: Context, filled: Place | undefined) {
  const place = filled ?? (fact.role === "grip" ? "grip" : undefined);
  const spot = place && fact.at[place];
  if (!place || !spot) return undefined;
  const reading = typicalReading(context.typical, context[place] ?? { kind: place }, spot.keys.join("."));
  return reading && { value: reading, typical: true };
}

/** The field of a part by its path, as it was written. */
export function rawAt(part: Part, keys: readonly string[]): unknown {
  let value: unknown = part;
  for (const key of keys) {
    if (typeof value !== "object" || value === null) return undefined;
    value = (value as Record<string, unknown>)[key];
  }
  return value;
}

/** The facts of the bench that this one was read from; none when it is typical or missing. */
export function citeFact(fact: CompiledFact, context: Context): CitedFact[] {
  if (fact.role === "goal") return goalFact(fact.path, context).cites;
  if (fact.derived)
    return fact.derived.rests.flatMap((path) => citeFact(compileFact("", path, false), context));
  const place = placeOfRole(fact.role, context);
  const spot = place && fact.at[place];
  const part = place && context[place];
  if (!spot || !part) return [];
  const value = rawAt(part, spot.keys);
  return value === undefined ? [] : [{ of: "part", part: part.id, field: spot.keys.join("."), value }];
}

/** The same for a fact that no rule has compiled. */
export function citePath(path: FactPath, context: Context): CitedFact[] {
  return citeFact(compileFact("", path, false), context);
}

/** Where a fact stands or would stand, so that it can be asked for. */
export function citeSpot(fact: CompiledFact, context: Context): { part: string; field: string } | undefined {
  if (fact.derived) return firstMissingSpot(fact.derived, context);
  const place = placeOfRole(fact.role, context);
  const spot = place && fact.at[place];
  const part = place && context[place];
  return spot && part ? { part: part.id, field: spot.keys.join(".") } : undefined;
}

/** Of the facts to ask for behind a derived one, the first that its part lacks; else the first of all. */
function firstMissingSpot(
  derived: DerivedFact,
  context: Context,
): { part: string; field: string } | undefined {
  const facts = derived.asks(context).map((path) => compileFact("", path, false));
  const spots = facts.flatMap((each) => citeSpot(each, context) ?? []);
  const missing = facts.find((each) => citeSpot(each, context) && citeFact(each, context).length === 0);
  return (missing && citeSpot(missing, context)) ?? spots[0];
}
