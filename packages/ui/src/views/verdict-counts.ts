import type { Resolution, Verdict } from "@ferrule/core";

/** How many answers there are of each verdict; `atLeast` where the answer was cut short and the rest cannot be told apart. */
export interface VerdictCount {
  readonly count: number;
  readonly atLeast: boolean;
}

export function verdictCounts(
  answer: Pick<Resolution, "clubs" | "nearMisses" | "counts">,
): Record<Verdict, VerdictCount> {
  const cut = answer.clubs.length < answer.counts.clubs;
  const of = (verdict: Verdict): VerdictCount => ({
    count: answer.clubs.filter((club) => club.verdict === verdict).length,
    atLeast: cut,
  });
  return {
    fits: of("fits"),
    "fits-with-work": of("fits-with-work"),
    unsettled: of("unsettled"),
    "does-not-fit": { count: answer.counts.nearMisses, atLeast: false },
  };
}
