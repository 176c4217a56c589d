import type { CitedFact } from "../findings/cited-fact.ts";
import type { Finding } from "../findings/finding.ts";
import type { FindingData } from "../findings/outcome.ts";
import type { Verdict } from "../findings/verdict.ts";
import type { Estimates } from "../measure/estimate.ts";
import type { Skill } from "../parts/goal.ts";
import type { Joint } from "../parts/joint.ts";

export interface Caution {
  readonly code: string;
  readonly text: string;
}

/** One step at the bench, in order. */
export interface WorkStep {
  readonly step: string;
  readonly parts: readonly string[];
  readonly minutes: number;
  readonly waitMinutes: number;
  readonly costMinor: number;
  readonly skill: Skill;
  readonly cautions: readonly Caution[];
  readonly data: FindingData;
  readonly text: string;
}

/** What to find out, of which part, and how many clubs it would settle. */
export interface Question {
  readonly part: string;
  readonly field: string;
  readonly text: string;
  /** Clubs whose verdict waits for this answer. */
  readonly clubs: number;
  /** Of those, the clubs that wait for nothing else. */
  readonly settles: number;
}

/** A head, what joins it, a shaft and a grip. */
export interface Club {
  /** Stable for the same parts: `head+adapter+shaft+grip`. */
  readonly id: string;
  readonly head: string;
  readonly adapter: string | null;
  readonly shaft: string;
  readonly grip: string;
  readonly verdict: Verdict;
  readonly work: readonly WorkStep[];
  readonly minutes: number;
  readonly skill: Skill;
  /** Joints of other clubs or shafts that have to be undone first. */
  readonly undoes: readonly Joint[];
  readonly estimates: Estimates;
  readonly findings: readonly Finding[];
  readonly questions: readonly Question[];
}

/** Two parts that do not make a club, with the smallest set of facts that proves it. */
export interface NearMiss {
  readonly head: string;
  readonly shaft: string;
  readonly adapter: string | null;
  readonly verdict: "does-not-fit";
  readonly proof: {
    readonly findings: readonly Finding[];
    readonly facts: readonly CitedFact[];
    /** Joints already made that the proof stands on. */
    readonly joints: readonly Joint[];
    /** The whole proof in plain English. */
    readonly text: string;
  };
}

/** What is missing, in interface terms. */
export interface Want {
  readonly id: string;
  readonly kind: "head" | "adapter" | "shaft" | "grip";
  /** Field → wanted value, or a range. */
  readonly needs: Readonly<Record<string, unknown>>;
  readonly text: string;
  /** The head and shaft pairs it would complete, at most fifty of them, and how many in all. */
  readonly completes: readonly { readonly head: string | null; readonly shaft: string | null }[];
  readonly count: number;
}

/** Everything that can be said of a bench, the best first, each list as long as the goal's `limit` lets it be. */
export interface Resolution {
  readonly clubs: readonly Club[];
  readonly nearMisses: readonly NearMiss[];
  readonly wants: readonly Want[];
  readonly questions: readonly Question[];
  /** How many there are of each, however many were returned. */
  readonly counts: {
    readonly clubs: number;
    readonly nearMisses: number;
    readonly wants: number;
    readonly questions: number;
  };
  /** The skill this answer allowed, and how many clubs more each higher one would open. */
  readonly skill: Skill;
  readonly skillOpens: readonly { readonly skill: Skill; readonly moreClubs: number }[];
  /** Things accepted but not understood, such as a field we do not know. */
  readonly notices: readonly string[];
}
