/** The four verdicts, the best first. */
export const verdicts = ["fits", "fits-with-work", "unsettled", "does-not-fit"] as const;
export type Verdict = (typeof verdicts)[number];
