import type { Club, NearMiss } from "@ferrule/core";

/** One thing a rule found about a club or a pair. */
export type Finding = Club["findings"][number];

/** A fact as it stands on the bench. */
export type CitedFact = NearMiss["proof"]["facts"][number];
