import type {
  Bench as BenchInput,
  CatalogueModel,
  Claim,
  CostSettings,
  Evidence,
  Goal,
  Joint,
  Part,
  Reference,
  Refusal,
  Sighting,
} from "@ferrule/core";
import type { Bench } from "../bench/bench.ts";
import { checkBench } from "../bench/check-bench.ts";
import { done, type Outcome, problem } from "../errors.ts";
import { type Costs, costsRefusals } from "./costs.ts";
import type { ReadyModels } from "./ready-models.ts";

/** What may come with a request in the place of what is stored. */
export interface WorldRequest {
  readonly today?: string;
  readonly catalogue?: readonly CatalogueModel[];
  readonly parts?: readonly Part[];
  readonly joints?: readonly Joint[];
  readonly claims?: readonly Claim[];
  readonly goal?: Goal;
  readonly evidence?: readonly Evidence[];
  readonly sightings?: readonly Sighting[];
  readonly costs?: Partial<CostSettings>;
}

/** Where what is stored comes from. */
export interface WorldTools {
  readonly bench: Bench;
  readonly costs: Costs;
  readonly models: ReadyModels;
  readonly reference: Reference;
  readonly today: () => string;
}

/** Everything that a judgement or a plan rests on, but the rules. */
export interface World {
  readonly bench: BenchInput;
  readonly reference: Reference;
  readonly catalogue: readonly CatalogueModel[];
  readonly evidence: readonly Evidence[];
  readonly sightings: readonly Sighting[];
  readonly costs: CostSettings;
  readonly today: string;
}

/** What is stored, and in its place what came with the request; what cannot be is refused with every reason. */
export function worldOf(tools: WorldTools, request: WorldRequest, refused: string): Outcome<World> {
  const given = givenBench(request);
  const costs = { ...tools.costs.read(), ...request.costs };
  const refusals: Refusal[] = [
    ...(given ? checkBench(given) : []),
    ...costsRefusals(costs).map((refusal) => ({ ...refusal, field: `costs.${refusal.field}` })),
  ];
  if (refusals.length > 0) return problem("bad-request", refused, refusals);
  return done({
    bench: given ?? storedBench(tools.bench),
    reference: tablesOf(tools.reference),
    catalogue: request.catalogue ?? tools.models.all(),
    evidence: request.evidence ?? tools.bench.evidence.all(),
    sightings: request.sightings ?? tools.bench.sightings.all(),
    costs,
    today: request.today ?? tools.today(),
  });
}

/** The bench that came with the request; what it leaves out is empty. */
export function givenBench({ parts, joints, claims, goal }: WorldRequest): Required<BenchInput> | undefined {
  if (!parts && !joints && !claims && !goal) return undefined;
  return { parts: parts ?? [], joints: joints ?? [], claims: claims ?? [], goal: goal ?? {} };
}

function storedBench(bench: Bench): Required<BenchInput> {
  const { parts, joints, claims, goal } = bench.view();
  return { parts, joints, claims, goal };
}

const tablesOf = ({ typical, work, cautions }: Reference): Reference => ({ typical, work, cautions });
