/** The public door: the only way in for the server and the page. In the order parts → findings → measures → clubs. */

export type { CitedFact } from "./findings/cited-fact.ts";
export type { Finding } from "./findings/finding.ts";
export { type Verdict, verdicts } from "./findings/verdict.ts";
export type { Bench } from "./graph/bench-graph.ts";
export { type Build, buildSchema, type ClubParts } from "./measure/build.ts";
export type {
  BasisEntry,
  Estimate,
  Estimates,
  SettingEstimate,
  SwingWeightEstimate,
} from "./measure/estimate.ts";
export { type EstimatedClub, estimateClub } from "./measure/estimates.ts";
export {
  type EffectName,
  type Tuned,
  type TuneOptions,
  type TuneSolution,
  type TuneTarget,
  tune,
} from "./measure/tune.ts";
export { type Claim, claimSchema } from "./parts/claim.ts";
export { type Fault, faultNames } from "./parts/fault.ts";
export { type FieldMeaning, type FieldPath, fields } from "./parts/fields.ts";
export {
  type Goal,
  goalSchema,
  type Skill,
  skillSchema,
  skills,
  type Target,
  targetSchema,
} from "./parts/goal.ts";
export { type Joint, type JointType, jointSchema } from "./parts/joint.ts";
export {
  type Adapter,
  adapterSchema,
  type ClubType,
  clubTypes,
  coverSchema,
  type Flex,
  flexes,
  type Grip,
  gripSchema,
  type Head,
  headSchema,
  type Money,
  type Part,
  type PartKind,
  partSchema,
  type Shaft,
  shaftSchema,
  wrenchSchema,
} from "./parts/part.ts";
export { type Reading, readingFrom, readingSources, type WrittenReading } from "./parts/reading.ts";
export type { CautionRow, Reference, WorkRow } from "./parts/reference.ts";
export { type Parsed, parseWith, type Refusal } from "./parts/refusal.ts";
export type { TypicalRow } from "./parts/typical.ts";
export { type ReadyBench, readyBench } from "./resolve/ready-bench.ts";
export { clubsForHead, type ResolveResult, resolveBench } from "./resolve/resolve-bench.ts";
export type { Club, NearMiss, Question, Resolution, Want, WorkStep } from "./resolve/result.ts";
export { rules } from "./rules/index.ts";
export type { Rule } from "./rules/rule.ts";
