import { sayProof } from "../explain/say-proof.ts";
import { findingFrom, factsOf } from "../explain/say-finding.ts";
import { type CitedFact, factKey } from "../findings/cited-fact.ts";
import type { BenchGraph } from "../graph/bench-graph.ts";
import { judgeRoute, type RouteFinding, workRow } from "../graph/judge-route.ts";
import { contextOf } from "../graph/route.ts";
import type { Joint } from "../parts/joint.ts";
import { skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import { openOptions, type PairOption } from "./pair-options.ts";
import { keepOnly } from "./keep-only.ts";
import type { NearMiss } from "./result.ts";

/** Why each option of a pair is refused, judged afresh from the parts as they are. */
export function refusalsOf(head: Part, shaft: Part, graph: BenchGraph): { option: PairOption; findings: RouteFinding[] }[] {
  return openOptions(head, shaft, graph).map((option) => {
    const musts = graph.rules.filter(({ rule }) => rule.strength === "must");
    const judged = judgeRoute(musts, contextOf(option.chosen, graph), option.joined, option.joinSteps, graph.work);
    return { option, findings: judged };
  });
}

/** Whether this pair is refused on a bench that knows only these facts. Joints stand: they are how the parts lie there. */
export function refusesOn(facts: readonly CitedFact[], pair: { head: string; shaft: string }, graph: BenchGraph): boolean {
  const bare = keepOnly(facts, pair, graph);
  const [head, shaft] = [bare.parts.get(pair.head), bare.parts.get(pair.shaft)];
  if (!head || !shaft) return false;
  return refusalsOf(head, shaft, bare).every(({ findings }) => findings.some(isRefusal));
}

function isRefusal({ outcome }: RouteFinding): boolean {
  return outcome.verdict === "does-not-fit";
}

/** The proof that a refused pair does not make a club: of each option one refusal, and the fewest facts that still refuse. */
export function nearMissOf(head: Part, shaft: Part, graph: BenchGraph): NearMiss {
  const chosen = refusalsOf(head, shaft, graph).map(({ option, findings }) => ({ option, findings, refusal: firstRefusal(findings) }));
  const cited = chosen.flatMap(({ option, findings, refusal }) => [
    ...factsOf(refusal, contextOf(option.chosen, graph)),
    ...workFacts(refusal, findings, option, graph),
  ]);
  const unique = [...new Map(cited.map((fact) => [factKey(fact), fact])).values()];
  const facts = minimise(unique, (kept) => refusesOn(kept, { head: head.id, shaft: shaft.id }, graph));
  const said = chosen.map(({ option, refusal }) => findingFrom(refusal, contextOf(option.chosen, graph)));
  const findings = [...new Map(said.flatMap((finding) => (finding ? [[`${finding.rule} ${finding.code}`, finding]] : []))).values()];
  const adapter = chosen.find(({ option }) => option.chosen.adapter)?.option.chosen.adapter;
  return {
    head: head.id,
    shaft: shaft.id,
    adapter: adapter?.id ?? null,
    verdict: "does-not-fit",
    proof: { findings, facts, joints: jointsOf(shaft, graph), text: sayProof({ head, shaft }, findings) },
  };
}

/** A refusal of the parts tells more than one of the work; the first in the order of the rules is taken. */
function firstRefusal(findings: readonly RouteFinding[]): RouteFinding {
  const refusals = findings.filter(isRefusal);
  const chosen = refusals.find(({ compiled }) => !compiled.readsWork) ?? refusals[0];
  if (!chosen) throw new Error("a proof was asked for a pair that is not refused");
  return chosen;
}

/** When it is the work that refuses, the facts that made the dearest work needed. */
function workFacts(refusal: RouteFinding, findings: readonly RouteFinding[], option: PairOption, graph: BenchGraph): CitedFact[] {
  if (!refusal.compiled.readsWork) return [];
  const allowed = skills.indexOf(graph.goal.skill ?? "machine");
  const tooHard = (steps: RouteFinding["outcome"]["steps"]) =>
    (steps ?? []).some(({ step }) => skills.indexOf(workRow(step, graph.work).skill) > allowed);
  if (tooHard(option.joinSteps)) return [];
  const context = contextOf(option.chosen, graph);
  return findings.filter(({ outcome }) => tooHard(outcome.steps)).flatMap((finding) => factsOf(finding, context));
}

/** Drops fact after fact while the rest still refuses; what is left cannot lose any one. */
function minimise(facts: readonly CitedFact[], refuses: (kept: readonly CitedFact[]) => boolean): CitedFact[] {
  let kept = [...facts];
  for (const fact of facts) {
    const without = kept.filter((other) => other !== fact);
    if (refuses(without)) kept = without;
  }
  return kept;
}

function jointsOf(shaft: Part, graph: BenchGraph): Joint[] {
  const found = (["tip", "butt"] as const).map((port) => graph.occupancy.at(shaft.id, port)?.joint);
  return found.filter((joint) => joint !== undefined);
}
