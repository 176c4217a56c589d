import type { Want } from "../resolve/result.ts";
import type { SolveModel } from "./plan-bench.ts";
import type { PlanInput } from "./plan-input.ts";
import type { PlanModel } from "./plan-model.ts";
import { planSetup } from "./plan-setup.ts";
import { wantedThing } from "./wanted-things.ts";

/** What a wanted part is worth: what the plan would bring more if it lay on the bench for nothing. */
export interface WantValue {
  readonly want: Want;
  readonly worthMinor: number;
  /** Clubs of the plan with it that it, or one like it, goes into. */
  readonly clubs: readonly string[];
}

/**
 * Values wants by the plan: each is the net of the plan with that part on the bench less the net without it. Both plans are
 * solved to the same exactness, and a gap of either is at most what the value is off by. What is best without the part can be
 * done with it too, and is where the search begins.
 */
export async function wantValues(
  wants: readonly Want[],
  input: PlanInput,
  solve: SolveModel,
): Promise<WantValue[]> {
  const things = wants.map(wantedThing);
  const setup = planSetup(input, things);
  const base = await solve(setup.lean);
  const values: WantValue[] = [];
  for (const [at, want] of wants.entries()) {
    const own = new Set(setup.wanted.get(at));
    const solution = await solve(withThing(setup.lean, own), base.choice);
    const clubs = Object.keys(solution.choice.uses)
      .flatMap((id) => setup.uses.get(id) ?? [])
      .filter((use) => use.do === "build" && use.takes.some(({ resource }) => own.has(resource)));
    values.push({
      want,
      worthMinor: Math.max(0, solution.netMinor - base.netMinor),
      clubs: clubs.map(({ title }) => title),
    });
  }
  return values.sort(
    (one, other) => other.worthMinor - one.worthMinor || (one.want.id < other.want.id ? -1 : 1),
  );
}

/** The model with one more of these resources. */
function withThing(model: PlanModel, more: ReadonlySet<string>): PlanModel {
  return {
    ...model,
    resources: model.resources.map((each) => (more.has(each.id) ? { ...each, count: each.count + 1 } : each)),
  };
}
