import type { BenchGraph } from "../graph/bench-graph.ts";
import type { CompiledRule } from "../graph/compiled-rule.ts";
import { citeSpot } from "../graph/fact.ts";
import type { RouteFinding } from "../graph/judge-route.ts";
import { contextOf, type Route } from "../graph/route.ts";
import { places } from "../graph/shape.ts";
import type { Question } from "./result.ts";

/**
 * What has to be asked before an unsettled club is settled: one question for every missing fact. A rule may have several
 * questions that one fact answers; it names them by the fact, a colon and the matter ("faults:rattle").
 */
export function openQuestions(
  route: Route,
  findings: readonly RouteFinding[],
  graph: BenchGraph,
): Question[] {
  const context = contextOf(route.chosen, graph);
  const open = findings.filter(
    ({ compiled, outcome }) => compiled.rule.strength === "must" && outcome.verdict === "unsettled",
  );
  const asked = open.flatMap(({ compiled, outcome, missing }) => {
    const names = missing.length > 0 ? missing : outcome.ask === undefined ? [] : [outcome.ask];
    return names.map((name): Question => {
      const answeredBy = name.split(":")[0];
      const fact = [...compiled.needs, ...compiled.uses].find((each) => each.name === answeredBy);
      const spot = fact && citeSpot(fact, context);
      const text = compiled.rule.ask[name];
      if (text === undefined) throw new Error(`the rule ${compiled.rule.id} has no question for "${name}"`);
      return {
        part: spot?.part ?? aboutPart(compiled, route),
        field: spot?.field ?? name,
        text,
        clubs: 1,
        settles: 0,
      };
    });
  });
  return [...new Map(asked.map((question) => [questionKey(question), question])).values()];
}

/** A question that no single field answers is put to the last of the parts that the rule reads. */
function aboutPart(compiled: CompiledRule, route: Route): string {
  const read = places.filter((place) => compiled.asksFor.includes(place));
  return read.flatMap((place) => route.chosen[place]?.id ?? []).at(-1) ?? "";
}

/** Questions about the same fact are one question. */
export function questionKey({ part, field }: Pick<Question, "part" | "field">): string {
  return `${part} ${field}`;
}
