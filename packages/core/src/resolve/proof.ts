import { factsOf, findingFrom } from "../explain/say-finding.ts";
import { sayProof } from "../explain/say-proof.ts";
import { type CitedFact, factKey } from "../findings/cited-fact.ts";
import type { Finding } from "../findings/finding.ts";
import type { BenchGraph } from "../graph/bench-graph.ts";
import type { Context } from "../graph/context.ts";
import { citePath } from "../graph/fact.ts";
import { anyRefuses, judgeRoute, type RouteFinding, workRow } from "../graph/judge-route.ts";
import { contextOf } from "../graph/route.ts";
import { places } from "../graph/shape.ts";
import { skills } from "../parts/goal.ts";
import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import { typicalConditions } from "../parts/typical.ts";
import { keepOnly } from "./keep-only.ts";
import { openOptions, type PairOption } from "./pair-options.ts";
import { type KnownProofs, proofKey } from "./proof-key.ts";
import type { NearMiss } from "./result.ts";

/** Why each option of a pair is refused, judged afresh from the parts as they are. */
function refusalsOf(
  head: Part,
  shaft: Part,
  graph: BenchGraph,
): { option: PairOption; findings: RouteFinding[] }[] {
  return openOptions(head, shaft, graph).map((option) => {
    const findings = judgeRoute(
      graph.musts,
      contextOf(option.chosen, graph),
      option.joined,
      option.joinSteps,
      graph.work,
    );
    return { option, findings };
  });
}

/** Whether this pair is refused on a bench that knows only these facts. Joints stand: they are how the parts lie there. */
export function refusesOn(
  facts: readonly CitedFact[],
  pair: { head: string; shaft: string },
  graph: BenchGraph,
): boolean {
  const bare = keepOnly(facts, pair, graph);
  const [head, shaft] = [bare.parts.get(pair.head), bare.parts.get(pair.shaft)];
  if (!head || !shaft) return false;
  return openOptions(head, shaft, bare).every(({ chosen, joined, joinSteps }) =>
    anyRefuses(bare.musts, contextOf(chosen, bare), joined, joinSteps, bare.work),
  );
}

function isRefusal({ outcome }: RouteFinding): boolean {
  return outcome.verdict === "does-not-fit";
}

/**
 * The proof that a refused pair does not make a club: the fewest facts that still refuse every option. The reasons are read
 * off the bench that knows those facts alone, so that words and facts cannot part company.
 */
export function nearMissOf(head: Part, shaft: Part, graph: BenchGraph, known: KnownProofs): NearMiss {
  const pair = { head: head.id, shaft: shaft.id };
  const judged = refusalsOf(head, shaft, graph);
  const chosen = chooseRefusals(judged);
  const cited = judged.flatMap(({ option, findings }, at) =>
    citedFor(chosen[at] as RouteFinding, findings, option, graph),
  );
  const unique = [...new Map(cited.map((fact) => [factKey(fact), fact])).values()];
  const facts = fewestFacts(unique, { head, shaft }, graph, known);
  if (!facts) {
    const rulesCited = [
      ...new Set(chosen.map(({ compiled, outcome }) => `${compiled.rule.id} (${outcome.code})`)),
    ].join(", ");
    throw new Error(
      `the facts cited by ${rulesCited} do not refuse ${head.id} with ${shaft.id} by themselves`,
    );
  }
  const bare = keepOnly(facts, pair, graph);
  const left = refusalsOf(bare.parts.get(head.id) as Part, bare.parts.get(shaft.id) as Part, bare);
  const reasons = chooseRefusals(left);
  const findings = distinctFindings(
    left.map(({ option }, at) => findingFrom(reasons[at] as RouteFinding, contextOf(option.chosen, bare))),
    graph.rules.map(({ rule }) => rule.id),
  );
  const adapter = judged.find(({ option }) => option.chosen.adapter)?.option.chosen.adapter;
  return {
    ...pair,
    adapter: adapter?.id ?? null,
    verdict: "does-not-fit",
    proof: { findings, facts, joints: jointsOf(shaft, graph), text: sayProof({ head, shaft }, findings) },
  };
}

/**
 * The facts of a refusal, and of the work behind it when it is the work that refuses. How the head takes a shaft is among
 * them, since that is what rules other options out; it is dropped again where it is not needed.
 */
function citedFor(
  refusal: RouteFinding,
  findings: readonly RouteFinding[],
  option: PairOption,
  graph: BenchGraph,
): CitedFact[] {
  const takes = option.chosen.head ? citePath("head.socket.type", contextOf(option.chosen, graph)) : [];
  return [
    ...factsOf(refusal, contextOf(option.chosen, graph)),
    ...workFacts(refusal, findings, option, graph),
    ...takes,
  ];
}

/**
 * One refusal for every option: one that all options share where there is one, else the first of each. A refusal of the parts
 * tells more than one of the work.
 */
function chooseRefusals(judged: readonly { readonly findings: readonly RouteFinding[] }[]): RouteFinding[] {
  const refusals = judged.map(({ findings }) => {
    const all = findings.filter(isRefusal);
    return [
      ...all.filter(({ compiled }) => !compiled.readsWork),
      ...all.filter(({ compiled }) => compiled.readsWork),
    ];
  });
  const key = ({ compiled, outcome }: RouteFinding) => `${compiled.rule.id} ${outcome.code}`;
  const shared = refusals[0]?.find((refusal) =>
    refusals.every((others) => others.some((other) => key(other) === key(refusal))),
  );
  return refusals.map((each) => {
    const chosen = (shared && each.find((refusal) => key(refusal) === key(shared))) ?? each[0];
    if (!chosen) throw new Error("a proof was asked for a pair that is not refused");
    return chosen;
  });
}

/** Each reason once, in the order of the rules, so that the parts speak before the work. */
function distinctFindings(said: readonly (Finding | undefined)[], order: readonly string[]): Finding[] {
  const known = said.filter((finding) => finding !== undefined);
  known.sort((a, b) => order.indexOf(a.rule) - order.indexOf(b.rule));
  return [...new Map(known.map((finding) => [`${finding.rule} ${finding.code}`, finding])).values()];
}

/** When it is the work that refuses, the facts that made the dearest work needed. */
function workFacts(
  refusal: RouteFinding,
  findings: readonly RouteFinding[],
  option: PairOption,
  graph: BenchGraph,
): CitedFact[] {
  if (!refusal.compiled.readsWork) return [];
  const allowed = skills.indexOf(graph.goal.skill ?? "machine");
  const tooHard = (steps: RouteFinding["outcome"]["steps"]) =>
    (steps ?? []).some(({ step }) => skills.indexOf(workRow(step, graph.work).skill) > allowed);
  if (tooHard(option.joinSteps)) return [];
  const context = contextOf(option.chosen, graph);
  return findings
    .filter(({ outcome }) => tooHard(outcome.steps))
    .flatMap((finding) => [...factsOf(finding, context), ...lookedUpBy(context)]);
}

/** Work may rest on typical readings, and which ones apply rests on these facts. */
function lookedUpBy(context: Context): CitedFact[] {
  return places.flatMap((place) =>
    typicalConditions.flatMap((name) => citePath(`${place}.${name}`, context)),
  );
}

/**
 * Of facts that refuse, the fewest that still do; nothing when they do not refuse by themselves. Pairs that lie alike and are
 * refused by the same facts have the same ones in their proof.
 */
function fewestFacts(
  facts: readonly CitedFact[],
  { head, shaft }: { readonly head: Part; readonly shaft: Part },
  graph: BenchGraph,
  known: KnownProofs,
): CitedFact[] | undefined {
  const pair = { head: head.id, shaft: shaft.id };
  const key = proofKey(facts, head, shaft, graph);
  const found = known.get(key);
  if (found) return found.map((at) => facts[at] as CitedFact);
  if (!refusesOn(facts, pair, graph)) return undefined;
  const fewest = minimise(facts, (kept) => refusesOn(kept, pair, graph));
  known.set(
    key,
    fewest.map((fact) => facts.indexOf(fact)),
  );
  return fewest;
}

/**
 * Drops fact after fact while the rest still refuses, over and over until none can go: a claim that speaks for a pair can
 * keep another fact in, and with the claim gone that fact may go too.
 */
function minimise(
  facts: readonly CitedFact[],
  refuses: (kept: readonly CitedFact[]) => boolean,
): CitedFact[] {
  const less = facts.reduce<readonly CitedFact[]>((kept, fact) => {
    const without = kept.filter((other) => other !== fact);
    return refuses(without) ? without : kept;
  }, facts);
  return less.length === facts.length ? [...less] : minimise(less, refuses);
}

function jointsOf(shaft: Part, graph: BenchGraph): Joint[] {
  const found = (["tip", "butt"] as const).map((port) => graph.occupancy.at(shaft.id, port)?.joint);
  return found.filter((joint) => joint !== undefined);
}
