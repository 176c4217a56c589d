/** The public door: the only way in for the server and the page. In the order words → parts → graph → clubs. */
export * from "./parts/fields.ts";
export * from "./parts/reading.ts";
export * from "./parts/fault.ts";
export * from "./parts/part.ts";
export * from "./parts/joint.ts";
export * from "./parts/claim.ts";
export * from "./parts/goal.ts";
export * from "./parts/typical.ts";
export * from "./parts/reference.ts";
export * from "./parts/refusal.ts";
export * from "./findings/verdict.ts";
export * from "./findings/outcome.ts";
export * from "./measure/estimate.ts";
export * from "./measure/build.ts";
export * from "./resolve/result.ts";
