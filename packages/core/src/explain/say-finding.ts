import { type CitedFact, factKey } from "../findings/cited-fact.ts";
import type { Finding } from "../findings/finding.ts";
import type { CompiledRule } from "../graph/compiled-rule.ts";
import { type Context, placeOfRole } from "../graph/context.ts";
import { citeFact } from "../graph/fact.ts";
import type { RouteFinding } from "../graph/judge-route.ts";
import { engineCodes } from "../graph/judge-rule.ts";
import { partName, plainTeller } from "./plain-teller.ts";

/** A rule's answer as data and as a clause of English; nothing when it fits and there is nothing to say. */
export function findingFrom(judged: RouteFinding, context: Context): Finding | undefined {
  const { compiled, outcome } = judged;
  if (outcome.verdict === "fits" && outcome.code === undefined) return undefined;
  const { rule } = compiled;
  const teller = plainTeller((role) => partInRole(role, context));
  const data = outcome.data ?? {};
  const code = outcome.code ?? engineCodes.missingFact;
  const hint = outcome.code && rule.hint?.[outcome.code]?.(data, teller);
  return {
    rule: rule.id,
    strength: rule.strength,
    verdict: outcome.verdict,
    code,
    data,
    parts: partsOf(compiled, context),
    facts: factsOf(judged, context),
    text: clauseOf(judged, context),
    source: rule.source.at ? `${rule.source.title}, ${rule.source.at}` : rule.source.title,
    ...(hint ? { hint } : {}),
  };
}

function clauseOf({ compiled, outcome, missing }: RouteFinding, context: Context): string {
  const teller = plainTeller((role) => partInRole(role, context));
  if (outcome.code === engineCodes.missingFact) {
    const names = missing.map((name) => `${wordsOf(name)}${ofPart(compiled, name, context)}`);
    return `${names.join(" and ")} ${names.length > 1 ? "are" : "is"} not known`;
  }
  const say = compiled.rule.say[outcome.code ?? ""];
  if (!say) throw new Error(`the rule ${compiled.rule.id} has no words for its code "${outcome.code}"`);
  const clause = say(outcome.data ?? {}, teller);
  if (outcome.verdict !== "unsettled" || missing.length === 0) return clause;
  const usual = missing.length > 1 ? "are what they usually are" : "is what it usually is";
  return `${clause}, if ${missing.map(wordsOf).join(" and ")} ${usual}`;
}

/** Facts whose short name is not what somebody would call them. */
const factWords: Readonly<Record<string, string>> = {
  suits: "intended club type",
  socketType: "kind of socket",
  depthIn: "bore depth",
  bbgmIn: "height of the bore's bottom above the ground",
  aloneLengthIn: "length of the bare shaft",
  receiverFamily: "adapter family",
  adapterFamily: "family",
  holderMassG: "mass of the adapter",
  cgAlongAxisIn: "height of the head's centre of mass",
  cgFromCapIn: "balance point of the grip",
  balanceFromTipIn: "balance point of the shaft",
  balanceFraction: "balance point of the shaft",
};

/** "tipDiameterIn" as "the tip diameter": a name less its unit. */
function wordsOf(name: string): string {
  const bare = name.replace(/(In|G|Deg|Cm3|Cpm)$/, "");
  return `the ${factWords[name] ?? bare.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase()}`;
}

function ofPart(compiled: CompiledRule, name: string, context: Context): string {
  const fact = compiled.needs.find((need) => need.name === name);
  const part = fact && partInRole(fact.role, context);
  return part ? ` of the ${partName(part)}` : "";
}

function partInRole(role: Parameters<typeof placeOfRole>[0], context: Context) {
  const place = placeOfRole(role, context);
  return place && context[place];
}

function partsOf(compiled: CompiledRule, context: Context): string[] {
  const ids = [...compiled.needs, ...compiled.uses].map(({ role }) => partInRole(role, context)?.id);
  return [...new Set(ids.filter((id) => id !== undefined))];
}

/** The facts that an answer rests on: those it names, else all that its rule read. */
export function factsOf({ compiled, outcome }: RouteFinding, context: Context): CitedFact[] {
  const named = [...compiled.needs, ...compiled.uses].filter(
    ({ name }) => outcome.because?.includes(name) ?? true,
  );
  const facts = named.flatMap((fact) => citeFact(fact, context));
  if (compiled.rule.readsClaims) facts.push(...claimsBetween(context));
  return [...new Map(facts.map((fact) => [factKey(fact), fact])).values()];
}

function claimsBetween({ head, adapter, claims }: Context): CitedFact[] {
  const receiver = head?.kind === "head" && head.socket?.type === "receiver" ? head.socket.family : undefined;
  const family = adapter?.kind === "adapter" ? adapter.family : undefined;
  return claims.flatMap((claim, index) =>
    claim.receiver === receiver && claim.adapter === family ? [{ of: "claim" as const, index }] : [],
  );
}
