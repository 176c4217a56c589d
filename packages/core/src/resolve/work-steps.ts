import { partName } from "../explain/plain-teller.ts";
import { sayStep } from "../explain/say-step.ts";
import type { BenchGraph } from "../graph/bench-graph.ts";
import { type RouteFinding, workRow } from "../graph/judge-route.ts";
import type { JoinStep, Route } from "../graph/route.ts";
import { places } from "../graph/shape.ts";
import type { Caution, WorkStep } from "./result.ts";

/** All the work a club asks for, in the order it is done at the bench. */
export function workSteps(route: Route, findings: readonly RouteFinding[], graph: BenchGraph): WorkStep[] {
  const fromRules = findings
    .filter(({ compiled }) => compiled.rule.strength === "must")
    .flatMap(({ compiled, outcome }) =>
      (outcome.steps ?? []).map((step): JoinStep => ({ ...step, parts: partsOf(compiled.asksFor, route) })),
    );
  const needed = [...route.steps, ...fromRules, ...regripping(route, fromRules, graph)];
  const rows = needed.map((step) => ({ step, row: workRow(step.step, graph.work) }));
  rows.sort((a, b) => a.row.order - b.row.order);
  const seen = new Set<string>();
  return rows
    .filter(({ step }) => isNew(`${step.step} ${step.parts.join(" ")}`, seen))
    .map(({ step, row }) => ({
      step: step.step,
      parts: step.parts,
      minutes: row.minutes,
      waitMinutes: row.waitMinutes,
      costMinor: row.costMinor,
      skill: row.skill,
      cautions: cautionsOf(row.cautions, graph),
      data: step.data ?? {},
      text: sayStep(
        row,
        step.parts.map((id) => nameOf(id, graph)),
        step.data ?? {},
      ),
    }));
}

/** The butt cannot be worked on under a grip: one that stays on the club comes off first and goes on again after. */
function regripping({ chosen }: Route, fromRules: readonly JoinStep[], graph: BenchGraph): JoinStep[] {
  const { shaft, grip } = chosen;
  const onShaft = shaft && graph.occupancy.at(shaft.id, "butt")?.other;
  if (!shaft || !grip || onShaft !== grip.id || !fromRules.some(({ step }) => buttSteps.includes(step)))
    return [];
  const parts = [shaft.id, grip.id];
  return [
    { step: "grip-off", parts },
    { step: "grip-on", parts },
  ];
}

const buttSteps = ["butt-trim", "butt-extension"];

function isNew(key: string, seen: Set<string>): boolean {
  if (seen.has(key)) return false;
  seen.add(key);
  return true;
}

function partsOf(roles: readonly string[], route: Route): string[] {
  const holder = route.chosen.adapter ? "adapter" : "head";
  const found = places.filter(
    (place) => roles.includes(place) || (place === holder && roles.includes("holder")),
  );
  return found.flatMap((place) => route.chosen[place]?.id ?? []);
}

function nameOf(id: string, graph: BenchGraph): string {
  const part = graph.parts.get(id);
  return part ? partName(part) : id;
}

/** The words of cautions; a step that names one nobody has written is our bug. */
function cautionsOf(codes: readonly string[], graph: BenchGraph): Caution[] {
  return codes.map((code) => {
    const row = graph.reference.cautions.find((caution) => caution.code === code);
    if (!row) throw new Error(`no row in the caution table for "${code}"`);
    return { code, text: row.text };
  });
}
